#include "core/sheet/comparison.h"

#include "core/sheet/object_fields.h"
#include "core/sheet/references.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

namespace pumpwright {
namespace {

/// Texts of two numbers that are shown alike and are not.
std::string exactText(const ObjectField& field) {
    return fmt::format("{:.12g} {}", *field.value, siUnit(field.kind));
}

bool isSame(const ObjectField& a, const ObjectField& b) {
    return a.value && b.value ? *a.value == *b.value : a.text == b.text;
}

const ObjectField* fieldWith(const ObjectFields& fields, const std::string& label) {
    const auto found = std::ranges::find(fields, label, &ObjectField::label);
    return found == fields.end() ? nullptr : &*found;
}

void addChanges(std::vector<Difference>& differences, const std::string& about, const ObjectFields& before,
                const ObjectFields& after) {
    for (const ObjectField& was : before) {
        const ObjectField* is = fieldWith(after, was.label);
        if (is == nullptr) {
            differences.push_back({ChangeSort::Changed, about, was.label, was.text, ""});
        } else if (!isSame(was, *is)) {
            const bool alike = was.text == is->text;
            differences.push_back({ChangeSort::Changed, about, was.label, alike ? exactText(was) : was.text,
                                   alike ? exactText(*is) : is->text});
        }
    }
    for (const ObjectField& is : after) {
        if (fieldWith(before, is.label) == nullptr) {
            differences.push_back({ChangeSort::Changed, about, is.label, "", is.text});
        }
    }
}

/// What was added or removed in a few words: the fields that say something.
std::string summaryOf(const ObjectFields& fields) {
    constexpr std::size_t kMost = 6;
    std::vector<std::string> texts;
    for (const ObjectField& field : fields) {
        if (!field.text.empty() && texts.size() < kMost) {
            texts.push_back(lowerFirst(field.label) + " " + field.text);
        }
    }
    return fmt::format("{}", fmt::join(texts, ", "));
}

template <class IdType, class Object>
struct Pair {
    const Object* before = nullptr;
    const Object* after = nullptr;
    IdType beforeId;
    IdType afterId;
};

/// Pairs of equal references, then of equal ids among the rest, then what has no partner.
template <class IdType, class Object>
std::vector<Pair<IdType, Object>> paired(const std::map<IdType, Object>& before,
                                         const std::map<IdType, Object>& after) {
    std::vector<Pair<IdType, Object>> pairs;
    std::set<IdType> taken;
    std::map<std::string, std::vector<IdType>> byReference;
    for (const auto& [id, object] : after) {
        byReference[object.reference].push_back(id);
    }
    std::vector<IdType> lone;
    for (const auto& [id, object] : before) {
        auto& candidates = byReference[object.reference];
        if (candidates.empty()) {
            lone.push_back(id);
            continue;
        }
        const IdType partner = candidates.front();
        candidates.erase(candidates.begin());
        taken.insert(partner);
        pairs.push_back({&object, &after.at(partner), id, partner});
    }
    for (const IdType& id : lone) {
        const auto renamed = after.find(id);
        const bool found = renamed != after.end() && taken.insert(id).second;
        pairs.push_back({&before.at(id), found ? &renamed->second : nullptr, id, id});
    }
    for (const auto& [id, object] : after) {
        if (!taken.contains(id)) {
            pairs.push_back({nullptr, &object, id, id});
        }
    }
    const auto reference = [](const Pair<IdType, Object>& pair) {
        return pair.before != nullptr ? pair.before->reference : pair.after->reference;
    };
    std::ranges::stable_sort(
        pairs, [&](const auto& a, const auto& b) { return referenceBefore(reference(a), reference(b)); });
    return pairs;
}

std::string nameOf(const Circuit& circuit, const PartId& id, const Part&) {
    return partName(circuit, id);
}
std::string nameOf(const Circuit&, const WireId&, const Wire& wire) {
    return "Wire " + wire.reference;
}
std::string nameOf(const Circuit&, const HoseId&, const Hose& hose) {
    return "Hose " + hose.reference;
}

template <class IdType, class Object>
void compareObjects(std::vector<Difference>& differences, const Circuit& before, const Circuit& after,
                    const std::map<IdType, Object>& objectsBefore,
                    const std::map<IdType, Object>& objectsAfter) {
    for (const auto& pair : paired(objectsBefore, objectsAfter)) {
        if (pair.before == nullptr) {
            differences.push_back({ChangeSort::Added, nameOf(after, pair.afterId, *pair.after), "", "",
                                   summaryOf(fieldsOf(after, *pair.after))});
        } else if (pair.after == nullptr) {
            differences.push_back({ChangeSort::Removed, nameOf(before, pair.beforeId, *pair.before), "",
                                   summaryOf(fieldsOf(before, *pair.before)), ""});
        } else {
            const std::string name = nameOf(before, pair.beforeId, *pair.before);
            if (pair.before->reference != pair.after->reference) {
                differences.push_back(
                    {ChangeSort::Changed, name, "Reference", pair.before->reference, pair.after->reference});
            }
            addChanges(differences, name, fieldsOf(before, *pair.before), fieldsOf(after, *pair.after));
        }
    }
}

int movedParts(const Circuit& before, const Circuit& after) {
    int moved = 0;
    for (const auto& pair : paired(before.parts, after.parts)) {
        const bool both = pair.before != nullptr && pair.after != nullptr;
        moved += both && (pair.before->at != pair.after->at ||
                          pair.before->quarterTurns != pair.after->quarterTurns ||
                          pair.before->mirrored != pair.after->mirrored)
                     ? 1
                     : 0;
    }
    return moved;
}

/// "WARNING: Wire too thin (W3)": the same finding in both circuits, whatever its numbers.
std::string findingName(const Circuit& circuit, const Finding& finding) {
    return fmt::format("{} ({})", finding.title, subjectReferences(circuit, finding));
}

std::string findingText(const Finding& finding) {
    return fmt::format("{}: {}{}", signalWordName(finding.word), finding.what.english(),
                       finding.waiver ? " Accepted: " + finding.waiver->reason : "");
}

using FindingTexts = std::multimap<std::string, std::string>;

FindingTexts textsOf(const Judged& judged) {
    FindingTexts texts;
    for (const Finding& finding : judged.findings) {
        texts.emplace(findingName(judged.circuit, finding), findingText(finding));
    }
    return texts;
}

std::vector<Difference> compareFindings(const Judged& before, const Judged& after) {
    std::vector<Difference> differences;
    FindingTexts left = textsOf(after);
    for (const auto& [name, was] : textsOf(before)) {
        const auto partner = left.find(name);
        if (partner == left.end()) {
            differences.push_back({ChangeSort::Removed, name, "", was, ""});
            continue;
        }
        if (partner->second != was) {
            differences.push_back({ChangeSort::Changed, name, "", was, partner->second});
        }
        left.erase(partner);
    }
    for (const auto& [name, is] : left) {
        differences.push_back({ChangeSort::Added, name, "", "", is});
    }
    std::ranges::stable_sort(differences, {}, &Difference::sort);
    return differences;
}

} // namespace

std::string_view changeSortName(ChangeSort sort) {
    switch (sort) {
    case ChangeSort::Added:
        return "added";
    case ChangeSort::Removed:
        return "removed";
    case ChangeSort::Changed:
        break;
    }
    return "changed";
}

Comparison comparisonOf(const Judged& before, const Judged& after) {
    Comparison comparison;
    const Circuit& was = before.circuit;
    const Circuit& is = after.circuit;
    compareObjects(comparison.circuit, was, is, was.parts, is.parts);
    compareObjects(comparison.circuit, was, is, was.wires, is.wires);
    compareObjects(comparison.circuit, was, is, was.hoses, is.hoses);
    addChanges(comparison.circuit, "Drive plan", fieldsOf(was.plan, was), fieldsOf(is.plan, is));
    addChanges(comparison.circuit, "Limits", fieldsOf(was.limits), fieldsOf(is.limits));
    addChanges(comparison.circuit, "Title block", fieldsOf(was.title), fieldsOf(is.title));
    if (was.currency != is.currency) {
        comparison.circuit.push_back({ChangeSort::Changed, "Prices", "Currency", was.currency, is.currency});
    }
    comparison.findings = compareFindings(before, after);
    comparison.moved = movedParts(was, is);
    return comparison;
}

SheetTable differenceTable(const Comparison& comparison) {
    SheetTable table{
        "Circuit", {"Change", "About", "Value", "Before", "After"}, std::vector<bool>(5, false), {}};
    for (const Difference& one : comparison.circuit) {
        table.rows.push_back(
            {std::string(changeSortName(one.sort)), one.about, one.value, one.before, one.after});
    }
    return table;
}

SheetTable findingDifferenceTable(const Comparison& comparison) {
    SheetTable table{"Findings", {"Change", "Finding", "Before", "After"}, std::vector<bool>(4, false), {}};
    for (const Difference& one : comparison.findings) {
        table.rows.push_back({std::string(changeSortName(one.sort)), one.about, one.before, one.after});
    }
    return table;
}

} // namespace pumpwright

#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <map>

namespace pumpwright {
namespace {

/// Gives all but the first of these parts the next free reference.
Edit renumbered(const Survey& survey, const std::vector<PartId>& parts, bool firstKeeps) {
    Circuit draft = survey.circuit();
    Edit edit{"Give every part its own reference", {}};
    for (std::size_t i = firstKeeps ? 1 : 0; i < parts.size(); ++i) {
        Part part = survey.part(parts[i]);
        part.reference = freeReference(draft, std::string(kindOf(part).letter()));
        draft.parts.at(parts[i]).reference = part.reference;
        edit.changes.push_back(putPart(parts[i], std::move(part)));
    }
    return edit;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::map<std::string, std::vector<PartId>> byReference;
    for (const auto& [id, part] : survey.circuit().parts) {
        byReference[part.reference].push_back(id);
    }
    std::vector<Finding> findings;
    for (const auto& [reference, parts] : byReference) {
        const bool nameless = reference.empty();
        if (parts.size() < 2 && !nameless) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = parts;
        finding.value = static_cast<double>(parts.size());
        finding.limit = nameless ? 0 : 1;
        finding.what = nameless ? fmt::format("{} part{} no reference.", parts.size(),
                                              parts.size() == 1 ? " has" : "s have")
                                : fmt::format("{} parts are called {}.", parts.size(), reference);
        finding.why = "On the wiring sheet nobody can tell which of them is meant.";
        finding.remedies = {{"Give them the next free references.", renumbered(survey, parts, !nameless)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kReferenceNotUnique{"reference-not-unique",
                                      "Reference missing or given twice",
                                      SignalWord::Notice,
                                      "IEC 81346-1: a reference designates one object; value from memory",
                                      false,
                                      check};

} // namespace pumpwright

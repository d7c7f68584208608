#include "core/sheet/references.h"

#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// The run of digits, or of anything else, that `text` starts with.
std::string_view firstRun(std::string_view text) {
    const bool digits = !text.empty() && isDigit(text.front());
    const auto end = std::ranges::find_if(text, [&](char c) { return isDigit(c) != digits; });
    return text.substr(0, static_cast<std::size_t>(end - text.begin()));
}

std::string_view withoutLeadingZeros(std::string_view digits) {
    const std::size_t first = digits.find_first_not_of('0');
    return first == std::string_view::npos ? std::string_view() : digits.substr(first);
}

int comparedRuns(std::string_view a, std::string_view b) {
    if (!a.empty() && !b.empty() && isDigit(a.front()) && isDigit(b.front())) {
        const std::string_view left = withoutLeadingZeros(a);
        const std::string_view right = withoutLeadingZeros(b);
        if (left.size() != right.size()) {
            return left.size() < right.size() ? -1 : 1;
        }
        return left.compare(right);
    }
    return a.compare(b);
}

bool isCapital(char c) {
    return c >= 'A' && c <= 'Z';
}

template <class IdType, class Object>
void addReferences(std::vector<std::string>& references, const std::vector<IdType>& ids,
                   const std::map<IdType, Object>& objects) {
    for (const IdType& id : ids) {
        const auto found = objects.find(id);
        references.push_back(found == objects.end() ? id.text : found->second.reference);
    }
}

} // namespace

bool referenceBefore(std::string_view a, std::string_view b) {
    while (!a.empty() && !b.empty()) {
        const std::string_view left = firstRun(a);
        const std::string_view right = firstRun(b);
        if (const int order = comparedRuns(left, right); order != 0) {
            return order < 0;
        }
        a.remove_prefix(left.size());
        b.remove_prefix(right.size());
    }
    return a.empty() && !b.empty();
}

std::string lowerFirst(std::string_view label) {
    std::string text(label);
    const bool shorthand = text.size() > 1 && isCapital(text[1]);
    if (!text.empty() && isCapital(text.front()) && !shorthand) {
        text.front() = static_cast<char>(text.front() - 'A' + 'a');
    }
    return text;
}

std::string partName(const Circuit& circuit, const PartId& id) {
    const auto found = circuit.parts.find(id);
    if (found == circuit.parts.end()) {
        return id.text;
    }
    return fmt::format("{} {}", found->second.reference, lowerFirst(kindOf(found->second).title()));
}

std::string subjectReferences(const Circuit& circuit, const Finding& finding) {
    std::vector<std::string> references;
    addReferences(references, finding.parts, circuit.parts);
    addReferences(references, finding.wires, circuit.wires);
    addReferences(references, finding.hoses, circuit.hoses);
    return joinedReferences(std::move(references));
}

std::string joinedReferences(std::vector<std::string> references) {
    std::ranges::sort(references, referenceBefore);
    return fmt::format("{}", fmt::join(references, ", "));
}

} // namespace pumpwright

#include "core/parts/part_kind.h"

#include <algorithm>
#include <cassert>

namespace pumpwright {

double PartKind::value(const Part& part, std::string_view key) const {
    const auto own = part.values.find(std::string(key));
    if (own != part.values.end()) {
        return own->second;
    }
    const auto all = parameters();
    const auto spec =
        std::find_if(all.begin(), all.end(), [&](const ParameterSpec& one) { return one.key == key; });
    assert(spec != all.end() && "a kind asks only for its own parameters");
    return spec->standard;
}

std::vector<Failure> PartKind::failures(const Part& part) const {
    return failuresFromFeatures(features(part));
}

SetsValue PartKind::scaled(const Part& part, std::string_view key, double factor) const {
    const auto all = parameters();
    const auto spec = std::ranges::find(all, key, &ParameterSpec::key);
    assert(spec != all.end() && "a kind asks only for its own parameters");
    return {std::string(key), std::clamp(factor * value(part, key), spec->low, spec->high)};
}

Tolerance PartKind::tolerance(const Part& part, std::string_view key) const {
    const auto own = part.tolerances.find(std::string(key));
    if (own != part.tolerances.end()) {
        return own->second;
    }
    const auto all = parameters();
    const auto spec = std::ranges::find(all, key, &ParameterSpec::key);
    return {ToleranceSort::Uniform, spec == all.end() ? 0 : spec->tolerance};
}

std::string_view PartKind::choice(const Part& part, std::string_view key) const {
    const auto own = part.choices.find(std::string(key));
    if (own != part.choices.end()) {
        return own->second;
    }
    const auto all = choices();
    const auto spec =
        std::find_if(all.begin(), all.end(), [&](const ChoiceSpec& one) { return one.key == key; });
    assert(spec != all.end() && "a kind asks only for its own choices");
    return spec->options.front().id;
}

const PartKind* findPartKind(std::string_view id) {
    const auto kinds = partKinds();
    const auto found =
        std::find_if(kinds.begin(), kinds.end(), [&](const PartKind* kind) { return kind->id() == id; });
    return found == kinds.end() ? nullptr : *found;
}

const PartKind& kindOf(const Part& part) {
    const PartKind* kind = findPartKind(part.kind);
    assert(kind && "the kind of a part in a circuit is known");
    return *kind;
}

Part newPart(const PartKind& kind, std::string reference, GridPoint at) {
    Part part;
    part.kind = std::string(kind.id());
    part.reference = std::move(reference);
    part.at = at;
    return part;
}

} // namespace pumpwright

#include "core/parts/part_kind.h"
#include "core/sheet/cells.h"
#include "core/sheet/ratings.h"
#include "core/sheet/references.h"
#include "core/sheet/tables_p.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

std::string choicesText(const PartKind& kind, const Part& part) {
    std::vector<std::string_view> labels;
    for (const ChoiceSpec& choice : kind.choices()) {
        if (isAssumption(choice)) {
            continue;
        }
        const std::string_view chosen = kind.choice(part, choice.key);
        const auto option = std::ranges::find(choice.options, chosen, &ChoiceSpec::Option::id);
        labels.push_back(option == choice.options.end() ? chosen : option->label);
    }
    return labels.empty() ? kNothing : fmt::format("{}", fmt::join(labels, ", "));
}

struct ProtectedWires {
    std::vector<std::string> references;
    double thinnest_m2 = 0; ///< 0 while there is none
};

ProtectedWires wiresBehind(const PartId& fuse, const Circuit& circuit,
                           const std::map<WireId, Protection>& protection) {
    ProtectedWires wires;
    for (const auto& [id, wire] : circuit.wires) {
        const auto found = protection.find(id);
        if (found == protection.end() || !found->second.fuses.contains(fuse)) {
            continue;
        }
        const bool first = wires.references.empty();
        wires.references.push_back(wire.reference);
        wires.thinnest_m2 = first ? wire.area_m2 : std::min(wires.thinnest_m2, wire.area_m2);
    }
    return wires;
}

} // namespace

SheetTable fuseTable(const Circuit& circuit, const std::map<WireId, Protection>& protection) {
    SheetTable table{"Fuses",
                     {"Fuse", "Rating A", "Sort", "Protects wires", "Thinnest of them mm²"},
                     {false, true, false, false, true},
                     {}};
    for (const auto& [id, part] : circuit.parts) {
        const PartKind& kind = kindOf(part);
        const Features features = kind.features(part);
        if (!features.fuse) {
            continue;
        }
        const ProtectedWires wires = wiresBehind(id, circuit, protection);
        const bool none = wires.references.empty();
        table.rows.push_back({part.reference, numberIn(features.fuse->rating_A, QuantityKind::Current, "A"),
                              choicesText(kind, part), none ? "none" : joinedReferences(wires.references),
                              none ? kNothing : numberIn(wires.thinnest_m2, QuantityKind::WireArea, "mm²")});
    }
    std::ranges::stable_sort(table.rows,
                             [](const auto& a, const auto& b) { return referenceBefore(a[0], b[0]); });
    return table;
}

} // namespace pumpwright

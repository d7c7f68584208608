#include "core/parts/part_kind.h"
#include "core/sheet/cells.h"
#include "core/sheet/references.h"
#include "core/sheet/tables_p.h"
#include "core/units/wire_size.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// Objects in the order of their references; equal references in the order of ids.
template <class Object, class IdType>
std::vector<std::pair<IdType, const Object*>> inOrder(const std::map<IdType, Object>& objects) {
    std::vector<std::pair<IdType, const Object*>> ordered;
    for (const auto& [id, object] : objects) {
        ordered.emplace_back(id, &object);
    }
    std::ranges::stable_sort(ordered, [](const auto& a, const auto& b) {
        return referenceBefore(a.second->reference, b.second->reference);
    });
    return ordered;
}

std::string fuseText(const Circuit& circuit, const Protection& protection) {
    if (protection.returns) {
        return "ground";
    }
    if (!protection.live) {
        return kNothing;
    }
    std::vector<std::string> fuses;
    for (const PartId& fuse : protection.fuses) {
        fuses.push_back(circuit.parts.at(fuse).reference);
    }
    if (protection.unfused) {
        fuses.emplace_back("none");
    }
    return joinedReferences(std::move(fuses));
}

std::string gaugeNumberText(double area_m2) {
    const std::string name = awgName(nearestAwg(area_m2));
    return name.substr(0, name.find(' '));
}

} // namespace

SheetTable wireTable(const Circuit& circuit, const std::map<WireId, Protection>& protection) {
    SheetTable table{"Wires",
                     {"Wire", "From", "From terminal", "To", "To terminal", "Colour", "mm²", "AWG",
                      "Length m", "Insulation", "Fuse"},
                     {false, false, false, false, false, false, true, true, true, false, false},
                     {}};
    for (const auto& [id, wire] : inOrder(circuit.wires)) {
        const auto found = protection.find(id);
        table.rows.push_back({wire->reference, partName(circuit, wire->from.part), wire->from.terminal,
                              partName(circuit, wire->to.part), wire->to.terminal, wire->colour,
                              numberIn(wire->area_m2, QuantityKind::WireArea, "mm²"),
                              gaugeNumberText(wire->area_m2),
                              numberIn(wire->length_m, QuantityKind::Length, "m"), wire->insulation,
                              found == protection.end() ? kNothing : fuseText(circuit, found->second)});
    }
    return table;
}

SheetTable hoseTable(const Circuit& circuit) {
    SheetTable table{"Vacuum hoses",
                     {"Hose", "From", "From port", "To", "To port", "Inner diameter mm", "Length m"},
                     {false, false, false, false, false, true, true},
                     {}};
    for (const auto& [id, hose] : inOrder(circuit.hoses)) {
        table.rows.push_back({hose->reference, partName(circuit, hose->from.part), hose->from.terminal,
                              partName(circuit, hose->to.part), hose->to.terminal,
                              numberIn(hose->innerDiameter_m, QuantityKind::Length, "mm"),
                              numberIn(hose->length_m, QuantityKind::Length, "m")});
    }
    return table;
}

} // namespace pumpwright

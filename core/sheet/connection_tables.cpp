#include "core/parts/part_kind.h"
#include "core/sheet/cells.h"
#include "core/sheet/making_up.h"
#include "core/sheet/references.h"
#include "core/sheet/tables_p.h"
#include "core/units/wire_size.h"

#include <fmt/format.h>

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

/// What goes on the wire at one end, "blade 6.3", and which wires share its barrel: "blade 6.3 with W4".
using EndTexts = std::map<std::pair<WireId, End>, std::string>;

EndTexts endTexts(const Circuit& circuit) {
    EndTexts texts;
    for (const Crimp& crimp : crimpsOf(circuit)) {
        for (const WireId& id : crimp.wires) {
            std::vector<std::string> others;
            for (const WireId& other : crimp.wires) {
                if (other != id) {
                    others.push_back(circuit.wires.at(other).reference);
                }
            }
            texts[{id, crimp.at}] =
                crimpName(crimp) + (others.empty() ? "" : " with " + joinedReferences(std::move(others)));
        }
    }
    return texts;
}

/// "W3 RD 1.5 mm² to F1:2"
std::string leadText(const Circuit& circuit, const Wire& wire, const End& here) {
    const End& there = wire.from == here ? wire.to : wire.from;
    return fmt::format("{} {} {} to {}:{}", wire.reference, wire.colour,
                       formatQuantity(wire.area_m2, QuantityKind::WireArea, "mm²"),
                       circuit.parts.at(there.part).reference, there.terminal);
}

bool isConnectionPoint(const PartKind& kind, const Features& features, const Part& part) {
    const bool splice = features.fitting == Fitting::Splice && kind.terminals(part).size() == 1;
    return features.ground || features.fitting == Fitting::Pin || splice;
}

} // namespace

std::string leadsText(const Circuit& circuit, const End& at) {
    std::vector<std::string> leads;
    for (const auto& [id, wire] : inOrder(circuit.wires)) {
        if (wire->from == at || wire->to == at) {
            leads.push_back(leadText(circuit, *wire, at));
        }
    }
    return leads.empty() ? kNothing : fmt::format("{}", fmt::join(leads, "; "));
}

SheetTable wireTable(const Circuit& circuit, const std::map<WireId, Protection>& protection) {
    SheetTable table{
        "Wires",
        {"Wire", "From", "From terminal", "From crimp", "To", "To terminal", "To crimp", "Colour", "mm²",
         "AWG", "Length m", "Cut m", "Insulation", "Fuse"},
        {false, false, false, false, false, false, false, false, true, true, true, true, false, false},
        {}};
    const EndTexts ends = endTexts(circuit);
    for (const auto& [id, wire] : inOrder(circuit.wires)) {
        const auto found = protection.find(id);
        table.rows.push_back(
            {wire->reference, partName(circuit, wire->from.part), wire->from.terminal,
             ends.at({id, wire->from}), partName(circuit, wire->to.part), wire->to.terminal,
             ends.at({id, wire->to}), wire->colour, numberIn(wire->area_m2, QuantityKind::WireArea, "mm²"),
             gaugeNumberText(wire->area_m2), numberIn(wire->length_m, QuantityKind::Length, "m"),
             numberIn(cutLength_m(*wire), QuantityKind::Length, "m"), wire->insulation,
             found == protection.end() ? kNothing : fuseText(circuit, found->second)});
    }
    return table;
}

SheetTable connectionTable(const Circuit& circuit) {
    SheetTable table{"Connectors, splices and ground points",
                     {"Point", "Where", "Terminal", "Wires"},
                     std::vector<bool>(4, false),
                     {}};
    for (const auto& [id, part] : inOrder(circuit.parts)) {
        const PartKind& kind = kindOf(*part);
        if (!isConnectionPoint(kind, kind.features(*part), *part)) {
            continue;
        }
        for (const TerminalSpec& terminal : kind.terminals(*part)) {
            table.rows.push_back({partName(circuit, id), part->label.empty() ? kNothing : part->label,
                                  terminal.name, leadsText(circuit, {id, terminal.name})});
        }
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

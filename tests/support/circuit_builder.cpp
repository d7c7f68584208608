#include "tests/support/circuit_builder.h"

#include "core/parts/part_kind.h"

#include <stdexcept>

namespace pumpwright {
namespace {

bool names(const std::vector<TerminalSpec>& specs, const std::string& name) {
    for (const TerminalSpec& spec : specs) {
        if (spec.name == name) {
            return true;
        }
    }
    return false;
}

/// A test that wires a terminal which is not there tests nothing, so it stops at once.
void demandEnd(const Circuit& circuit, const End& end, bool vacuum) {
    const auto part = circuit.parts.find(end.part);
    if (part == circuit.parts.end()) {
        throw std::invalid_argument("no part " + end.part.text);
    }
    const PartKind& kind = kindOf(part->second);
    if (!names(vacuum ? kind.ports(part->second) : kind.terminals(part->second), end.terminal)) {
        throw std::invalid_argument(end.part.text + " has no " + end.terminal);
    }
}

} // namespace

End endOf(std::string_view text) {
    const std::size_t dot = text.find('.');
    if (dot == std::string_view::npos) {
        throw std::invalid_argument("an end is written PART.TERMINAL: " + std::string(text));
    }
    return {PartId{std::string(text.substr(0, dot))}, std::string(text.substr(dot + 1))};
}

CircuitBuilder& CircuitBuilder::part(std::string_view kind, std::string_view reference, Values values,
                                     Choices choices) {
    const PartKind* known = findPartKind(kind);
    if (known == nullptr) {
        throw std::invalid_argument("no part kind " + std::string(kind));
    }
    const int column = static_cast<int>(m_circuit.parts.size());
    Part part = newPart(*known, std::string(reference), {column % 8 * 12, column / 8 * 12});
    part.values.insert(values.begin(), values.end());
    part.choices.insert(choices.begin(), choices.end());
    m_circuit.parts.insert_or_assign(PartId{std::string(reference)}, std::move(part));
    return *this;
}

CircuitBuilder& CircuitBuilder::wire(std::string_view from, std::string_view to, double area_m2,
                                     double length_m) {
    Wire wire;
    wire.from = endOf(from);
    wire.to = endOf(to);
    demandEnd(m_circuit, wire.from, false);
    demandEnd(m_circuit, wire.to, false);
    const std::string number = std::to_string(m_circuit.wires.size() + 1);
    wire.reference = "W" + number;
    wire.area_m2 = area_m2;
    wire.length_m = length_m;
    m_circuit.wires.insert_or_assign(WireId{"w" + number}, std::move(wire));
    return *this;
}

CircuitBuilder& CircuitBuilder::hose(std::string_view from, std::string_view to, double innerDiameter_m,
                                     double length_m) {
    Hose hose;
    hose.from = endOf(from);
    hose.to = endOf(to);
    demandEnd(m_circuit, hose.from, true);
    demandEnd(m_circuit, hose.to, true);
    const std::string number = std::to_string(m_circuit.hoses.size() + 1);
    hose.reference = "H" + number;
    hose.innerDiameter_m = innerDiameter_m;
    hose.length_m = length_m;
    m_circuit.hoses.insert_or_assign(HoseId{"h" + number}, std::move(hose));
    return *this;
}

CircuitBuilder& CircuitBuilder::plan(DrivePlan plan) {
    m_circuit.plan = std::move(plan);
    return *this;
}

CircuitBuilder& CircuitBuilder::limits(ProjectLimits limits) {
    m_circuit.limits = limits;
    return *this;
}

} // namespace pumpwright

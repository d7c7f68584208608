#include "core/simulate/assembly.h"

#include "core/parts/gas.h"
#include "core/parts/part_kind.h"

#include <algorithm>
#include <cassert>

namespace pumpwright {
namespace {

constexpr double kNodeTolerance_V = 5e-3;
constexpr double kPressureTolerance_Pa = 2;
constexpr double kGasTolerance = 2e-5; ///< of a volume's mass and energy at ambient

/// The terminal that is 0 V where no ground point is: the negative one of the first supply.
std::optional<End> referenceTerminal(const Circuit& circuit) {
    std::optional<End> minus;
    for (const auto& [id, part] : circuit.parts) {
        const Features features = kindOf(part).features(part);
        if (features.ground) {
            return std::nullopt;
        }
        if (features.source && !minus) {
            minus = End{id, features.source->minus};
        }
    }
    return minus;
}

} // namespace

DriveSystem::Assembly::Assembly(DriveSystem& system, const Circuit& circuit)
    : m_system(system), m_circuit(circuit) {}

void DriveSystem::Assembly::build() {
    addNodes();
    addPartLaws();
    addConnections();
}

void DriveSystem::Assembly::addNodes() {
    const std::optional<End> reference = referenceTerminal(m_circuit);
    for (const auto& [id, part] : m_circuit.parts) {
        m_id = id.text;
        m_reference = part.reference;
        for (const TerminalSpec& terminal : kindOf(part).terminals(part)) {
            const End end{id, terminal.name};
            if (end == reference) {
                m_system.m_terminals[end] = kReference;
                continue;
            }
            const Unknown node = addUnknown({"voltage at terminal " + terminal.name, 0, kNodeTolerance_V});
            m_system.m_nodes.push_back(node);
            m_system.m_terminals[end] = node;
        }
    }
}

void DriveSystem::Assembly::addPartLaws() {
    for (const auto& [id, part] : m_circuit.parts) {
        m_id = id.text;
        m_reference = part.reference;
        m_part = id;
        place(kindOf(part).law(part, *this), Subject::Part, id.text, part.reference);
    }
}

void DriveSystem::Assembly::addConnections() {
    m_part = {};
    for (const auto& [id, wire] : m_circuit.wires) {
        m_id = id.text;
        m_reference = wire.reference;
        place(wireLaw(wire, nodeAt(wire.from), nodeAt(wire.to), *this), Subject::Wire, id.text,
              wire.reference);
    }
    for (const auto& [id, hose] : m_circuit.hoses) {
        m_id = id.text;
        m_reference = hose.reference;
        place(hoseLaw(hose, portAt(hose.from), portAt(hose.to), *this), Subject::Hose, id.text,
              hose.reference);
    }
}

void DriveSystem::Assembly::place(std::unique_ptr<Law> law, Subject subject, const std::string& id,
                                  const std::string& reference) {
    const std::vector<double> memory = law->memoryAtStart();
    const std::size_t probeCount = law->probes().size();
    m_system.m_laws.push_back(
        {std::move(law), subject, id, reference, m_system.m_memory.size(), memory.size(), probeCount});
    m_system.m_memory.insert(m_system.m_memory.end(), memory.begin(), memory.end());
}

Unknown DriveSystem::Assembly::nodeAt(const End& end) const {
    const auto found = m_system.m_terminals.find(end);
    assert(found != m_system.m_terminals.end() && "wires of a circuit end on terminals");
    return found->second;
}

GasNode DriveSystem::Assembly::portAt(const End& end) const {
    const auto found = m_system.m_ports.find(end);
    assert(found != m_system.m_ports.end() && "hoses of a circuit end on ports");
    return found->second;
}

Unknown DriveSystem::Assembly::node(std::string_view terminal) {
    return nodeAt({m_part, std::string(terminal)});
}

GasNode DriveSystem::Assembly::gas(std::string_view port) {
    return portAt({m_part, std::string(port)});
}

GasNode DriveSystem::Assembly::addGas(std::string_view name, double volume_m3, bool evacuated) {
    const DrivePlan& plan = surroundings().plan();
    const double ambient_Pa = surroundings().ambientPressure_Pa(0);
    const double pressure_Pa = std::max(1.0, evacuated ? ambient_Pa - plan.initialVacuum_Pa : ambient_Pa);
    const double mass_kg = air::mass_kg(pressure_Pa, volume_m3, plan.ambient_K);
    const double fullMass_kg = air::mass_kg(ambient_Pa, volume_m3, plan.ambient_K);
    const std::string what(name);
    GasNode node;
    node.pressure = addUnknown({"pressure " + what, pressure_Pa, kPressureTolerance_Pa});
    node.mass = addUnknown({"gas mass " + what, mass_kg, kGasTolerance * fullMass_kg});
    node.energy = addUnknown({"gas energy " + what, air::energy_J(mass_kg, plan.ambient_K),
                              kGasTolerance * air::energy_J(fullMass_kg, plan.ambient_K)});
    return node;
}

void DriveSystem::Assembly::setPortVolume(std::string_view port, double volume_m3, bool evacuated) {
    m_system.m_ports[{m_part, std::string(port)}] =
        addGas("at port " + std::string(port), volume_m3, evacuated);
}

void DriveSystem::Assembly::joinPorts(std::string_view port, std::string_view other) {
    m_system.m_ports[{m_part, std::string(other)}] = gas(port);
}

Unknown DriveSystem::Assembly::addUnknown(const UnknownSpec& spec) {
    m_system.m_start.push_back(spec.start);
    m_system.m_tolerances.push_back(spec.tolerance);
    m_system.m_owners.push_back({m_id, m_reference + " " + spec.name});
    return static_cast<Unknown>(m_system.m_start.size() - 1);
}

} // namespace pumpwright

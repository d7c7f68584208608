#include "tests/fuzz/compact_circuit.h"

#include "core/parts/document_fields.h"

#include <vector>

namespace pumpwright {
namespace {

template <class List>
const auto& oneOf(RandomCircuits& random, const List& list) {
    return list[static_cast<std::size_t>(random.below(static_cast<int>(list.size())))];
}

Part compactPart(RandomCircuits& random, const PartKind& kind, int number) {
    Part part = newPart(kind, std::string(kind.letter()) + std::to_string(number), {number, number});
    for (int count = kind.parameters().empty() ? 0 : random.below(4); count > 0; --count) {
        const ParameterSpec& spec = oneOf(random, kind.parameters());
        part.values[std::string(spec.key)] = random.valueOf(spec);
    }
    for (const ChoiceSpec& spec : kind.choices()) {
        part.choices[std::string(spec.key)] = std::string(oneOf(random, spec.options).id);
    }
    return part;
}

std::vector<End> endsOf(const Circuit& circuit, bool vacuum) {
    std::vector<End> ends;
    for (const auto& [id, part] : circuit.parts) {
        const PartKind& kind = kindOf(part);
        for (const TerminalSpec& spec : vacuum ? kind.ports(part) : kind.terminals(part)) {
            ends.push_back({id, spec.name});
        }
    }
    return ends;
}

void join(RandomCircuits& random, Circuit& circuit) {
    const std::vector<End> terminals = endsOf(circuit, false);
    for (int count = random.below(20); count > 0; --count) {
        Wire wire;
        wire.from = oneOf(random, terminals);
        wire.to = oneOf(random, terminals);
        wire.length_m = random.chance(20) ? random.valueOf(field::kWireLength) : wire.length_m;
        wire.area_m2 = random.chance(20) ? random.valueOf(field::kWireArea) : wire.area_m2;
        circuit.wires.emplace(freeWireId(circuit), wire);
    }
    const std::vector<End> ports = endsOf(circuit, true);
    for (int count = ports.empty() ? 0 : random.below(8); count > 0; --count) {
        Hose hose;
        hose.from = oneOf(random, ports);
        hose.to = oneOf(random, ports);
        hose.innerDiameter_m =
            random.chance(20) ? random.valueOf(field::kHoseDiameter) : hose.innerDiameter_m;
        hose.length_m = random.chance(20) ? random.valueOf(field::kHoseLength) : hose.length_m;
        circuit.hoses.emplace(freeHoseId(circuit), hose);
    }
}

DrivePlan compactPlan(RandomCircuits& random, const Circuit& circuit) {
    DrivePlan plan;
    plan.duration_s = 0.1 * (1 + random.below(20));
    plan.initialVacuum_Pa = random.chance(50) ? random.valueOf(field::kInitialVacuum) : 0;
    plan.ambient_K = random.chance(10) ? random.valueOf(field::kPlanAmbient) : plan.ambient_K;
    double time_s = 0;
    for (int count = random.below(6); count > 0; --count) {
        time_s += 0.05 * random.below(16);
        const auto part =
            std::next(circuit.parts.begin(), random.below(static_cast<int>(circuit.parts.size())));
        plan.switchMoves.push_back({time_s, part->first, random.chance(50)});
        if (random.chance(50)) {
            plan.presses.push_back({time_s, random.valueOf(field::kPressHold),
                                    random.valueOf(field::kPressForce), random.valueOf(field::kPressRise)});
        }
        if (random.chance(30)) {
            plan.charging.push_back({time_s, time_s + 0.05 * random.below(16)});
            plan.altitude.push_back({time_s, random.valueOf(field::kAltitude)});
        }
    }
    return plan;
}

} // namespace

Circuit compactCircuit(RandomCircuits& random, int mostParts) {
    Circuit circuit;
    circuit.parts.emplace(PartId{"g"}, newPart(*findPartKind("supply"), "G1", {0, 0}));
    for (int number = 1 + random.below(mostParts); number > 0; --number) {
        circuit.parts.emplace(freePartId(circuit), compactPart(random, *oneOf(random, partKinds()), number));
    }
    join(random, circuit);
    circuit.plan = compactPlan(random, circuit);
    return circuit;
}

} // namespace pumpwright

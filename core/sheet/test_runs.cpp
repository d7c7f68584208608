#include "core/sheet/test_runs.h"

#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kPumpDown_s = 120;
constexpr double kPressEvery_s = 4;
constexpr double kHold_s = 1.5;

DrivePlan standingPlan(const Circuit& circuit, double duration_s, double vacuum_Pa) {
    DrivePlan plan;
    plan.name = "Commissioning";
    plan.duration_s = duration_s;
    plan.ambient_K = circuit.plan.ambient_K;
    plan.initialVacuum_Pa = vacuum_Pa;
    return plan;
}

Circuit withSwitchesOff(Circuit circuit) {
    for (auto& [id, part] : circuit.parts) {
        if (isHandOperated(part)) {
            part.choices["atStart"] = "off";
        }
    }
    return circuit;
}

void switchOn(Circuit& circuit, double at_s) {
    for (const auto& [id, part] : circuit.parts) {
        if (isHandOperated(part)) {
            circuit.plan.switchMoves.push_back({at_s, id, true});
        }
    }
}

Recording run(const Circuit& circuit) {
    return simulateDrive(circuit).recording;
}

bool everRuns(const Recording& recording, const Circuit& circuit, const PartId& pump) {
    const Channel* current = recording.part(pump, probe::kCurrent);
    return current != nullptr &&
           current->extremes(0, recording.duration_s).highest > runningThreshold_A(circuit.parts.at(pump));
}

/// Without what its plug leads to.
void unplug(Circuit& circuit, const PartId& part) {
    std::erase_if(circuit.wires, [&](const auto& entry) {
        return entry.second.from.part == part || entry.second.to.part == part;
    });
}

} // namespace

double runningThreshold_A(const Part& pump) {
    constexpr double kShare = 0.1;
    for (const Load& load : kindOf(pump).features(pump).loads) {
        if (load.sort == LoadSort::Motor) {
            return kShare * load.running_A;
        }
    }
    return 0;
}

const Channel* vacuumThatCounts(const Recording& recording, const Circuit& circuit,
                                const Workings& workings) {
    const std::vector<PartId>& first = workings.boosters.empty() ? workings.pumps : workings.boosters;
    if (first.empty()) {
        return nullptr;
    }
    const Part& part = circuit.parts.at(first.front());
    const std::vector<PortSpec> ports = kindOf(part).ports(part);
    return ports.empty() ? nullptr : recording.port({first.front(), ports.front().name});
}

TestRuns testRunsOf(const Circuit& original, const Workings& workings) {
    TestRuns runs;
    Circuit circuit = withSwitchesOff(original);
    circuit.plan = standingPlan(circuit, TestRuns::kSwitchOn_s + kPumpDown_s, 0);
    switchOn(circuit, TestRuns::kSwitchOn_s);
    runs.pumpDown = run(circuit);
    if (!workings.pumps.empty() && !everRuns(runs.pumpDown, circuit, workings.pumps.front())) {
        runs.pedalHeld = true;
        circuit.plan.presses = {{TestRuns::kSwitchOn_s, kPumpDown_s, TestRuns::kPressForce_N, 0.2}};
        runs.pumpDown = run(circuit);
    }
    if (const Channel* vacuum = vacuumThatCounts(runs.pumpDown, circuit, workings)) {
        runs.reached_Pa = std::max(0.0, vacuum->at(runs.pumpDown.duration_s));
    }
    circuit.plan = standingPlan(circuit, TestRuns::kRest_s, runs.reached_Pa);
    runs.rest = run(circuit);
    for (int i = 0; i < TestRuns::kMostPresses; ++i) {
        runs.press_s.push_back(3 + i * kPressEvery_s);
    }
    circuit.plan = standingPlan(circuit, runs.press_s.back() + kPressEvery_s, runs.reached_Pa);
    switchOn(circuit, 0);
    for (const double at_s : runs.press_s) {
        circuit.plan.presses.push_back({at_s, kHold_s, TestRuns::kPressForce_N, 0.2});
    }
    runs.presses = run(circuit);
    if (!workings.pumps.empty()) {
        unplug(circuit, workings.pumps.front());
    }
    runs.unplugged = run(circuit);
    return runs;
}

} // namespace pumpwright

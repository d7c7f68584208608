#include "tests/support/sensible_circuits.h"

#include "core/parts/part_kind.h"
#include "tests/support/circuit_builder.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace pumpwright {

Circuit SensibleCircuits::circuit() {
    CircuitBuilder builder;
    addVacuumSide(builder);
    builder.part("supply", "G1", {}, {{"charging", chance(0.5) ? "alternator" : "none"}})
        .part("ground", "X1")
        .part("ground", "X2")
        .part("ground", "X3")
        .part("splice", "X5")
        .part("splice", "X8")
        .part("fuse", "F1")
        .wire("G1.31", "X1.31", 6e-6, 0.5)
        .wire("G1.30", "F1.1", 2.5e-6, 0.15)
        .wire("F1.2", "X5.1", 2.5e-6, 0.3);
    addTrigger(builder);
    addPumpSwitch(builder);
    addExtras(builder);
    Circuit circuit = builder.plan(plan()).build();
    vary(circuit);
    return circuit;
}

/// With or without check valve and reservoir; the switch on the booster's side or on the pump's.
void SensibleCircuits::addVacuumSide(CircuitBuilder& builder) {
    builder.part("booster", "A1").part("tee", "X9").part("vacuum-switch", "B1").part("pump", "M1");
    builder.hose("X9.c", "B1.vacuum", 0.004, 0.3);
    if (chance(0.15)) {
        builder.hose("A1.vacuum", "X9.a").hose("X9.b", "M1.inlet", 0.009, 0.8);
    } else if (chance(0.7)) {
        builder.part("check-valve", "R9")
            .hose("A1.vacuum", "X9.a")
            .hose("X9.b", "R9.booster")
            .hose("R9.pump", "M1.inlet", 0.009, 0.8);
    } else {
        builder.part("check-valve", "R9")
            .hose("A1.vacuum", "R9.booster")
            .hose("R9.pump", "X9.a")
            .hose("X9.b", "M1.inlet", 0.009, 0.8);
    }
    if (chance(0.3)) {
        builder.part("reservoir", "C9").hose("C9.a", "A1.vacuum");
    }
}

/// From the splice X5 to the splice X8, which commands the pump's switch.
void SensibleCircuits::addTrigger(CircuitBuilder& builder) {
    const double sort = between(0, 1);
    if (sort < 0.5) {
        builder.wire("X5.1", "B1.1", 0.75e-6).wire("B1.2", "X8.1", 0.75e-6);
    } else if (sort < 0.7) {
        builder
            .part("timer", "K2", {},
                  {{"function", chance(0.6)   ? "delay-on-release"
                                : chance(0.5) ? "single-shot"
                                              : "delay-on-make"}})
            .part("ground", "X4")
            .wire("X5.1", "B1.1", 0.75e-6)
            .wire("X5.1", "K2.15", 0.75e-6)
            .wire("X5.1", "K2.30", 0.75e-6)
            .wire("K2.31", "X4.31", 0.75e-6)
            .wire("B1.2", "K2.S", 0.75e-6)
            .wire("K2.87", "X8.1", 0.75e-6);
    } else if (sort < 0.85) {
        builder.part("pedal-switch", "S2")
            .part("lamp", "P2", {}, {{"sort", chance(0.7) ? "filament" : "led"}})
            .part("diode", "R1")
            .part("ground", "X7")
            .wire("X5.1", "S2.1", 0.75e-6)
            .wire("S2.2", "P2.1", 0.75e-6)
            .wire("P2.2", "X7.31", 0.75e-6)
            .wire("S2.2", "R1.A", 0.75e-6)
            .wire("R1.K", "X8.1", 0.75e-6);
    } else {
        builder.part("hand-switch", "S1", {}, {{"atStart", "on"}})
            .wire("X5.1", "S1.1", 0.75e-6)
            .wire("S1.2", "B1.1", 0.75e-6)
            .wire("B1.2", "X8.1", 0.75e-6);
    }
}

void SensibleCircuits::addPumpSwitch(CircuitBuilder& builder) {
    builder.wire("M1.-", "X2.31", 2.5e-6, 0.5);
    if (chance(0.2)) {
        builder.part("solid-state-relay", "K1")
            .part("diode", "R2")
            .wire("X8.1", "K1.A1", 0.75e-6)
            .wire("K1.A2", "X3.31", 0.75e-6)
            .wire("X5.1", "K1.1", 2.5e-6)
            .wire("K1.2", "M1.+", 2.5e-6)
            .wire("R2.K", "M1.+", 1.5e-6, 0.1)
            .wire("R2.A", "X2.31", 1.5e-6, 0.1);
        return;
    }
    static const std::string kSuppressions[] = {"none", "diode", "resistor", "zener"};
    builder
        .part("relay", "K1", {},
              {{"suppression", kSuppressions[m_random() % 4]},
               {"contacts", chance(0.7) ? "make" : "changeover"}})
        .wire("X8.1", "K1.86", 0.75e-6)
        .wire("K1.85", "X3.31", 0.75e-6)
        .wire("X5.1", "K1.30", 2.5e-6)
        .wire("K1.87", "M1.+", 2.5e-6);
}

/// What people add: a lamp or a buzzer beside the coil, a capacitor that holds it, a connector on the way.
void SensibleCircuits::addExtras(CircuitBuilder& builder) {
    if (chance(0.4)) {
        builder.part("lamp", "P1", {}, {{"sort", chance(0.5) ? "filament" : "led"}})
            .part("ground", "X6")
            .wire("X8.1", "P1.1", 0.75e-6)
            .wire("P1.2", "X6.31", 0.75e-6);
    }
    if (chance(0.2)) {
        builder.part("buzzer", "P3").wire("X8.1", "P3.+", 0.75e-6).wire("P3.-", "X3.31", 0.75e-6);
    }
    if (chance(0.2)) {
        builder.part("capacitor", "C1").wire("X8.1", "C1.+", 0.75e-6).wire("C1.-", "X3.31", 0.75e-6);
    }
    if (chance(0.2)) {
        builder.part("resistor", "R5").wire("X8.1", "R5.1", 0.75e-6).wire("R5.2", "X3.31", 0.75e-6);
    }
}

DrivePlan SensibleCircuits::plan() {
    DrivePlan plan;
    plan.duration_s = 25;
    plan.ambient_K = between(253, 323);
    plan.initialVacuum_Pa = chance(0.3) ? 0 : between(0, 60e3);
    for (double at_s = between(2, 8); at_s < 22; at_s += between(3, 9)) {
        plan.presses.push_back({at_s, between(0.3, 2), between(20, 400), between(0.05, 0.4), {}});
    }
    if (chance(0.5)) {
        const double from_s = between(0, 10);
        plan.charging.push_back({from_s, from_s + between(1, 30), {}});
    }
    if (chance(0.2)) {
        plan.switchMoves.push_back({between(8, 12), {"S1"}, false, {}});
        plan.switchMoves.push_back({between(13, 20), {"S1"}, true, {}});
    }
    if (chance(0.2)) {
        plan.altitude = {{0, between(0, 500), {}}, {25, between(0, 3000), {}}};
    }
    return plan;
}

/// From two thirds to one and a half times a part's usual values, inside their ranges.
void SensibleCircuits::vary(Circuit& circuit) {
    for (auto& [id, part] : circuit.parts) {
        for (const ParameterSpec& spec : kindOf(part).parameters()) {
            const double value = spec.standard * std::exp(between(-0.35, 0.35));
            part.values[std::string(spec.key)] = std::clamp(value, spec.low, spec.high);
        }
    }
}

} // namespace pumpwright

#pragma once

#include "tests/support/circuit_builder.h"

namespace pumpwright {

/// The vacuum side of the van: booster A1, tee X9, check valve R9, vacuum switch B1 and pump M1, joined by
/// hoses, the switch on the booster's side of the check valve.
inline CircuitBuilder vanVacuumSide(CircuitBuilder::Values switchValues = {}) {
    return CircuitBuilder()
        .part("booster", "A1")
        .part("tee", "X9")
        .part("check-valve", "R9")
        .part("vacuum-switch", "B1", switchValues)
        .part("pump", "M1")
        .hose("A1.vacuum", "X9.a")
        .hose("X9.c", "B1.vacuum", 0.004, 0.3)
        .hose("X9.b", "R9.booster")
        .hose("R9.pump", "M1.inlet", 0.009, 0.8);
}

/// Adds battery G1 with ground X1, fuse F1, relay K1 that feeds the pump, and grounds for coil and pump. What
/// triggers the relay at "K1.86" is up to the test.
inline CircuitBuilder& addPumpFeed(CircuitBuilder& builder, CircuitBuilder::Choices relayChoices = {}) {
    return builder.part("supply", "G1")
        .part("ground", "X1")
        .part("ground", "X2")
        .part("ground", "X3")
        .part("fuse", "F1", {{"rating_A", 15}})
        .part("relay", "K1", {}, relayChoices)
        .wire("G1.31", "X1.31", 6e-6, 0.5)
        .wire("G1.30", "F1.1", 2.5e-6, 0.15)
        .wire("F1.2", "K1.30", 2.5e-6, 1.5)
        .wire("K1.87", "M1.+", 2.5e-6, 1.5)
        .wire("M1.-", "X2.31", 2.5e-6, 0.5)
        .wire("K1.85", "X3.31", 0.75e-6, 0.5);
}

/// A drive without presses: the pump empties the booster from atmosphere and then stands by.
inline DrivePlan standingPlan(double duration_s = 60) {
    DrivePlan plan;
    plan.duration_s = duration_s;
    return plan;
}

} // namespace pumpwright

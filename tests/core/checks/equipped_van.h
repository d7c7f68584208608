#pragma once

#include "tests/core/checks/run_rule.h"

namespace pumpwright {

/// The van's pump behind an ignition switch, with a low-vacuum lamp on a switch and a fuse of its own:
/// nothing above a NOTICE.
inline CircuitBuilder equippedVan(CircuitBuilder::Choices relayChoices = {{"suppression", "diode"}}) {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, relayChoices)
        .part("hand-switch", "S1", {}, {{"atStart", "on"}})
        .part("fuse", "F8", {{"rating_A", 3}})
        .part("vacuum-switch", "B8", {{"setPoint_Pa", 30e3}, {"differential_Pa", 6e3}})
        .part("lamp", "P8", {{"ratedPower_W", 0.3}}, {{"sort", "led"}})
        .part("ground", "X8")
        .wire("F1.2", "S1.1", 0.75e-6, 1)
        .wire("S1.2", "B1.1", 0.75e-6, 1)
        .wire("B1.2", "K1.86", 0.75e-6, 1)
        .wire("G1.30", "F8.1", 0.75e-6, 0.15)
        .wire("F8.2", "B8.1", 0.75e-6, 1)
        .wire("B8.2", "P8.1", 0.75e-6, 1)
        .wire("P8.2", "X8.31", 0.75e-6, 0.5);
    builder.hose("X9.c", "B8.vacuum", 0.004, 0.3);
    return builder;
}

} // namespace pumpwright

#pragma once

#include "tests/support/van_circuit.h"

namespace pumpwright {

/// The van's pump, switched by vacuum switch B1 through relay K1 behind fuse F1, with title block, prices and
/// a drive of 30 s with two presses.
inline Circuit pumpCircuit() {
    CircuitBuilder builder = vanVacuumSide();
    DrivePlan plan = standingPlan(30);
    plan.presses = {{15, 1.5, 120, 0.2}, {22, 1.5, 180, 0.2}};
    Circuit circuit = addPumpFeed(builder)
                          .part("fuse", "F2", {{"rating_A", 5}})
                          .wire("F1.1", "F2.1", 1.5e-6, 0.2)
                          .wire("F2.2", "B1.1", 0.75e-6, 1.2)
                          .wire("B1.2", "K1.86", 0.75e-6, 1.2)
                          .plan(plan)
                          .build();
    circuit.title = {"Vacuum pump of the delivery van",
                     "Small delivery van, converted to electric drive",
                     "Workshop in the yard",
                     "VP-01",
                     "A",
                     "2026-03-01",
                     "N. N.",
                     ""};
    int column = 0;
    for (auto& [id, part] : circuit.parts) {
        part.at = {10 + 12 * (column % 5), 8 + 14 * (column / 5)};
        part.price = 2.5;
        ++column;
    }
    return circuit;
}

} // namespace pumpwright

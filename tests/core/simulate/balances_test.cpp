#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <cmath>

using namespace pumpwright;

namespace {

Circuit van(double duration_s) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", 3e3}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6);
    DrivePlan plan = standingPlan(duration_s);
    plan.presses = {{duration_s - 8, 2, 200, 0.2, {}}};
    return builder.plan(plan).build();
}

} // namespace

TEST_CASE("what a drive takes in goes out or is held", "[simulate][balances]") {
    const Balances balances = simulateDrive(van(30)).balances;
    CHECK(balances.energy_J.in > 100);
    CHECK(balances.gas_kg.out > 1e-3);
    CHECK(balances.charge_C.in > 50);
    for (const Balance& balance : {balances.energy_J, balances.gas_kg, balances.charge_C}) {
        CAPTURE(balance.in, balance.out, balance.held, balance.offShare);
        CHECK(balance.offShare < 1e-6);
    }
}

// What the battery gives is its charge: 12.65 V at rest, and the current's integral.
TEST_CASE("the energy that a resistor turns to heat is the one that the battery gave",
          "[simulate][balances]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1", {{"internalResistance_ohm", 1}, {"capacity_C", 3.6e6}})
                                .part("resistor", "R1", {{"resistance_ohm", 9}})
                                .wire("G1.30", "R1.1", 10e-6, 0.001)
                                .wire("R1.2", "G1.31", 10e-6, 0.001)
                                .plan(standingPlan(100))
                                .build();
    const Balances balances = simulateDrive(circuit).balances;
    CHECK(balances.energy_J.in == Approx(12.65 * 12.65 / 10 * 100).epsilon(1e-3));
    CHECK(balances.energy_J.offShare < 1e-6);
    CHECK(balances.charge_C.in == Approx(126.5).epsilon(1e-3));
}

TEST_CASE("a run that need not report its balances goes the same way", "[simulate][balances]") {
    DriveOptions quick;
    quick.balances = false;
    const DriveResult with = simulateDrive(van(20));
    const DriveResult without = simulateDrive(van(20), quick);
    CHECK(without.balances.energy_J.in == 0);
    CHECK(with.statistics.steps == without.statistics.steps);
    CHECK(with.recording.port(endOf("A1.vacuum"))->values ==
          without.recording.port(endOf("A1.vacuum"))->values);
}

TEST_CASE("nothing in, nothing out", "[simulate][balances]") {
    const Balances empty = simulateDrive(CircuitBuilder().build()).balances;
    CHECK(empty.energy_J.offShare == 0);
    CHECK(empty.gas_kg.offShare == 0);
    const Circuit loose =
        CircuitBuilder().part("relay", "K1").part("supply", "G1").part("booster", "A1").build();
    const Balances balances = simulateDrive(loose).balances;
    CHECK(balances.energy_J.offShare < 1e-6);
    CHECK(balances.gas_kg.offShare < 1e-6);
    CHECK(balances.charge_C.offShare < 1e-6);
}

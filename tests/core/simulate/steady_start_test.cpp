#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <cmath>

using namespace pumpwright;

namespace {

CircuitBuilder van() {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", 6e3}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6);
    return builder;
}

DriveResult drive(CircuitBuilder& builder, bool steady) {
    DrivePlan plan = standingPlan(5);
    plan.startsSteady = steady;
    plan.presses = {{2, 1, 100, 0.2, {}}};
    return simulateDrive(builder.plan(plan).build());
}

} // namespace

TEST_CASE("a steady start finds the booster evacuated and the pump at rest", "[simulate][steady]") {
    CircuitBuilder builder = van();
    const DriveResult cold = drive(builder, false);
    const DriveResult steady = drive(builder, true);
    REQUIRE(steady.status == DriveStatus::Finished);
    CHECK(cold.recording.port(endOf("A1.vacuum"))->at(0) == Approx(0).margin(50));
    CHECK(steady.recording.port(endOf("A1.vacuum"))->at(0) > 54e3);
    CHECK(std::abs(steady.recording.part({"M1"}, probe::kSpeed)->at(1)) < 1);
    CHECK(steady.recording.channels.front().times_s.front() == 0);
    for (const DriveEvent& event : steady.recording.events) {
        CHECK(event.time_s >= 2); // nothing happens before the press
    }
    CHECK(steady.balances.gas_kg.offShare < 1e-6);
}

TEST_CASE("a steady start leaves the battery as charged as its Nameplate says", "[simulate][steady]") {
    CircuitBuilder builder;
    builder.part("supply", "G1", {{"capacity_C", 360}, {"stateOfCharge_share", 0.5}})
        .part("lamp", "P1", {{"ratedPower_W", 5}})
        .wire("G1.30", "P1.1")
        .wire("P1.2", "G1.31");
    const DriveResult steady = drive(builder, true);
    REQUIRE(steady.status == DriveStatus::Finished);
    const Channel& current = *steady.recording.part({"P1"}, probe::kCurrent);
    // warm from the first instant: no inrush
    CHECK(current.extremes(0, 1).highest < 1.02 * current.at(0));
    CHECK(current.at(0) == Approx(5.0 / 12).epsilon(0.05));
    CHECK(steady.recording.terminal(endOf("G1.30"))->at(0) == Approx(12.24).margin(0.02));
}

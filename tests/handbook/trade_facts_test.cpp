// Facts of the trade that must come out of the simulation by themselves.
// Source of each: common practice, no published source.

#include "core/parts/part_kind.h"
#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>

using namespace pumpwright;

namespace {

long closings(const DriveResult& run, const std::string& id, double from_s = 0, double to_s = 1e9) {
    return std::count_if(run.recording.events.begin(), run.recording.events.end(),
                         [&](const DriveEvent& event) {
                             return event.id == id && event.what == "contacts close" &&
                                    event.time_s >= from_s && event.time_s <= to_s;
                         });
}

double vacuumAt(const DriveResult& run, double time_s) {
    const Channel* vacuum = run.recording.port(endOf("A1.vacuum"));
    REQUIRE(vacuum != nullptr);
    return vacuum->at(time_s);
}

/// Vacuum switch B1 feeds the relay's coil at once.
Circuit directlySwitched(double differential_Pa, double reservoir_m3) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", differential_Pa}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6);
    if (reservoir_m3 > 0) {
        builder.part("reservoir", "C1", {{"volume_m3", reservoir_m3}}).hose("C1.a", "A1.vacuum");
    }
    return builder.plan(standingPlan()).build();
}

/// Vacuum switch B1 triggers the run-on timer K2, which feeds the relay's coil.
Circuit withRunOn(double delay_s) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", 200}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("timer", "K2", {{"delay_s", delay_s}})
        .part("ground", "X4")
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("F1.2", "K2.15", 0.75e-6)
        .wire("F1.2", "K2.30", 0.75e-6)
        .wire("K2.31", "X4.31", 0.75e-6)
        .wire("B1.2", "K2.S", 0.75e-6)
        .wire("K2.87", "K1.86", 0.75e-6);
    return builder.plan(standingPlan()).build();
}

} // namespace

TEST_CASE("a very small differential makes the relay chatter as the pump reaches its set point",
          "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(200, 0));
    REQUIRE(run.status == DriveStatus::Finished);
    INFO("closings: " << closings(run, "K1"));
    CHECK(closings(run, "K1") >= 5);
}

TEST_CASE("a larger differential does not chatter", "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(8e3, 0));
    REQUIRE(run.status == DriveStatus::Finished);
    CHECK(closings(run, "K1") <= 2);
}

TEST_CASE("a bigger reservoir does not cure the chatter", "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(200, 4e-3));
    REQUIRE(run.status == DriveStatus::Finished);
    CHECK(closings(run, "K1") >= 5);
}

TEST_CASE("a run-on of five seconds cures it and leaves the booster well above the set point",
          "[handbook][trade]") {
    const DriveResult run = simulateDrive(withRunOn(5));
    REQUIRE(run.status == DriveStatus::Finished);
    CHECK(closings(run, "K1") == 1);
    CHECK(vacuumAt(run, 40) > 55e3 + 8e3);
}

TEST_CASE("with the brake-lamp switch as the only trigger there is no assist at the first press",
          "[handbook][trade]") {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("pedal-switch", "S2")
        .part("diode", "R1")
        .wire("F1.2", "S2.1", 0.75e-6)
        .wire("S2.2", "R1.A", 0.75e-6)
        .wire("R1.K", "K1.86", 0.75e-6);
    DrivePlan plan = standingPlan(20);
    plan.presses = {{5, 1.5, 100, 0.2}};
    const DriveResult run = simulateDrive(builder.plan(plan).build());
    REQUIRE(run.status == DriveStatus::Finished);
    const Channel* assist = run.recording.part(PartId{"A1"}, probe::kAssist);
    const Channel* asked = run.recording.part(PartId{"A1"}, probe::kAssistAsked);
    REQUIRE(assist != nullptr);
    REQUIRE(asked != nullptr);
    CHECK(asked->at(5.3) > 500);
    CHECK(assist->at(5.3) < 0.1 * asked->at(5.3));
    CHECK(closings(run, "K1") == 1);
}

TEST_CASE("a pump that runs at about 5.5 A takes about 12 A at the start", "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(8e3, 0));
    const Channel* current = run.recording.part(PartId{"M1"}, probe::kCurrent);
    REQUIRE(current != nullptr);
    CHECK(current->extremes(0, 1).highest == Approx(12).margin(1.5));
    CHECK(current->at(6) == Approx(5.5).margin(1));
}

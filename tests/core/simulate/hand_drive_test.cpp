#include "core/simulate/hand_drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <cmath>

using namespace pumpwright;

namespace {

/// The van's pump behind a vacuum switch that a hand switch S1 feeds, and a brake lamp on a pedal switch S2.
Circuit switchedVan(double duration_s = 20) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", 3e3}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("hand-switch", "S1")
        .part("pedal-switch", "S2")
        .part("lamp", "P1")
        .part("ground", "X4")
        .wire("F1.2", "S1.1", 0.75e-6)
        .wire("S1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6)
        .wire("F1.2", "S2.1", 0.75e-6)
        .wire("S2.2", "P1.1", 0.75e-6)
        .wire("P1.2", "X4.31", 0.75e-6);
    return builder.plan(standingPlan(duration_s)).build();
}

/// Switches on at 2.3 s, brakes from 11.15 s to 12.4 s, and switches off at 14 s, with a clock that ticks
/// every 50 ms.
void operate(HandDrive& drive, double end_s = 16) {
    const auto goTo = [&](double time_s) {
        while (drive.run().time_s() < time_s) {
            REQUIRE(drive.advanceTo(std::min(time_s, drive.run().time_s() + 0.05)));
        }
    };
    goTo(2.3);
    REQUIRE(drive.moveSwitch({"S1"}, true));
    goTo(11.15);
    REQUIRE(drive.pressPedal(120));
    goTo(12.4);
    REQUIRE(drive.releasePedal());
    goTo(14);
    REQUIRE(drive.moveSwitch({"S1"}, false));
    goTo(end_s);
}

bool closed(const Recording& recording, const PartId& part, double time_s) {
    const Channel* contact = recording.part(part, probe::kContact);
    REQUIRE(contact != nullptr);
    return contact->at(time_s) > 0.5;
}

} // namespace

TEST_CASE("a run brought forward bit by bit is the drive that it is at once", "[simulate][hand-drive]") {
    const Circuit circuit = switchedVan(6);
    const DriveResult atOnce = simulateDrive(circuit);
    const DriveOptions options;
    DriveRun run(circuit, options);
    while (run.time_s() < 6) {
        REQUIRE(run.advanceTo(std::min(6.0, run.time_s() + 0.02)));
    }
    const DriveResult bits = run.finish();
    REQUIRE(bits.recording.duration_s == atOnce.recording.duration_s);
    const End booster = endOf("A1.vacuum");
    for (const double time_s : {0.5, 2.0, 4.0, 5.9}) {
        // The bound is the recording's own resolution of a vacuum, twice.
        CHECK(bits.recording.port(booster)->at(time_s) ==
              Approx(atOnce.recording.port(booster)->at(time_s)).margin(40));
    }
}

TEST_CASE("a hand on the switches does what a plan of the same moves does", "[simulate][hand-drive]") {
    const Circuit circuit = switchedVan();
    const DriveOptions options;
    HandDrive byHand(circuit, options);
    operate(byHand);

    Circuit planned = circuit;
    planned.plan = byHand.plan();
    CHECK(planned.plan.duration_s == Approx(16));
    REQUIRE(planned.plan.presses.size() == 1);
    CHECK(planned.plan.presses.front().hold_s == Approx(1.25));
    CHECK(planned.plan.switchMoves.size() == 2);
    const DriveResult again = simulateDrive(planned);

    const Recording recording = byHand.run().recordingSince(0);
    REQUIRE(again.recording.events.size() == recording.events.size());
    for (std::size_t i = 0; i < recording.events.size(); ++i) {
        CHECK(recording.events[i].what == again.recording.events[i].what);
        CHECK(recording.events[i].id == again.recording.events[i].id);
        CHECK(recording.events[i].time_s == Approx(again.recording.events[i].time_s).margin(2e-3));
    }
    for (double time_s = 0.5; time_s < 16; time_s += 0.5) {
        CHECK(recording.port(endOf("A1.vacuum"))->at(time_s) ==
              Approx(again.recording.port(endOf("A1.vacuum"))->at(time_s)).margin(60));
    }
}

TEST_CASE("what is switched and pressed by hand is seen at once", "[simulate][hand-drive]") {
    const DriveOptions options;
    HandDrive drive(switchedVan(), options);
    operate(drive);
    const Recording recording = drive.run().recordingSince(0);
    CHECK_FALSE(closed(recording, {"S1"}, 2.2));
    CHECK(closed(recording, {"S1"}, 2.301));
    CHECK(closed(recording, {"K1"}, 2.4));
    CHECK(closed(recording, {"S2"}, 11.3)); // 15 N of 120 N come 25 ms after the foot
    CHECK_FALSE(closed(recording, {"S2"}, 12.7));
    CHECK_FALSE(closed(recording, {"S1"}, 14.001));
    CHECK_FALSE(drive.isPedalPressed());
}

TEST_CASE("doing by hand what is done already changes nothing", "[simulate][hand-drive]") {
    const DriveOptions options;
    HandDrive drive(switchedVan(), options);
    REQUIRE(drive.advanceTo(1));
    CHECK(drive.releasePedal());
    CHECK(drive.pressPedal(100));
    CHECK(drive.pressPedal(300));
    CHECK(drive.moveSwitch({"S1"}, true));
    CHECK(drive.moveSwitch({"S1"}, true));
    CHECK(drive.setCharging(false));
    REQUIRE(drive.advanceTo(2));
    const DrivePlan plan = drive.plan();
    REQUIRE(plan.presses.size() == 1);
    CHECK(plan.presses.front().force_N == 100);
    CHECK(plan.presses.front().hold_s == Approx(1)); // up to now, as it is still held
    CHECK(plan.switchMoves.size() == 1);
    CHECK(plan.charging.empty());
}

TEST_CASE("the engine is started and stopped by hand", "[simulate][hand-drive]") {
    Circuit circuit = switchedVan();
    circuit.parts.at({"G1"}).choices["charging"] = "alternator";
    circuit.plan.charging = {{0, 5, {}}};
    circuit.plan.presses = {{1, 1, 100, 0.2, {}}};
    circuit.plan.altitude = {{0, 500}, {20, 2000}};
    const DriveOptions options;
    HandDrive drive(circuit, options);
    CHECK(drive.isCharging()); // as the plan begins
    REQUIRE(drive.advanceTo(8));
    CHECK(drive.setCharging(false));
    REQUIRE(drive.advanceTo(10));
    CHECK(drive.setCharging(true));
    REQUIRE(drive.advanceTo(12));
    const Recording recording = drive.run().recordingSince(0);
    const Channel& atPole = *recording.terminal(endOf("G1.30"));
    // 40 A into 8 mΩ lift the poles by a third of a volt.
    CHECK(atPole.at(7.9) > atPole.at(9.9) + 0.2);
    CHECK(atPole.at(11.9) > atPole.at(9.9) + 0.2);
    const DrivePlan plan = drive.plan();
    CHECK(plan.presses.empty()); // nobody pressed
    CHECK(plan.altitude.size() == 1);
    REQUIRE(plan.charging.size() == 2);
    CHECK(plan.charging[0].to_s == Approx(8));
    CHECK(plan.charging[1].from_s == Approx(10));
    CHECK(plan.charging[1].to_s == Approx(12));
}

TEST_CASE("a part of the recording begins where it was asked for and ends now", "[simulate][hand-drive]") {
    const DriveOptions options;
    HandDrive drive(switchedVan(), options);
    operate(drive);
    const Recording whole = drive.run().recordingSince(0);
    const Recording recent = drive.run().recordingSince(13);
    REQUIRE(recent.channels.size() == whole.channels.size());
    CHECK(recent.duration_s == Approx(16));
    CHECK(recent.bytes() < whole.bytes());
    for (std::size_t i = 0; i < whole.channels.size(); ++i) {
        CHECK(recent.channels[i].key == whole.channels[i].key);
        for (const double time_s : {13.0, 13.5, 14.0, 15.0, 16.0}) {
            CHECK(recent.channels[i].at(time_s) == whole.channels[i].at(time_s));
        }
    }
    for (const DriveEvent& event : recent.events) {
        CHECK(event.time_s >= 13);
    }
    CHECK_FALSE(recent.events.empty());
}

#include "core/parts/part_kind.h"
#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>
#include <cmath>

// Circuits that nobody should build, and that somebody draws: each ends in a right answer, or in a message
// that names the part.

using namespace pumpwright;

namespace {

CircuitBuilder van() {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder).wire("F1.2", "B1.1", 0.75e-6).wire("B1.2", "K1.86", 0.75e-6);
    return builder;
}

/// Comes to its end with numbers throughout, or stops and names somebody.
void checkEnd(const DriveResult& drive) {
    CAPTURE(drive.message);
    if (drive.status == DriveStatus::Stopped) {
        CHECK_FALSE(drive.message.empty());
        CHECK_FALSE(drive.suspects.empty());
        return;
    }
    REQUIRE(drive.status == DriveStatus::Finished);
    for (const Channel& channel : drive.recording.channels) {
        const Extremes extremes = channel.extremes(0, drive.recording.duration_s);
        CAPTURE(channel.key.id, channel.key.name);
        REQUIRE(std::isfinite(extremes.lowest));
        REQUIRE(std::isfinite(extremes.highest));
    }
    CHECK(drive.balances.energy_J.offShare < 1e-3);
    CHECK(drive.balances.gas_kg.offShare < 1e-5);
}

std::vector<double> timesOf(const DriveResult& drive, const std::string& id, std::string_view what) {
    std::vector<double> times;
    for (const DriveEvent& event : drive.recording.events) {
        if (event.id == id && event.what == what) {
            times.push_back(event.time_s);
        }
    }
    return times;
}

} // namespace

TEST_CASE("every value of every part of the van at its least and at its largest ends well",
          "[simulate][nasty]") {
    for (const auto& [id, part] : van().build().parts) {
        for (const ParameterSpec& spec : kindOf(part).parameters()) {
            for (const double extreme : {spec.low, spec.high}) {
                Circuit circuit = van().plan(standingPlan(1)).build();
                circuit.plan.presses = {{0.3, 0.3, 300, 0.05, {}}};
                circuit.parts.at(id).values[std::string(spec.key)] = extreme;
                INFO(id.text << " " << spec.key << " " << extreme);
                checkEnd(simulateDrive(circuit));
            }
        }
    }
}

TEST_CASE("all values of the van at their least, and all at their largest, end well", "[simulate][nasty]") {
    for (const bool largest : {false, true}) {
        Circuit circuit = van().plan(standingPlan(1)).build();
        for (auto& [id, part] : circuit.parts) {
            for (const ParameterSpec& spec : kindOf(part).parameters()) {
                part.values[std::string(spec.key)] = largest ? spec.high : spec.low;
            }
        }
        INFO(largest);
        checkEnd(simulateDrive(circuit));
    }
}

TEST_CASE("wires without length and wires without end make no difference to whether it ends",
          "[simulate][nasty]") {
    for (const double length_m : {1e-3, 1000.0}) {
        for (const double area_m2 : {1e-8, 1e-3}) {
            Circuit circuit = van().plan(standingPlan(2)).build();
            for (auto& [id, wire] : circuit.wires) {
                wire.length_m = length_m;
                wire.area_m2 = area_m2;
            }
            INFO(length_m << " m, " << area_m2 << " m²");
            checkEnd(simulateDrive(circuit));
        }
    }
}

// Ohm's law round the loop: (12.65 − 11.89) V over both batteries and two wires.
TEST_CASE("two batteries side by side share what Ohm's law says", "[simulate][nasty]") {
    const Circuit circuit =
        CircuitBuilder()
            .part("supply", "G1", {{"internalResistance_ohm", 5e-4}})
            .part("supply", "G2", {{"internalResistance_ohm", 5e-4}, {"stateOfCharge_share", 0}})
            .wire("G1.30", "G2.30", 1e-3, 1e-3)
            .wire("G1.31", "G2.31", 1e-3, 1e-3)
            .plan(standingPlan(1))
            .build();
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    const double loop_ohm = 2 * 5e-4 + 2 * (1.7241e-8 * 1e-3 / 1e-3 + 1e-5);
    CHECK(drive.recording.part({"G1"}, probe::kCurrent)->at(0.01) ==
          Approx((12.65 - 11.89) / loop_ohm).epsilon(0.01));
    CHECK(drive.balances.energy_J.offShare < 1e-6);
}

// Charge is conserved: C1 at the battery's voltage shares it with two empty ones of the same size.
TEST_CASE("a loop of capacitors shares its charge", "[simulate][nasty]") {
    CircuitBuilder builder;
    builder.part("supply", "G1").part("hand-switch", "S1", {}, {{"atStart", "on"}}).part("hand-switch", "S2");
    for (const std::string name : {"C1", "C2", "C3"}) {
        builder.part("capacitor", name, {{"capacitance_F", 0.1}, {"esr_ohm", 1e-4}});
    }
    builder.wire("G1.30", "S1.1", 10e-6, 0.1)
        .wire("S1.2", "C1.+", 10e-6, 0.1)
        .wire("C1.-", "G1.31", 10e-6, 0.1)
        .wire("C1.+", "S2.1", 10e-6, 0.1)
        .wire("S2.2", "C2.+", 10e-6, 0.1)
        .wire("C2.+", "C3.+", 10e-6, 0.001)
        .wire("C2.-", "G1.31", 10e-6, 0.1)
        .wire("C3.-", "C2.-", 10e-6, 0.001);
    DrivePlan plan = standingPlan(2);
    plan.switchMoves = {{1, {"S1"}, false, {}}, {1.5, {"S2"}, true, {}}};
    const DriveResult drive = simulateDrive(builder.plan(plan).build());
    REQUIRE(drive.status == DriveStatus::Finished);
    const Channel& voltage = *drive.recording.terminal(endOf("C1.+"));
    CHECK(voltage.at(1.9) == Approx(voltage.at(1.4) / 3).epsilon(2e-3));
    CHECK(drive.recording.terminal(endOf("C3.+"))->at(1.9) == Approx(voltage.at(1.9)).epsilon(1e-3));
}

TEST_CASE("parts that hang together and on nothing else stay where they are", "[simulate][nasty]") {
    const Circuit circuit = van()
                                .part("capacitor", "C7")
                                .part("lamp", "P7")
                                .part("relay", "K7")
                                .wire("C7.+", "P7.1")
                                .wire("P7.2", "K7.86")
                                .wire("K7.85", "C7.-")
                                .wire("K7.30", "K7.87")
                                .plan(standingPlan(5))
                                .build();
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    CHECK(std::abs(drive.recording.part({"K7"}, probe::kCoilCurrent)->at(5)) < 1e-6);
    CHECK(std::abs(drive.recording.terminal(endOf("C7.+"))->at(5)) < 1e-3);
}

TEST_CASE("a relay of a tenth of a millisecond that cuts itself off is chatter and no error",
          "[simulate][nasty]") {
    for (const std::string suppression : {"none", "diode", "resistor", "zener"}) {
        const Circuit circuit =
            CircuitBuilder()
                .part("supply", "G1")
                .part("relay", "K1",
                      {{"operateTime_s", 1e-4}, {"releaseTime_s", 1e-4}, {"coilInductance_H", 1e-3}},
                      {{"contacts", "changeover"}, {"suppression", suppression}})
                .wire("G1.30", "K1.30", 2.5e-6, 0.1)
                .wire("K1.87a", "K1.86", 2.5e-6, 0.1)
                .wire("K1.85", "G1.31", 2.5e-6, 0.1)
                .plan(standingPlan(0.05))
                .build();
        INFO(suppression);
        const DriveResult drive = simulateDrive(circuit);
        CAPTURE(drive.message);
        REQUIRE(drive.status == DriveStatus::Finished);
        CHECK(timesOf(drive, "K1", "armature pulls in").size() > 50);
        CHECK(drive.recording.part({"K1"}, probe::kCoilVoltage)->extremes(0, 0.05).lowest >
              -340); // gap breaks down
    }
}

// A solid-state relay has no armature to wait for: pulled off by its own output, it is held back by 1 nF over
// 100 Ω alone, a hundred nanoseconds, and would switch for ever.
TEST_CASE("an electronic switch that cuts itself off ends in a message with its name", "[simulate][nasty]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("resistor", "R1", {{"resistance_ohm", 100}})
                                .part("solid-state-relay", "K1", {{"inputCurrent_A", 1e-3}})
                                .wire("G1.30", "R1.1")
                                .wire("R1.2", "K1.A1")
                                .wire("K1.A1", "K1.1")
                                .wire("K1.A2", "G1.31")
                                .wire("K1.2", "G1.31")
                                .plan(standingPlan(1))
                                .build();
    const DriveResult drive = simulateDrive(circuit);
    CAPTURE(drive.message);
    REQUIRE(drive.status == DriveStatus::Stopped);
    CHECK(drive.suspects == std::vector<std::string>{"K1"});
    CHECK(drive.message.find("K1") != std::string::npos);
}

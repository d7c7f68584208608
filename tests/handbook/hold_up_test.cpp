#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <cmath>
#include <string>

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

constexpr double kOff_s = 1.0;

/// A supply of about 12 V, a switch that opens after a second, and a capacitor behind it; what it holds up is
/// added by the test.
CircuitBuilder holdUp(double capacitance_F, double duration_s = 5) {
    DrivePlan plan;
    plan.duration_s = duration_s;
    plan.switchMoves = {{kOff_s, {"S1"}, false}};
    CircuitBuilder builder;
    builder
        .part("supply", "G1", {{"stateOfCharge_share", 0.1618}}) // 12.0 V
        .part("hand-switch", "S1", {}, {{"atStart", "on"}})
        .part("capacitor", "C1", {{"capacitance_F", capacitance_F}})
        .wire("G1.30", "S1.1")
        .wire("S1.2", "C1.+")
        .wire("C1.-", "G1.31")
        .plan(plan);
    return builder;
}

/// [s] from the switch's opening to the event; fails where it never comes.
double heldFor_s(CircuitBuilder builder, const std::string& what) {
    const DriveResult result = simulateDrive(builder.build());
    INFO(result.message);
    REQUIRE(result.status == DriveStatus::Finished);
    for (const DriveEvent& event : result.recording.events) {
        if (event.id == "K1" && event.what == what && event.time_s > kOff_s) {
            return event.time_s - kOff_s;
        }
    }
    FAIL("it never lets go");
    return 0;
}

double relayHeldFor_s(double capacitance_F) {
    CircuitBuilder builder = holdUp(capacitance_F);
    builder.part("relay", "K1").wire("C1.+", "K1.86").wire("K1.85", "C1.-");
    return heldFor_s(builder, "armature lets go");
}

double solidStateRelayHeldFor_s(double capacitance_F) {
    CircuitBuilder builder = holdUp(capacitance_F);
    builder.part("solid-state-relay", "K1").wire("C1.+", "K1.A1").wire("K1.A2", "C1.-");
    return heldFor_s(builder, "output blocks");
}

} // namespace

TEST_CASE("a capacitor holds a relay's coil for R·C·ln(V0/Vdrop)", "[handbook][hold-up]") {
    // First-order response, 90 ohm, 12 V down to 1.6 V: 1000 µF 181 ms, 2200 µF 399 ms. The coil's inductance
    // makes its current lag by L/R = 7.8 ms behind that.
    CHECK_THAT(relayHeldFor_s(1000e-6), WithinAbs(0.181, 0.010));
    CHECK_THAT(relayHeldFor_s(2200e-6), WithinAbs(0.399, 0.012));
}

TEST_CASE("470 µF holds a relay for milliseconds, a solid-state relay for half a second",
          "[handbook][hold-up]") {
    // Common practice, no published source: a relay's coil empties a capacitor at once, a solid-state relay's
    // input of 10 mA does not.
    const double relay_s = relayHeldFor_s(470e-6);
    const double solid_s = solidStateRelayHeldFor_s(470e-6);
    CHECK(relay_s < 0.1);
    CHECK(solid_s > 5 * relay_s);
    // C·(V0 − Voff)/I = 470 µF · 11 V/10 mA.
    CHECK_THAT(solid_s, WithinRel(0.517, 0.02));
}

TEST_CASE("twice the capacitance holds a solid-state relay twice as long", "[handbook][hold-up]") {
    // 1000 µF, 10 mA, from 12 V to 1 V: 1.10 s by C·ΔV/I.
    const double once_s = solidStateRelayHeldFor_s(1000e-6);
    CHECK_THAT(once_s, WithinRel(1.10, 0.02));
    CHECK_THAT(solidStateRelayHeldFor_s(2000e-6), WithinRel(2 * once_s, 0.01));
}

TEST_CASE("a capacitor charges through a resistor as an RC circuit", "[handbook][hold-up]") {
    // v = V0·(1 − e^(−t/RC)): first-order response. 100 ohm, 1000 µF: 63.2 % after 0.1 s.
    DrivePlan plan;
    plan.duration_s = 1;
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1", {{"stateOfCharge_share", 0.1618}})
                                .part("resistor", "R1", {{"resistance_ohm", 100}})
                                .part("capacitor", "C1", {{"capacitance_F", 1000e-6}, {"esr_ohm", 1e-3}})
                                .wire("G1.30", "R1.1")
                                .wire("R1.2", "C1.+")
                                .wire("C1.-", "G1.31")
                                .plan(plan)
                                .build();
    const DriveResult result = simulateDrive(circuit);
    REQUIRE(result.status == DriveStatus::Finished);
    const Channel* voltage = result.recording.terminal(endOf("C1.+"));
    for (const double time_s : {0.02, 0.1, 0.3}) {
        CHECK_THAT(voltage->at(time_s), WithinRel(12.0 * (1 - std::exp(-time_s / 0.1)), 3e-3));
    }
}

TEST_CASE("an uncharged capacitor takes V0 over all the resistance in its way", "[handbook][hold-up]") {
    // I = V0/(ESR + Rsource): the switch closes on a capacitor of 0.2 ohm, 0.008 ohm in the supply, 0.01 ohm
    // in the contact and 2 m of 1.5 mm² wire (23.0 mohm).
    CircuitBuilder builder = holdUp(4700e-6, 1.5);
    Circuit circuit = builder.build();
    circuit.parts.at({"S1"}).choices["atStart"] = "off";
    circuit.plan.switchMoves = {{0.5, {"S1"}, true}};
    const DriveResult result = simulateDrive(circuit);
    REQUIRE(result.status == DriveStatus::Finished);
    const double inrush_A = result.recording.part({"C1"}, probe::kCurrent)->extremes(0, 1.5).highest;
    const double wires_ohm = 1.7241e-8 * (1.0 + 1.0) / 1.5e-6;
    // The third wire, back to the supply.
    CHECK_THAT(inrush_A, WithinRel(12.0 / (0.2 + 0.008 + 0.01 + 1.5 * wires_ohm), 0.02));
}

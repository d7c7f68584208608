#include "tests/core/checks/run_rule.h"

#include <cmath>

using namespace pumpwright;

namespace {

/// The van's relay, 90 Ω and out at 1.6 V, with a capacitor across its coil.
Circuit heldBy(double capacitance_F, CircuitBuilder::Choices choices = {}) {
    CircuitBuilder builder = soundVan({});
    return builder.part("capacitor", "C1", {{"capacitance_F", capacitance_F}}, choices)
        .wire("C1.+", "K1.86")
        .wire("C1.-", "K1.85")
        .build();
}

/// The vacuum switch opens at 5 s for so long.
DriveResult gapOf(double gap_s, const char* part = "B1") {
    return RecordingBuilder(20).part(part, probe::kContact, {{0, 1}, {5, 0}, {5 + gap_s, 1}}).drive();
}

/// [F] with which 90 Ω hold for so long from 12.65 V to 1.6 V, from R·C·ln(V0/V).
double capacitanceFor_F(double time_s) {
    return time_s / (90 * std::log(12.65 / 1.6));
}

} // namespace

TEST_CASE("a capacitor holds the relay over the gap in its command",
          "[checks][hold-up-too-short][raises][near-miss][at-limit]") {
    const DriveResult drive = gapOf(0.3);
    CHECK(findings("hold-up-too-short", heldBy(1.01 * capacitanceFor_F(0.3)), &drive).empty());
    const Circuit circuit = heldBy(0.99 * capacitanceFor_F(0.3));
    const Finding finding = onlyFinding("hold-up-too-short", circuit, &drive);
    CHECK(finding.parts == std::vector<PartId>{{"C1"}, {"K1"}});
    CHECK(finding.value == Approx(0.297).epsilon(0.01));
    CHECK(finding.limit == Approx(0.3));
    CHECK(*finding.at_s == Approx(5));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    const Circuit cured = afterRemedy(circuit, finding);
    CHECK(findings("hold-up-too-short", cured, &drive).empty());
    CHECK(cured.parts.at(PartId{"C1"}).values.at("capacitance_F") ==
          Approx(2.2e-3)); // 1.6 mF and a quarter more
    checkRemedy(circuit, finding);
}

TEST_CASE("470 µF hold a relay for milliseconds, a solid-state relay for half a second",
          "[checks][hold-up-too-short]") {
    // R·C·ln(V0/V) and C·(V0 − V)/I, physics.
    const DriveResult drive = gapOf(0.2);
    CHECK(onlyFinding("hold-up-too-short", heldBy(470e-6), &drive).value == Approx(0.087).epsilon(0.02));
    CircuitBuilder builder = vanVacuumSide();
    const Circuit solidState = builder.part("supply", "G1")
                                   .part("solid-state-relay", "K1")
                                   .part("capacitor", "C1", {{"capacitance_F", 470e-6}})
                                   .wire("G1.30", "B1.1")
                                   .wire("B1.2", "K1.A1")
                                   .wire("K1.A2", "G1.31")
                                   .wire("C1.+", "K1.A1")
                                   .wire("C1.-", "K1.A2")
                                   .wire("G1.30", "K1.1")
                                   .wire("K1.2", "M1.+")
                                   .wire("M1.-", "G1.31")
                                   .build();
    CHECK(findings("hold-up-too-short", solidState, &drive).empty());
    const DriveResult longer = gapOf(0.6);
    CHECK(onlyFinding("hold-up-too-short", solidState, &longer).value ==
          Approx(470e-6 * (12.65 - 1) / 0.010).epsilon(0.01));
}

TEST_CASE("a pause of more than two seconds, and a foil capacitor, are no case",
          "[checks][hold-up-too-short][near-miss]") {
    const DriveResult pause = gapOf(2.1);
    CHECK(findings("hold-up-too-short", heldBy(470e-6), &pause).empty());
    const DriveResult gap = gapOf(0.3);
    CHECK(findings("hold-up-too-short", heldBy(1e-6, {{"polarised", "no"}}), &gap).empty());
    CHECK(findings("hold-up-too-short", heldBy(470e-6)).empty()); // without a drive
}

TEST_CASE("a gap for which no usual capacitor is large enough asks for a timer",
          "[checks][hold-up-too-short]") {
    Circuit circuit = heldBy(470e-6);
    circuit.parts.at(PartId{"K1"}).values["coilResistance_ohm"] = 5;
    circuit.parts.at(PartId{"K1"}).values["dropOutVoltage_V"] = 1.6;
    const DriveResult drive = gapOf(1.9);
    const Finding finding = onlyFinding("hold-up-too-short", circuit, &drive);
    REQUIRE(finding.remedies.size() == 1);
    CHECK_FALSE(finding.remedies[0].edit.has_value());
}

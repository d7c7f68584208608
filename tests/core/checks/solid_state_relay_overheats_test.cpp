#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A solid-state relay of 10 mΩ and this thermal resistance feeds a heater of this current, at 50 °C.
Circuit heater(double current_A, double thermal_KperW, const char* place = "") {
    Circuit circuit = CircuitBuilder()
                          .part("supply", "G1")
                          .part("fuse", "F1", {{"rating_A", 60}})
                          .part("solid-state-relay", "K1",
                                {{"ratedCurrent_A", 100},
                                 {"onResistance_ohm", 0.010},
                                 {"thermalResistance_KperW", thermal_KperW}})
                          .part("hand-switch", "S1")
                          .part("lamp", "P1", {{"ratedPower_W", 12 * current_A}})
                          .wire("G1.30", "F1.1", 16e-6, 0.1)
                          .wire("F1.2", "K1.1", 16e-6)
                          .wire("K1.2", "P1.1", 16e-6)
                          .wire("P1.2", "G1.31", 16e-6)
                          .wire("F1.2", "S1.1")
                          .wire("S1.2", "K1.A1")
                          .wire("K1.A2", "G1.31")
                          .build();
    circuit.parts.at(PartId{"K1"}).place = place;
    return circuit;
}

/// [K/W] with which 20 A end at 115 °C: 4 W at 25 °C, at 115 °C 1.63 times as many (0.7 % more for each
/// kelvin).
constexpr double kLimit_KperW = (115 - 50) / (20 * 20 * 0.010 * (1 + 0.007 * (115 - 25)));

} // namespace

TEST_CASE("a junction may get to 115 °C",
          "[checks][solid-state-relay-overheats][raises][near-miss][at-limit]") {
    // Junctions are designed to 115 °C or less: a guide to the heat of solid-state relays. On-resistance
    // rises 1.6 to 1.8 times from 25 to 125 °C: value from memory of textbooks.
    CHECK(findings("solid-state-relay-overheats", heater(20, 0.999 * kLimit_KperW)).empty());
    const Circuit circuit = heater(20, 1.001 * kLimit_KperW);
    const Finding finding = onlyFinding("solid-state-relay-overheats", circuit);
    CHECK(finding.value == Approx(388.15).epsilon(0.001));
    CHECK(finding.limit == Approx(388.15));
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("heat and resistance can drive each other without end", "[checks][solid-state-relay-overheats]") {
    const Finding finding = onlyFinding("solid-state-relay-overheats", heater(40, 10));
    CHECK(finding.what.english().find("hotter and hotter") != std::string::npos);
}

TEST_CASE("the place of the relay counts", "[checks][solid-state-relay-overheats][near-miss]") {
    CHECK(findings("solid-state-relay-overheats", heater(20, 5)).empty());
    const Finding finding = onlyFinding("solid-state-relay-overheats", heater(20, 5, "under-bonnet"));
    CHECK(finding.what.english().find("105 °C") != std::string::npos);
}

TEST_CASE("what it carries in the drive heats it", "[checks][solid-state-relay-overheats]") {
    const DriveResult drive =
        RecordingBuilder(20).part("K1", probe::kContactCurrent, {{0, 30}, {20, 30}}).drive();
    CHECK(findings("solid-state-relay-overheats", heater(10, 5)).empty());
    CHECK(findings("solid-state-relay-overheats", heater(10, 5), &drive).size() == 1);
}

TEST_CASE("a mechanical relay has no junction", "[checks][solid-state-relay-overheats]") {
    CHECK(findings("solid-state-relay-overheats", soundVan().build()).empty());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit withDiode(const char* onPlus, const char* onMinus, const char* kind = "diode") {
    CircuitBuilder builder = soundVan({});
    return builder.part(kind, "R1")
        .wire(std::string("R1.") + onPlus, "K1.86")
        .wire(std::string("R1.") + onMinus, "K1.85")
        .build();
}

/// The van with the wires on 86 and 85 exchanged.
Circuit turnedCoil(const char* suppression) {
    Circuit circuit = soundVan({{"suppression", suppression}}).build();
    for (auto& [id, wire] : circuit.wires) {
        for (End* end : {&wire.from, &wire.to}) {
            if (end->part == PartId{"K1"} && (end->terminal == "85" || end->terminal == "86")) {
                end->terminal = end->terminal == "85" ? "86" : "85";
            }
        }
    }
    return circuit;
}

} // namespace

TEST_CASE("a diode with its anode on the fed end of a coil is the wrong way round",
          "[checks][suppression-diode-reversed][raises][at-limit]") {
    const Circuit circuit = withDiode("A", "K");
    const Finding finding = onlyFinding("suppression-diode-reversed", circuit);
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.parts == std::vector<PartId>{{"R1"}});
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(findings("suppression-diode-reversed", withDiode("K", "A")).empty());
}

TEST_CASE("a zener alone across a coil has a right way round too", "[checks][suppression-diode-reversed]") {
    CHECK(findings("suppression-diode-reversed", withDiode("A", "K", "zener")).size() == 1);
    CHECK(findings("suppression-diode-reversed", withDiode("K", "A", "zener")).empty());
}

TEST_CASE("plus on 85 of a relay with built-in diode is found, and the wires exchanged",
          "[checks][suppression-diode-reversed]") {
    const Circuit circuit = turnedCoil("diode");
    const Finding finding = onlyFinding("suppression-diode-reversed", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    CHECK(finding.what.english().find("plus is on 85") != std::string::npos);
    checkRemedy(circuit, finding);
    CHECK(findings("suppression-diode-reversed", turnedCoil("zener")).size() ==
          1); // diode and zener in a row
}

TEST_CASE("a coil with a resistor inside may be wired either way round",
          "[checks][suppression-diode-reversed][near-miss]") {
    CHECK(findings("suppression-diode-reversed", turnedCoil("resistor")).empty());
    CHECK(findings("suppression-diode-reversed", turnedCoil("none")).empty());
}

TEST_CASE("a coil switched on its ground side is judged by the same sides",
          "[checks][suppression-diode-reversed]") {
    const auto lowSide = [](const char* onPlus, const char* onMinus) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part("fuse", "F1")
            .part("relay", "K1")
            .part("hand-switch", "S1")
            .part("diode", "R1")
            .wire("G1.30", "F1.1")
            .wire("F1.2", "K1.86")
            .wire("K1.85", "S1.1")
            .wire("S1.2", "G1.31")
            .wire(onPlus, "K1.86")
            .wire(onMinus, "K1.85")
            .build();
    };
    CHECK(findings("suppression-diode-reversed", lowSide("R1.K", "R1.A")).empty());
    CHECK(findings("suppression-diode-reversed", lowSide("R1.A", "R1.K")).size() == 1);
}

TEST_CASE("a diode across the pump is judged like one across a coil",
          "[checks][suppression-diode-reversed]") {
    const auto acrossPump = [](const char* onPlus, const char* onMinus) {
        CircuitBuilder builder = soundVan();
        return builder.part("diode", "R1").wire(onPlus, "M1.+").wire(onMinus, "M1.-").build();
    };
    CHECK(findings("suppression-diode-reversed", acrossPump("R1.K", "R1.A")).empty());
    CHECK(findings("suppression-diode-reversed", acrossPump("R1.A", "R1.K")).size() == 1);
}

TEST_CASE("a diode in a feed is no suppression diode", "[checks][suppression-diode-reversed]") {
    CircuitBuilder builder = soundVan();
    const Circuit circuit = builder.part("diode", "R1")
                                .part("pedal-switch", "S1")
                                .wire("F1.2", "S1.1")
                                .wire("S1.2", "R1.A")
                                .wire("R1.K", "K1.86")
                                .build();
    CHECK(findings("suppression-diode-reversed", circuit).empty());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The trigger of a timer (10 kΩ, on at 6 V) behind a resistor and a switch; 10.5 V is the lowest supply.
CircuitBuilder triggered(double resistor_ohm) {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("fuse", "F1")
        .part("hand-switch", "S1")
        .part("resistor", "R1", {{"resistance_ohm", resistor_ohm}})
        .part("timer", "K2")
        .part("lamp", "P1")
        .wire("G1.30", "F1.1", 2.5e-6, 0.1)
        .wire("F1.2", "S1.1")
        .wire("S1.2", "R1.1")
        .wire("R1.2", "K2.S")
        .wire("F1.2", "K2.15")
        .wire("K2.31", "G1.31")
        .wire("G1.30", "K2.30", 2.5e-6, 0.1)
        .wire("K2.87", "P1.1")
        .wire("P1.2", "G1.31");
}

/// The input of a solid-state relay (10 mA, on at 3 V) behind a resistor.
Circuit inputBehind(double resistor_ohm, double lowest_V = 10.5) {
    ProjectLimits limits;
    limits.lowestSupply_V = lowest_V;
    return CircuitBuilder()
        .part("supply", "G1")
        .part("fuse", "F1")
        .part("hand-switch", "S1")
        .part("resistor", "R1", {{"resistance_ohm", resistor_ohm}})
        .part("solid-state-relay", "K1")
        .part("lamp", "P1")
        .wire("G1.30", "F1.1", 2.5e-6, 0.1)
        .wire("F1.2", "S1.1")
        .wire("S1.2", "R1.1")
        .wire("R1.2", "K1.A1")
        .wire("K1.A2", "G1.31")
        .wire("F1.2", "K1.1")
        .wire("K1.2", "P1.1")
        .wire("P1.2", "G1.31")
        .limits(limits)
        .build();
}

} // namespace

TEST_CASE("a timer's trigger gets a tenth more than it needs at the lowest supply",
          "[checks][input-below-threshold][raises][near-miss][at-limit]") {
    // Voltage divider: 10.5 V·10 kΩ/(10 kΩ + R) are 6.6 V, 110 % of 6 V, with 5.909 kΩ. The tenth: Caltrans
    // equipment electrical standards 8.3, for relays.
    const double limit_ohm = 10e3 * (10.5 / 6.6 - 1);
    CHECK(findings("input-below-threshold", triggered(0.999 * limit_ohm).build()).empty());
    const Circuit circuit = triggered(1.001 * limit_ohm).build();
    const Finding finding = onlyFinding("input-below-threshold", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K2"}});
    CHECK(finding.value == Approx(6.6).epsilon(0.001));
    CHECK(finding.limit == Approx(6.6));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(afterRemedy(circuit, finding).parts.at(PartId{"R1"}).values.at("resistance_ohm") == Approx(4700));
}

TEST_CASE("a solid-state relay's input takes its current over the resistor too",
          "[checks][input-below-threshold][at-limit]") {
    // 10.5 V less 3.3 V are 720 Ω at 10 mA.
    CHECK(findings("input-below-threshold", inputBehind(719)).empty());
    const Circuit circuit = inputBehind(721);
    const Finding finding = onlyFinding("input-below-threshold", circuit);
    CHECK(finding.limit == Approx(3.3));
    checkRemedy(circuit, finding);
    CHECK(findings("input-below-threshold", inputBehind(600, 9)).size() == 1);
}

TEST_CASE("a diode in the feed takes its voltage", "[checks][input-below-threshold]") {
    // 0.9 V on its Nameplate: 9.6 V·10 kΩ/(10 kΩ + R) are 6.6 V with 4.545 kΩ.
    const auto overDiode = [](double resistor_ohm) {
        Circuit circuit = triggered(resistor_ohm).part("diode", "R2").build();
        Wire& trigger = circuit.wires.at(WireId{"w4"}); // R1.2 to K2.S
        Wire rest = trigger;
        trigger.to = endOf("R2.A");
        rest.from = endOf("R2.K");
        rest.reference = "W99";
        circuit.wires.emplace(WireId{"w99"}, rest);
        return circuit;
    };
    CHECK(findings("input-below-threshold", overDiode(4500)).empty());
    CHECK(findings("input-below-threshold", overDiode(4600)).size() == 1);
}

TEST_CASE("another load over the same resistor takes voltage as well", "[checks][input-below-threshold]") {
    // A buzzer of 20 mA over 300 Ω: 6 V.
    CHECK(findings("input-below-threshold", triggered(300).build()).empty());
    CHECK(findings("input-below-threshold",
                   triggered(300).part("buzzer", "P2").wire("K2.S", "P2.+").wire("P2.-", "G1.31").build())
              .size() == 1);
}

TEST_CASE("an input straight on the supply goes on", "[checks][input-below-threshold][near-miss]") {
    Circuit circuit = triggered(1).build();
    CHECK(findings("input-below-threshold", circuit).empty());
    circuit.parts.at(PartId{"K2"}).values["triggerOn_V"] = 9.6; // 10.56 V wanted
    const Finding finding = onlyFinding("input-below-threshold", circuit);
    REQUIRE(finding.remedies.size() == 1);
    CHECK_FALSE(finding.remedies[0].edit.has_value());
}

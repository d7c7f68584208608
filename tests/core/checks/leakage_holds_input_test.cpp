#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A solid-state relay that leaks switches the trigger of a timer: 10 kΩ, off below 3 V.
CircuitBuilder triggered(double leakage_A) {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("fuse", "F1")
        .part("hand-switch", "S1")
        .part("solid-state-relay", "K1", {{"leakage_A", leakage_A}})
        .part("timer", "K2")
        .part("lamp", "P1")
        .wire("G1.30", "F1.1", 2.5e-6, 0.1)
        .wire("F1.2", "S1.1")
        .wire("S1.2", "K1.A1")
        .wire("K1.A2", "G1.31")
        .wire("F1.2", "K1.1")
        .wire("K1.2", "K2.S")
        .wire("F1.2", "K2.15")
        .wire("K2.31", "G1.31")
        .wire("G1.30", "K2.30", 2.5e-6, 0.1)
        .wire("K2.87", "P1.1")
        .wire("P1.2", "G1.31");
}

} // namespace

TEST_CASE("leakage over the trigger's resistance holds a timer in",
          "[checks][leakage-holds-input][raises][near-miss][at-limit]") {
    // Ohm's law: 0.3 mA over 10 kΩ are the 3 V at which the trigger lets go.
    CHECK(findings("leakage-holds-input", triggered(0.299e-3).build()).empty());
    const Circuit circuit = triggered(0.301e-3).build();
    const Finding finding = onlyFinding("leakage-holds-input", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K2"}, {"K1"}});
    CHECK(finding.value == Approx(3.01));
    CHECK(finding.limit == Approx(3));
    CHECK(finding.kind == QuantityKind::Voltage);
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("what lies beside the trigger draws the leakage off", "[checks][leakage-holds-input][near-miss]") {
    CHECK(findings("leakage-holds-input",
                   triggered(1e-3).part("lamp", "P2").wire("K2.S", "P2.1").wire("P2.2", "G1.31").build())
              .empty());
    CHECK(findings("leakage-holds-input", triggered(1e-3)
                                              .part("resistor", "R1", {{"resistance_ohm", 1000}})
                                              .wire("K2.S", "R1.1")
                                              .wire("R1.2", "G1.31")
                                              .build())
              .empty());
}

TEST_CASE("an input of constant current is held by as much leakage as it takes",
          "[checks][leakage-holds-input][at-limit]") {
    const auto input = [](double leakage_A) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part("hand-switch", "S1")
            .part("solid-state-relay", "K1", {{"leakage_A", leakage_A}})
            .part("solid-state-relay", "K2", {{"inputCurrent_A", 0.010}})
            .part("lamp", "P1")
            .wire("G1.30", "S1.1")
            .wire("S1.2", "K1.A1")
            .wire("K1.A2", "G1.31")
            .wire("G1.30", "K1.1")
            .wire("K1.2", "K2.A1")
            .wire("K2.A2", "G1.31")
            .wire("G1.30", "K2.1")
            .wire("K2.2", "P1.1")
            .wire("P1.2", "G1.31")
            .build();
    };
    CHECK(findings("leakage-holds-input", input(0.00999)).empty());
    const Finding finding = onlyFinding("leakage-holds-input", input(0.01001));
    CHECK(finding.kind == QuantityKind::Current);
    CHECK(finding.limit == Approx(0.010));
    checkRemedy(input(0.01001), finding);
}

TEST_CASE("an open mechanical contact leaks nothing", "[checks][leakage-holds-input]") {
    CircuitBuilder builder = switchedLamp();
    const Circuit circuit =
        builder.part("timer", "K2").wire("S1.2", "K2.S").wire("F1.2", "K2.15").wire("K2.31", "X1.31").build();
    CHECK(findings("leakage-holds-input", circuit).empty());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A changeover relay whose tongue feeds the pump: 87 on plus, 87a where the test says.
Circuit braked(const char* breakThrow, double running_A = 5.5) {
    CircuitBuilder builder =
        CircuitBuilder()
            .part("supply", "G1")
            .part("fuse", "F1")
            .part("hand-switch", "S1")
            .part("relay", "K1", {}, {{"contacts", "changeover"}, {"suppression", "diode"}})
            .part("pump", "M1", {{"runningCurrent_A", running_A}})
            .part("lamp", "P1")
            .part("ground", "X1")
            .part("ground", "X2")
            .wire("G1.30", "F1.1", 2.5e-6, 0.1)
            .wire("G1.31", "X1.31", 6e-6, 0.3)
            .wire("F1.2", "K1.87", 2.5e-6)
            .wire("K1.30", "M1.+", 2.5e-6)
            .wire("M1.-", "X2.31", 2.5e-6)
            .wire("F1.2", "S1.1")
            .wire("S1.2", "K1.86")
            .wire("K1.85", "X2.31")
            .wire("P1.2", "X1.31");
    return builder.wire("K1.87a", breakThrow, 2.5e-6).build();
}

} // namespace

TEST_CASE("a changeover that brakes a motor on ground can bridge the battery",
          "[checks][changeover-arc][raises]") {
    const Circuit circuit = braked("X2.31");
    const Finding finding = onlyFinding("changeover-arc", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    CHECK(finding.value == Approx(5.5));
    CHECK(finding.limit == Approx(0.4));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a changeover between two loads, or with one throw open, bridges nothing",
          "[checks][changeover-arc][near-miss]") {
    CHECK(findings("changeover-arc", braked("P1.1")).empty()); // the lamp lies between 87a and ground
    Circuit open = braked("X2.31");
    open.wires.erase(WireId{"w10"}); // K1.87a to X2.31
    CHECK(findings("changeover-arc", open).empty());
}

TEST_CASE("below 0.4 A no arc lasts", "[checks][changeover-arc][at-limit]") {
    // Silver contacts: 0.3 to 0.4 A, value from memory of contact textbooks; 'a few tenths of an ampere' in
    // the Bell System paper on arcing of contacts, 1953.
    CHECK(findings("changeover-arc", braked("X2.31", 0.4)).empty());
    CHECK(findings("changeover-arc", braked("X2.31", 0.41)).size() == 1);
}

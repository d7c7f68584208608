#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A pump of 5.5 A, 12 A at its start, behind two relays whose contacts lie side by side.
Circuit twoRelays(double make_A, double breakInductive_A = 20) {
    CircuitBuilder builder = soundVan();
    Circuit circuit = builder
                          .part("relay", "K2", {{"make_A", make_A}, {"breakInductive_A", breakInductive_A}},
                                {{"suppression", "diode"}})
                          .wire("B1.2", "K2.86")
                          .wire("K2.85", "X3.31")
                          .wire("K1.30", "K2.30", 2.5e-6)
                          .wire("K1.87", "K2.87", 2.5e-6)
                          .build();
    return circuit;
}

} // namespace

TEST_CASE("one of two contacts side by side makes the whole inrush",
          "[checks][parallel-contacts][raises][near-miss][at-limit]") {
    // They share carrying, not making and breaking: common practice, no published source.
    CHECK(findings("parallel-contacts", twoRelays(12)).empty());
    const Finding finding = onlyFinding("parallel-contacts", twoRelays(11.9));
    CHECK(finding.parts == std::vector<PartId>{{"K1"}, {"K2"}});
    CHECK(finding.value == Approx(12));
    CHECK(finding.limit == Approx(11.9));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
}

TEST_CASE("one of two contacts side by side breaks the whole current",
          "[checks][parallel-contacts][at-limit]") {
    CHECK(findings("parallel-contacts", twoRelays(100, 5.5)).empty());
    const Finding finding = onlyFinding("parallel-contacts", twoRelays(100, 5.4));
    CHECK(finding.value == Approx(5.5));
    CHECK(finding.limit == Approx(5.4));
    CHECK(finding.what.english().find("breaks") != std::string::npos);
}

TEST_CASE("what side by side contacts lack is told once", "[checks][parallel-contacts]") {
    Circuit circuit = twoRelays(11);
    circuit.parts.at(PartId{"K1"}).values["make_A"] = 11;
    CHECK(findings("parallel-contacts", circuit).size() == 1);
    CHECK(findings("contact-making-current", circuit).empty());
}

TEST_CASE("contacts in a row, and two triggers of one small coil, are no case",
          "[checks][parallel-contacts][near-miss]") {
    Circuit row = twoRelays(11);
    for (auto& [id, wire] : row.wires) {
        if (wire.from == endOf("K1.30") && wire.to == endOf("K2.30")) {
            wire.from = endOf("K1.87"); // both ends of K2's contact on 87: nothing is shared
        }
    }
    CHECK(findings("parallel-contacts", row).empty());
    CircuitBuilder builder = soundVan();
    const Circuit triggers =
        builder.part("pedal-switch", "S1").wire("F1.2", "S1.1").wire("S1.2", "K1.86").build();
    CHECK(findings("parallel-contacts", triggers).empty());
}

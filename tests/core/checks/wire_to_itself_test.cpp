#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("a wire with both ends on one terminal joins nothing", "[checks][wire-to-itself][raises]") {
    CircuitBuilder builder = soundVan();
    const Circuit circuit = builder.wire("K1.86", "K1.86").build();
    const Finding finding = onlyFinding("wire-to-itself", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    REQUIRE(finding.wires.size() == 1);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a wire between two terminals of one part is one", "[checks][wire-to-itself][near-miss]") {
    CircuitBuilder builder = soundVan();
    CHECK(findings("wire-to-itself", builder.wire("K1.86", "K1.85").build()).empty());
}

TEST_CASE("one end moved to the next terminal makes the difference", "[checks][wire-to-itself][at-limit]") {
    CircuitBuilder builder = soundVan();
    Circuit circuit = builder.wire("X3.31", "X3.31").build();
    CHECK(findings("wire-to-itself", circuit).size() == 1);
    circuit.wires.at(WireId{"w9"}).to = endOf("X2.31");
    CHECK(findings("wire-to-itself", circuit).empty());
}

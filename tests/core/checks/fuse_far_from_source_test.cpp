#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

constexpr double kInch_m = 0.0254;

Circuit leadOf(double length_m, bool sheathed = false) {
    Circuit circuit = soundVan().build();
    Wire& lead = circuit.wires.at(WireId{"w2"}); // G1.30 to F1.1
    lead.length_m = length_m;
    lead.sheathed = sheathed;
    return circuit;
}

} // namespace

TEST_CASE("a fuse may be 7 in from its source",
          "[checks][fuse-far-from-source][raises][near-miss][at-limit]") {
    // 33 CFR 183.455(b): 7 in along the wire.
    CHECK(findings("fuse-far-from-source", leadOf(6.99 * kInch_m)).empty());
    CHECK(findings("fuse-far-from-source", leadOf(7 * kInch_m)).empty());
    const Circuit circuit = leadOf(7.01 * kInch_m);
    const Finding finding = onlyFinding("fuse-far-from-source", circuit);
    CHECK(finding.limit == Approx(7 * kInch_m));
    CHECK(finding.wires == std::vector<WireId>{{"w2"}});
    checkComplete(finding);
    checkRemedy(circuit, finding, 0);
    checkRemedy(circuit, finding, 1);
}

TEST_CASE("9 in of bare wire are too long, in a sheath they are not", "[checks][fuse-far-from-source]") {
    CHECK(findings("fuse-far-from-source", leadOf(9 * kInch_m)).size() == 1);
    CHECK(findings("fuse-far-from-source", leadOf(9 * kInch_m, true)).empty());
}

TEST_CASE("in a sheath 40 in are the end", "[checks][fuse-far-from-source]") {
    CHECK(findings("fuse-far-from-source", leadOf(40 * kInch_m, true)).empty());
    const Finding finding = onlyFinding("fuse-far-from-source", leadOf(40.1 * kInch_m, true));
    CHECK(finding.limit == Approx(40 * kInch_m));
}

TEST_CASE("a second fuse behind the first is not asked for its distance", "[checks][fuse-far-from-source]") {
    CircuitBuilder builder = soundVan();
    builder.part("fuse", "F8").part("lamp", "P8").part("ground", "X8");
    builder.wire("F1.2", "F8.1", 1.5e-6, 3).wire("F8.2", "P8.1").wire("P8.2", "X8.31");
    CHECK(findings("fuse-far-from-source", builder.build()).empty());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit starting(double inrush_A, double fuse_A) {
    Circuit circuit = soundVan().build();
    circuit.limits.ambient_K = 293.15;
    circuit.parts.at(PartId{"M1"}).values["inrushCurrent_A"] = inrush_A;
    circuit.parts.at(PartId{"F1"}).values["rating_A"] = fuse_A;
    return circuit;
}

} // namespace

TEST_CASE("a fuse at twice its rating may open after 0.15 s, which a start outlasts",
          "[checks][fuse-opens-on-inrush]") {
    // Data sheets to ISO 8820-3, type C: 160 %: 0.25 s, 200 %: 0.15 s at the fast edge. A motor's inrush
    // lasts 0.2 s: common practice, no published source.
    CHECK(findings("fuse-opens-on-inrush", starting(16, 10)).empty());
    const Circuit circuit = starting(20, 10);
    const Finding finding = onlyFinding("fuse-opens-on-inrush", circuit);
    CHECK(finding.value == Approx(0.2));
    CHECK(finding.limit < 0.2);
    CHECK(finding.limit > 0.1);
    CHECK(finding.parts == std::vector<PartId>{{"F1"}, {"M1"}});
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("in the engine's heat the same fuse opens earlier", "[checks][fuse-opens-on-inrush]") {
    Circuit circuit = starting(17, 10);
    CHECK(findings("fuse-opens-on-inrush", circuit).empty());
    circuit.limits.ambient_K = 358.15; // 75 % left, data sheet of a type E fuse
    CHECK(findings("fuse-opens-on-inrush", circuit).size() == 1);
}

TEST_CASE("80 % of the rating never opens a fuse", "[checks][fuse-opens-on-inrush]") {
    CHECK(findings("fuse-opens-on-inrush", starting(12, 15)).empty());
}

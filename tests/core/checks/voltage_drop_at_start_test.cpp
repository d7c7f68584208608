#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The sound van with another inrush, at 20 °C so that copper has its tabled resistance.
Circuit starting(double inrush_A) {
    Circuit circuit = soundVan().build();
    circuit.limits.ambient_K = 293.15;
    circuit.parts.at(PartId{"M1"}).values["inrushCurrent_A"] = inrush_A;
    return circuit;
}

} // namespace

TEST_CASE("a start may lose 1.2 V in wires and fuse",
          "[checks][voltage-drop-at-start][raises][near-miss][at-limit]") {
    // IEC 60028: 1.7241e-8 Ω·m. 3.65 m of 2.5 mm² and 0.5 m of 6 mm²; a 15 A fuse has 4.8 mΩ.
    const double loop_ohm = 1.7241e-8 * (3.65 / 2.5e-6 + 0.5 / 6e-6) + 4.8e-3;
    const double limit_A = 1.2 / loop_ohm;
    CHECK(findings("voltage-drop-at-start", starting(0.999 * limit_A)).empty());
    const Circuit circuit = starting(1.001 * limit_A);
    const Finding finding = onlyFinding("voltage-drop-at-start", circuit);
    CHECK(finding.value == Approx(1.2).epsilon(0.002));
    CHECK(finding.limit == Approx(1.2));
    CHECK(finding.parts == std::vector<PartId>{{"M1"}});
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("lamps and coils are no matter of starting", "[checks][voltage-drop-at-start]") {
    CHECK(findings("voltage-drop-at-start", switchedLamp({{"ratedPower_W", 300}}).build()).empty());
}

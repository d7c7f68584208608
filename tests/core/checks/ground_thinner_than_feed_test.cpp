#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit groundOf(double area_m2) {
    Circuit circuit = soundVan().build();
    circuit.wires.at(WireId{"w5"}).area_m2 = area_m2; // M1.- to X2.31
    return circuit;
}

} // namespace

TEST_CASE("the way back is no thinner than the way there",
          "[checks][ground-thinner-than-feed][raises][near-miss][at-limit]") {
    CHECK(findings("ground-thinner-than-feed", groundOf(2.5e-6)).empty());
    CHECK(findings("ground-thinner-than-feed", groundOf(4e-6)).empty());
    CHECK(findings("ground-thinner-than-feed", groundOf(2.46e-6)).empty());
    const Circuit circuit = groundOf(2.44e-6);
    const Finding finding = onlyFinding("ground-thinner-than-feed", circuit);
    CHECK(finding.word == SignalWord::Notice);
    CHECK(finding.wires == std::vector<WireId>{{"w5"}});
    CHECK(finding.limit == Approx(2.5e-6));
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

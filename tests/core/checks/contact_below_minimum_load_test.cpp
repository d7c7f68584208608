#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit lampOn(double power_W, double least_A) {
    return switchedLamp({{"ratedPower_W", power_W}}, {{"make_A", 100}, {"minimumLoad_A", least_A}}).build();
}

} // namespace

TEST_CASE("a contact wants its least current",
          "[checks][contact-below-minimum-load][raises][near-miss][at-limit]") {
    // 1 A: data sheets of two power relays.
    CHECK(findings("contact-below-minimum-load", lampOn(12.1, 1)).empty());
    CHECK(findings("contact-below-minimum-load", lampOn(12, 1)).empty());
    const Finding finding = onlyFinding("contact-below-minimum-load", lampOn(11.9, 1));
    CHECK(finding.value == Approx(11.9 / 12));
    CHECK(finding.limit == Approx(1));
    CHECK(finding.parts == std::vector<PartId>{{"S1"}});
    checkComplete(finding);
}

TEST_CASE("a 40 A contact is too large for a coil of 0.13 A", "[checks][contact-below-minimum-load]") {
    Circuit circuit = soundVan().build();
    circuit.parts.at(PartId{"B1"}).values["minimumLoad_A"] = 1;
    const Finding finding = onlyFinding("contact-below-minimum-load", circuit);
    CHECK(finding.value == Approx(0.14).epsilon(0.05));
}

TEST_CASE("a contact without a load is not judged", "[checks][contact-below-minimum-load]") {
    Circuit circuit = lampOn(1, 1);
    circuit.wires.erase(WireId{"w4"}); // P1.2 to ground
    CHECK(findings("contact-below-minimum-load", circuit).empty());
}

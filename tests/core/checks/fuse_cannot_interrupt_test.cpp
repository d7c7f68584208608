#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit onBattery(double resistance_ohm) {
    Circuit circuit = soundVan().build();
    circuit.limits.ambient_K = 293.15;
    circuit.parts.at(PartId{"G1"}).values["internalResistance_ohm"] = resistance_ohm;
    return circuit;
}

} // namespace

TEST_CASE("blade fuses interrupt 1000 A", "[checks][fuse-cannot-interrupt][raises][near-miss][at-limit]") {
    // ISO 8820-3: breaking capacity 1000 A. 12.65 V, 0.15 m of 2.5 mm², 0.5 m of 6 mm², 2 mΩ of the bolt.
    const double around_ohm = 1.7241e-8 * (0.15 / 2.5e-6 + 0.5 / 6e-6) + 2e-3;
    const double limit_ohm = 12.65 / 1000 - around_ohm;
    CHECK(findings("fuse-cannot-interrupt", onBattery(1.001 * limit_ohm)).empty());
    const Circuit circuit = onBattery(0.999 * limit_ohm);
    const Finding finding = onlyFinding("fuse-cannot-interrupt", circuit);
    CHECK(finding.value == Approx(1000).epsilon(0.001));
    CHECK(finding.limit == Approx(1000));
    CHECK(finding.parts == std::vector<PartId>{{"F1"}});
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a lead that would have to be too long is no remedy", "[checks][fuse-cannot-interrupt]") {
    const Finding finding = onlyFinding("fuse-cannot-interrupt", onBattery(0.0005));
    REQUIRE(finding.remedies.size() == 1);
    CHECK_FALSE(finding.remedies[0].edit.has_value());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The sound van's relay, 7.2 V at 20 °C, with next to no loss in its wires.
Circuit at(double ambient_K, double supply_V) {
    Circuit circuit = soundVan().build();
    circuit.limits.ambient_K = ambient_K;
    circuit.limits.lowestSupply_V = supply_V;
    for (auto& [id, wire] : circuit.wires) {
        wire.area_m2 = 100e-6;
    }
    return circuit;
}

} // namespace

TEST_CASE("a coil of 85 °C that pulls in at 7.2 V cold needs 9.04 V and a tenth more",
          "[checks][coil-pull-in-margin][raises][near-miss][at-limit]") {
    // AC 43.13-1B par. 11-66: R(T) = R20·(234.5 + T)/254.5; Caltrans 8.3: 110 %. 55 °C and 30 K of own heat.
    const double needs_V = 1.1 * 7.2 * (234.5 + 85) / 254.5;
    CHECK(findings("coil-pull-in-margin", at(328.15, 1.002 * needs_V)).empty());
    const Finding finding = onlyFinding("coil-pull-in-margin", at(328.15, 0.998 * needs_V));
    CHECK(finding.limit == Approx(needs_V).epsilon(0.001));
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
}

TEST_CASE("thin long wires to the coil count", "[checks][coil-pull-in-margin]") {
    Circuit circuit = at(328.15, 10.1);
    CHECK(findings("coil-pull-in-margin", circuit).empty());
    circuit.wires.at(WireId{"w8"}).area_m2 = 0.35e-6;
    circuit.wires.at(WireId{"w8"}).length_m = 60;
    checkRemedy(circuit, onlyFinding("coil-pull-in-margin", circuit));
}

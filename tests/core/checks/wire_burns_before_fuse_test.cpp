#include "tests/core/checks/run_rule.h"

#include <cmath>

using namespace pumpwright;

namespace {

/// A lamp far away on thin wire behind a large fuse.
Circuit farLamp(double length_m, double fuse_A, const char* type, double area_m2 = 0.5e-6) {
    Circuit circuit =
        switchedLamp({{"ratedPower_W", 60}}, {{"make_A", 100}}, {{"rating_A", fuse_A}}, area_m2, length_m)
            .build();
    circuit.parts.at(PartId{"F1"}).choices["type"] = type;
    return circuit;
}

} // namespace

TEST_CASE("a short that the fuse clears late burns the wire", "[checks][wire-burns-before-fuse][raises]") {
    const Circuit circuit = farLamp(4, 30, "E");
    const Finding finding = onlyFinding("wire-burns-before-fuse", circuit);
    CHECK(finding.value > finding.limit);
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.parts == std::vector<PartId>{{"F1"}});
    checkComplete(finding);
}

TEST_CASE("a 10 A fuse clears a short before 0.5 mm² of PVC burns",
          "[checks][wire-burns-before-fuse][near-miss]") {
    // k 115 [IEC 60364-4-43]: the wire stands 3306 A²s, a 20 A fuse melts at 520 A²s.
    CHECK(findings("wire-burns-before-fuse", farLamp(2, 10, "C")).empty());
    CHECK(findings("wire-burns-before-fuse", soundVan().build()).empty());
}

TEST_CASE("a wire stands (k·S/I)² seconds from 70 to 160 °C", "[checks][wire-burns-before-fuse]") {
    // IEC 60364-4-43: k = 115 for PVC from 70 to 160 °C. Longer by what the insulation takes up: at most by
    // the square of 1.54, the non-adiabatic factor of IEC 60949 for copper in PVC after 4.4 s on 0.5 mm²,
    // values from memory: √(1 + 0.29·√(t/S) + 0.06·t/S).
    Circuit circuit = farLamp(4, 30, "E");
    circuit.limits.ambient_K = 343.15;
    const Finding finding = onlyFinding("wire-burns-before-fuse", circuit);
    const double draws_A = [&] {
        const double perMetre_ohm = 1.7241e-8 * (1 + 0.00393 * 50);
        return 12.65 / (0.01 + perMetre_ohm * (0.1 + 4 + 4) / 0.5e-6 + perMetre_ohm * 0.5 / 6e-6 + 0.002);
    }();
    const double adiabatic_s = std::pow(115 * 0.5 / draws_A, 2);
    CHECK(finding.limit >= 0.99 * adiabatic_s);
    CHECK(finding.limit < 1.54 * 1.54 * adiabatic_s);
}

TEST_CASE("a larger gauge ends the finding", "[checks][wire-burns-before-fuse]") {
    Circuit circuit = farLamp(4, 30, "E", 2.5e-6);
    CHECK(findings("wire-burns-before-fuse", circuit).empty());
}

TEST_CASE("a wire that stands the short just as long as the fuse takes is safe",
          "[checks][wire-burns-before-fuse][at-limit]") {
    // Between the gauges of the other cases lies one at which both times meet.
    double burns_m2 = 0.5e-6;
    double stands_m2 = 2.5e-6;
    while (stands_m2 - burns_m2 > 1e-11) {
        const double area_m2 = (burns_m2 + stands_m2) / 2;
        (findings("wire-burns-before-fuse", farLamp(4, 30, "E", area_m2)).empty() ? stands_m2 : burns_m2) =
            area_m2;
    }
    CHECK(findings("wire-burns-before-fuse", farLamp(4, 30, "E", stands_m2)).empty());
    const Finding finding = onlyFinding("wire-burns-before-fuse", farLamp(4, 30, "E", burns_m2));
    CHECK(finding.value > finding.limit);
    CHECK(finding.value == Approx(finding.limit).epsilon(0.001));
}

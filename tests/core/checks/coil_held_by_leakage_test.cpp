#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The van's relay on a solid-state output that leaks. Its coil has 90 Ω and drops out at 1.6 V.
CircuitBuilder onOutput(double leakage_A) {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("solid-state-relay", "K2", {{"leakage_A", leakage_A}})
        .wire("F1.2", "K2.1")
        .wire("K2.2", "K1.86")
        .wire("F1.2", "B1.1")
        .wire("B1.2", "K2.A1")
        .wire("K2.A2", "X3.31");
    return builder;
}

/// The van's relay with a lamp beside the vacuum switch that commands it.
Circuit withPilot(double power_W, const char* sort) {
    CircuitBuilder builder = soundVan();
    return builder.part("lamp", "P1", {{"ratedPower_W", power_W}}, {{"sort", sort}})
        .wire("B1.1", "P1.1")
        .wire("P1.2", "B1.2")
        .build();
}

} // namespace

TEST_CASE("what is left in a coil stays below 90 % of its drop-out current",
          "[checks][coil-held-by-leakage][raises][near-miss][at-limit]") {
    // Caltrans equipment electrical standards 8.4: below 90 %. 0.9·1.6 V/90 Ω are 16 mA.
    CHECK(findings("coil-held-by-leakage", onOutput(0.01599).build()).empty());
    const Circuit circuit = onOutput(0.01601).build();
    const Finding finding = onlyFinding("coil-held-by-leakage", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}, {"K2"}});
    CHECK(finding.value == Approx(0.01601));
    CHECK(finding.limit == Approx(0.9 * 1.6 / 90));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a pilot lamp beside the switch feeds the coil, a small LED does not hold it",
          "[checks][coil-held-by-leakage][near-miss]") {
    // A cold filament of 5 W is next to no resistance: the coil gets nearly all. 0.12 W are 10 mA.
    const Finding finding = onlyFinding("coil-held-by-leakage", withPilot(5, "filament"));
    CHECK(finding.parts == std::vector<PartId>{{"K1"}, {"P1"}});
    CHECK(finding.value > 0.1);
    CHECK(findings("coil-held-by-leakage", withPilot(0.12, "led")).empty());
}

TEST_CASE("what lies beside the coil takes its share of the leakage", "[checks][coil-held-by-leakage]") {
    CircuitBuilder builder = onOutput(0.0165);
    const Circuit circuit = builder.part("resistor", "R1", {{"resistance_ohm", 680}})
                                .wire("K1.86", "R1.1")
                                .wire("R1.2", "K1.85")
                                .build();
    CHECK(findings("coil-held-by-leakage", circuit).empty()); // 0.0165 A·680/(680 + 90) are 14.6 mA
}

TEST_CASE("a sound circuit lets its relay go", "[checks][coil-held-by-leakage]") {
    CHECK(findings("coil-held-by-leakage", soundVan().build()).empty());
}

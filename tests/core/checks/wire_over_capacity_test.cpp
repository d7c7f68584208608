#include "core/parts/conductor.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

constexpr double k14Awg_m2 = 2.081e-6;

/// A lamp of this current on wires of 14 AWG, T105.
Circuit lampOf(double current_A, double ambient_K) {
    ProjectLimits limits;
    limits.ambient_K = ambient_K;
    CircuitBuilder builder =
        switchedLamp({{"ratedPower_W", 12 * current_A}}, {{"make_A", 1000}}, {{"rating_A", 60}}, k14Awg_m2);
    return builder.limits(limits).build();
}

} // namespace

TEST_CASE("wire of 14 AWG and 105 °C carries 35 A at 30 °C",
          "[checks][wire-over-capacity][raises][near-miss]") {
    // 33 CFR 183.425, table 5: 14 AWG, 105 °C, 30 °C: 35 A. The area is rounded to 0.05 %.
    constexpr double k30Celsius_K = 303.15;
    CHECK(findings("wire-over-capacity", lampOf(34.9, k30Celsius_K)).empty());
    const auto found = findings("wire-over-capacity", lampOf(35.1, k30Celsius_K));
    REQUIRE(found.size() == 4); // all but the battery's ground strap of 6 mm²
    CHECK(found[0].value == Approx(35.1));
    CHECK(found[0].limit == Approx(35).epsilon(0.001));
    CHECK(found[0].wires == std::vector<WireId>{{"w1"}});
    CHECK(found[0].word == SignalWord::Warning);
    checkComplete(found[0]);
}

TEST_CASE("in an engine space of 50 °C the same wire carries 30 A", "[checks][wire-over-capacity]") {
    // Engine-space column for 105 °C wire (× 0.85): 14 AWG 30 A, 29.75 before rounding.
    constexpr double k50Celsius_K = 323.15;
    CHECK(findings("wire-over-capacity", lampOf(29.7, k50Celsius_K)).empty());
    CHECK(findings("wire-over-capacity", lampOf(29.8, k50Celsius_K)).size() == 4);
}

TEST_CASE("at the limit itself a wire is not over it", "[checks][wire-over-capacity][at-limit]") {
    const double limit_A = ampacity_A(k14Awg_m2, "T105", 323.15, 1);
    const Circuit circuit = lampOf(5, 323.15);
    const auto carrying = [](double current_A) {
        return RecordingBuilder(20).wire("w3", probe::kCurrent, {{0, current_A}, {20, current_A}}).drive();
    };
    // Recordings keep single precision.
    const DriveResult at = carrying(limit_A * (1 - 1e-6));
    CHECK(findings("wire-over-capacity", circuit, &at).empty());
    const DriveResult above = carrying(limit_A * 1.001);
    const Finding finding = onlyFinding("wire-over-capacity", circuit, &above);
    CHECK(finding.wires == std::vector<WireId>{{"w3"}});
    CHECK(finding.at_s.has_value());
}

TEST_CASE("a bundle lowers what a wire may carry", "[checks][wire-over-capacity]") {
    Circuit circuit = lampOf(25, 323.15);
    CHECK(findings("wire-over-capacity", circuit).empty());
    circuit.wires.at(WireId{"w3"}).bundled = 5;
    const Finding finding = onlyFinding("wire-over-capacity", circuit);
    CHECK(finding.what.english().find("bundle of 5") != std::string::npos);
}

TEST_CASE("the remedy lays a gauge that is enough", "[checks][wire-over-capacity]") {
    Circuit circuit = lampOf(25, 323.15);
    circuit.wires.at(WireId{"w3"}).area_m2 = 0.5e-6;
    const Finding finding = onlyFinding("wire-over-capacity", circuit);
    checkRemedy(circuit, finding);
}

TEST_CASE("a sound circuit has no wire over its capacity", "[checks][wire-over-capacity]") {
    CHECK(findings("wire-over-capacity", soundVan().build()).empty());
}

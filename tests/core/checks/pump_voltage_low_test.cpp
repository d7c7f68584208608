#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A pump of 5.5 A on one solid-state relay with this resistance, leads of next to none.
Circuit overResistance(double resistance_ohm) {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("solid-state-relay", "K1", {{"onResistance_ohm", resistance_ohm}})
        .part("pump", "M1", {{"minimumVoltage_V", 9}, {"runningCurrent_A", 5.5}})
        .wire("G1.30", "K1.1", 1e-3, 1e-3)
        .wire("K1.2", "M1.+", 1e-3, 1e-3)
        .wire("M1.-", "G1.31", 1e-3, 1e-3)
        .build();
}

} // namespace

TEST_CASE("a pump over 0.3 ohm gets too little while the engine is cranked",
          "[checks][pump-voltage-low][raises]") {
    // 10.5 V − 5.5 A · 0.3 Ω = 8.85 V (Ohm's law).
    const Finding finding = onlyFinding("pump-voltage-low", overResistance(0.3));
    CHECK(finding.value == Approx(8.85).epsilon(1e-4));
    CHECK(finding.limit == Approx(9));
    CHECK(finding.parts == std::vector<PartId>{{"M1"}});
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
}

TEST_CASE("over 0.2 ohm it gets enough", "[checks][pump-voltage-low][near-miss]") {
    CHECK(findings("pump-voltage-low", overResistance(0.2)).empty());
    CHECK(findings("pump-voltage-low", soundVan().build()).empty());
}

TEST_CASE("the pump's lowest voltage is the limit", "[checks][pump-voltage-low][at-limit]") {
    // (10.5 V − 9 V) / 5.5 A = 0.27273 Ω.
    CHECK(findings("pump-voltage-low", overResistance(0.2726)).empty());
    CHECK(findings("pump-voltage-low", overResistance(0.2729)).size() == 1);
}

TEST_CASE("the lowest supply is the project's", "[checks][pump-voltage-low]") {
    Circuit circuit = overResistance(0.2);
    circuit.limits.lowestSupply_V = 9.5;
    CHECK(onlyFinding("pump-voltage-low", circuit).value == Approx(8.4).epsilon(1e-4));
}

TEST_CASE("what the drive shows counts where it is lower", "[checks][pump-voltage-low]") {
    const Circuit circuit = soundVan().build();
    const auto dipping = [](double volts) {
        return RecordingBuilder(60)
            .part("M1", probe::kCurrent,
                  {{0, 0}, {10, 0}, {10, 12}, {10.2, 5.5}, {30, 5.5}, {30, 0}, {60, 0}})
            .terminal(
                "M1.+",
                {{0, 0}, {10, 0}, {10, 8}, {10.4, 12}, {20, volts}, {25, 12}, {30, 12}, {30, 0}, {60, 0}})
            .terminal("M1.-", {{0, 0}, {60, 0}})
            .drive();
    };
    const DriveResult low = dipping(8.5);
    const Finding finding = onlyFinding("pump-voltage-low", circuit, &low);
    CHECK(finding.value == Approx(8.5));
    CHECK(*finding.at_s == Approx(20));
    const DriveResult enough = dipping(9.1);
    CHECK(findings("pump-voltage-low", circuit, &enough).empty());
}

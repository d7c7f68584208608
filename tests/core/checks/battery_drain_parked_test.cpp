#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A low-vacuum lamp without a key, and a pump behind one. At 12.65 V of the battery, common tables have it,
/// the nameplate's 12 V still count: a lamp of P watts takes P/12 A.
Circuit withWarningLamp(double power_W, double capacity_C = 162e3) {
    CircuitBuilder builder = keyedVan();
    Circuit circuit = builder.part("fuse", "F8", {{"rating_A", 3}})
                          .part("vacuum-switch", "B8", {{"setPoint_Pa", 30e3}})
                          .part("lamp", "P8", {{"ratedPower_W", power_W}}, {{"sort", "led"}})
                          .part("ground", "X8")
                          .wire("G1.30", "F8.1", 0.75e-6, 0.1)
                          .wire("F8.2", "B8.1", 0.75e-6, 1)
                          .wire("B8.2", "P8.1", 0.75e-6, 1)
                          .wire("P8.2", "X8.31", 0.75e-6, 1)
                          .build();
    circuit.parts.at(PartId{"G1"}).values["capacity_C"] = capacity_C;
    return circuit;
}

} // namespace

TEST_CASE("a warning lamp without a key empties a parked battery", "[checks][battery-drain-parked][raises]") {
    // 1.2 W / 12 V · 336 h = 33.6 Ah of 45 Ah, half of which are 22.5 Ah.
    const Finding finding = onlyFinding("battery-drain-parked", withWarningLamp(1.2));
    CHECK(finding.parts == std::vector<PartId>{{"G1"}, {"P8"}});
    CHECK(finding.value == Approx(33.6 * 3600));
    CHECK(finding.limit == Approx(22.5 * 3600));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
}

TEST_CASE("the lamp behind the ignition switch takes nothing from a parked car",
          "[checks][battery-drain-parked][near-miss]") {
    Circuit circuit = withWarningLamp(1.2);
    for (auto& [id, wire] : circuit.wires) {
        wire.from = wire.from == endOf("F8.2") ? endOf("S1.2") : wire.from;
    }
    CHECK(findings("battery-drain-parked", circuit).empty());
}

TEST_CASE("half of the capacity may go, no more", "[checks][battery-drain-parked][at-limit]") {
    // 0.1 A for two weeks are 120,960 C.
    CHECK(findings("battery-drain-parked", withWarningLamp(1.2, 2 * 120'960 + 1)).empty());
    CHECK(findings("battery-drain-parked", withWarningLamp(1.2, 2 * 120'960 - 1)).size() == 1);
}

TEST_CASE("how long the car is parked is the project's", "[checks][battery-drain-parked]") {
    Circuit circuit = withWarningLamp(1.2);
    circuit.limits.parked_s = 7 * 86'400.0;
    CHECK(findings("battery-drain-parked", circuit).empty());
}

TEST_CASE("a pump that runs without a key keeps the vacuum switch open, and has a rule of its own",
          "[checks][battery-drain-parked]") {
    CHECK(findings("battery-drain-parked", soundVan().build()).empty());
    CHECK(findings("pump-live-key-off", soundVan().build()).size() == 1);
}

TEST_CASE("the leakage of a solid-state relay counts", "[checks][battery-drain-parked]") {
    Circuit circuit = CircuitBuilder()
                          .part("supply", "G1", {{"capacity_C", 3600}})
                          .part("fuse", "F1")
                          .part("solid-state-relay", "K1", {{"leakage_A", 0.002}})
                          .part("lamp", "P1")
                          .part("ground", "X1")
                          .wire("G1.30", "F1.1")
                          .wire("F1.2", "K1.1")
                          .wire("K1.2", "P1.1")
                          .wire("P1.2", "X1.31")
                          .wire("G1.31", "X1.31")
                          .build();
    CHECK(onlyFinding("battery-drain-parked", circuit).value == Approx(0.002 * circuit.limits.parked_s));
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The ignition is turned off at 30 s; then come so many presses of 75 N.
Circuit pressingWithKeyOff(int presses) {
    CircuitBuilder builder = keyedVan();
    DrivePlan plan = standingPlan();
    plan.switchMoves = {{0.5, PartId{"S1"}, true}, {30, PartId{"S1"}, false}};
    plan.presses = {{20, 1.5, 75, 0.2}};
    for (int i = 0; i < presses; ++i) {
        plan.presses.push_back({31.0 + 4 * i, 1.5, 75, 0.2});
    }
    return builder.plan(plan).build();
}

} // namespace

TEST_CASE("more presses with the key off than are in store are a warning",
          "[checks][pump-dead-key-off][raises]") {
    const Finding finding = onlyFinding("pump-dead-key-off", pressingWithKeyOff(9));
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.parts == std::vector<PartId>{{"M1"}, {"S1"}});
    CHECK(finding.limit == Approx(9));
    CHECK(finding.value < 9);
    checkComplete(finding);
}

TEST_CASE("a pump that is fed without a key is not dead without one",
          "[checks][pump-dead-key-off][near-miss]") {
    CHECK(findings("pump-dead-key-off", soundVan().build()).empty());
}

TEST_CASE("as many presses as are in store are a notice", "[checks][pump-dead-key-off][at-limit]") {
    const int reserve = static_cast<int>(onlyFinding("pump-dead-key-off", pressingWithKeyOff(0)).value);
    REQUIRE(reserve >= 1);
    CHECK(onlyFinding("pump-dead-key-off", pressingWithKeyOff(reserve)).word == SignalWord::Notice);
    CHECK(onlyFinding("pump-dead-key-off", pressingWithKeyOff(reserve + 1)).word == SignalWord::Warning);
}

TEST_CASE("a switch that was never turned off in the plan does not count its presses",
          "[checks][pump-dead-key-off]") {
    Circuit circuit = pressingWithKeyOff(9);
    circuit.plan.switchMoves.pop_back();
    CHECK(onlyFinding("pump-dead-key-off", circuit).word == SignalWord::Notice);
}

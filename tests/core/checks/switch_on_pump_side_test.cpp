#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit sensedAtPump() {
    CircuitBuilder builder;
    builder.part("booster", "A1").part("check-valve", "R9").part("tee", "X9").part("vacuum-switch", "B1");
    builder.part("pump", "M1").hose("A1.vacuum", "R9.booster").hose("R9.pump", "X9.a");
    return builder.hose("X9.b", "M1.inlet").hose("X9.c", "B1.vacuum", 0.004, 0.3).build();
}

} // namespace

TEST_CASE("a switch between pump and check valve knows nothing of the booster",
          "[checks][switch-on-pump-side][raises]") {
    const Circuit circuit = sensedAtPump();
    const Finding finding = onlyFinding("switch-on-pump-side", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"B1"}});
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(findings("no-check-valve", afterRemedy(circuit, finding)).empty());
}

TEST_CASE("a switch on the booster's side is right", "[checks][switch-on-pump-side][near-miss]") {
    CHECK(findings("switch-on-pump-side", soundVan().build()).empty());
}

TEST_CASE("without a check valve the switch senses the booster after all", "[checks][switch-on-pump-side]") {
    CircuitBuilder builder;
    builder.part("booster", "A1").part("tee", "X9").part("vacuum-switch", "B1").part("pump", "M1");
    builder.hose("A1.vacuum", "X9.a").hose("X9.b", "M1.inlet").hose("X9.c", "B1.vacuum");
    CHECK(findings("switch-on-pump-side", builder.build()).empty());
}

TEST_CASE("which port of the check valve the switch hangs on makes the difference",
          "[checks][switch-on-pump-side][at-limit]") {
    const auto hungOn = [](bool boosterSide) {
        CircuitBuilder builder;
        builder.part("booster", "A1").part("check-valve", "R9").part("tee", "X9").part("vacuum-switch", "B1");
        builder.part("pump", "M1").hose("X9.c", "B1.vacuum");
        builder.hose("A1.vacuum", boosterSide ? "X9.a" : "R9.booster");
        builder.hose(boosterSide ? "X9.b" : "R9.pump", boosterSide ? "R9.booster" : "X9.a");
        return builder.hose(boosterSide ? "R9.pump" : "X9.b", "M1.inlet").build();
    };
    CHECK(findings("switch-on-pump-side", hungOn(true)).empty());
    CHECK(findings("switch-on-pump-side", hungOn(false)).size() == 1);
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("a vacuum switch on battery plus starts the pump in a parked car",
          "[checks][pump-live-key-off][raises]") {
    const Circuit circuit = soundVan().build();
    const Finding finding = onlyFinding("pump-live-key-off", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"M1"}});
    CHECK(finding.value == Approx(5.5));
    CHECK(finding.limit == Approx(0));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("behind the ignition switch it stands still", "[checks][pump-live-key-off][near-miss]") {
    CHECK(findings("pump-live-key-off", keyedVan().build()).empty());
}

TEST_CASE("a wire past the ignition switch makes the difference", "[checks][pump-live-key-off][at-limit]") {
    CircuitBuilder builder = keyedVan();
    CHECK(findings("pump-live-key-off", builder.build()).empty());
    CHECK(findings("pump-live-key-off", builder.wire("S1.1", "S1.2", 0.75e-6, 0.2).build()).size() == 1);
}

TEST_CASE("a pump that only the pedal starts is not fed in a parked car", "[checks][pump-live-key-off]") {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder).part("pedal-switch", "S2").wire("F1.2", "S2.1").wire("S2.2", "K1.86");
    CHECK(findings("pump-live-key-off", builder.build()).empty());
}

TEST_CASE("a relay's break contact feeds the pump when its coil is off", "[checks][pump-live-key-off]") {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"contacts", "changeover"}})
        .part("hand-switch", "S1")
        .wire("F1.2", "S1.1")
        .wire("S1.2", "K1.86");
    CHECK(findings("pump-live-key-off", builder.build()).empty());
    CHECK(findings("pump-live-key-off", builder.wire("K1.87a", "M1.+").build()).size() == 1);
}

TEST_CASE("a resistor before the coil changes nothing of what commands the pump",
          "[checks][pump-live-key-off]") {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder)
        .part("resistor", "R5", {{"resistance_ohm", 10}})
        .part("hand-switch", "S1")
        .wire("B1.2", "R5.1")
        .wire("R5.2", "K1.86");
    CircuitBuilder keyed = builder;
    CHECK(findings("pump-live-key-off", builder.wire("F1.2", "B1.1").build()).size() == 1);
    const Circuit behindKey = keyed.wire("F1.2", "S1.1").wire("S1.2", "B1.1").build();
    CHECK(findings("pump-live-key-off", behindKey).empty());
    CHECK(findings("pump-dead-key-off", behindKey).size() == 1);
}

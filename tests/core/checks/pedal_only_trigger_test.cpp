#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The van's relay on the pedal switch, and on the vacuum switch too if asked for.
Circuit onPedal(bool vacuumToo) {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}}).part("pedal-switch", "S1");
    builder.wire("F1.2", "S1.1").wire("S1.2", "K1.86");
    if (vacuumToo) {
        builder.wire("F1.2", "B1.1").wire("B1.2", "K1.86");
    }
    return builder.build();
}

} // namespace

TEST_CASE("a pump that only the pedal starts comes too late", "[checks][pedal-only-trigger][raises]") {
    const Finding finding = onlyFinding("pedal-only-trigger", onPedal(false));
    CHECK(finding.parts == std::vector<PartId>{{"M1"}, {"S1"}});
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
}

TEST_CASE("pedal and vacuum switch together are no finding", "[checks][pedal-only-trigger][near-miss]") {
    CHECK(findings("pedal-only-trigger", onPedal(true)).empty());
    CHECK(findings("pedal-only-trigger", soundVan().build()).empty());
}

TEST_CASE("the wire from the vacuum switch makes the difference", "[checks][pedal-only-trigger][at-limit]") {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}}).part("pedal-switch", "S1");
    builder.wire("F1.2", "S1.1").wire("S1.2", "K1.86").wire("F1.2", "B1.1");
    CHECK(findings("pedal-only-trigger", builder.build()).size() == 1);
    CHECK(findings("pedal-only-trigger", builder.wire("B1.2", "K1.86").build()).empty());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A solid-state relay sold as 60 A that feeds one load.
CircuitBuilder switched(const char* load, CircuitBuilder::Values values, const char* plus,
                        const char* minus) {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("fuse", "F1")
        .part("solid-state-relay", "K1",
              {{"ratedCurrent_A", 60}, {"resistiveShare", 0.70}, {"inductiveShare", 0.20}})
        .part("hand-switch", "S1")
        .part(load, "L1", values)
        .wire("G1.30", "F1.1")
        .wire("F1.2", "K1.1")
        .wire("K1.2", std::string("L1.") + plus)
        .wire(std::string("L1.") + minus, "G1.31")
        .wire("F1.2", "S1.1")
        .wire("S1.2", "K1.A1")
        .wire("K1.A2", "G1.31");
}

Circuit pump(double running_A) {
    return switched("pump", {{"runningCurrent_A", running_A}, {"inrushCurrent_A", 2 * running_A}}, "+", "-")
        .build();
}

Circuit lamp(double power_W) {
    return switched("lamp", {{"ratedPower_W", power_W}}, "1", "2").build();
}

} // namespace

TEST_CASE("a relay sold as 60 A carries 12 A into a motor",
          "[checks][solid-state-relay-derating][raises][near-miss][at-limit]") {
    // Common practice, no published source.
    CHECK(findings("solid-state-relay-derating", pump(11.9)).empty());
    CHECK(findings("solid-state-relay-derating", pump(12)).empty());
    const Finding finding = onlyFinding("solid-state-relay-derating", pump(12.1));
    CHECK(finding.limit == Approx(12));
    CHECK(finding.value == Approx(12.1));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(pump(12.1), finding);
}

TEST_CASE("a relay sold as 60 A carries 42 A into a resistive load", "[checks][solid-state-relay-derating]") {
    // Common practice, no published source.
    CHECK(findings("solid-state-relay-derating", lamp(12 * 42)).empty());
    CHECK(onlyFinding("solid-state-relay-derating", lamp(12 * 42.1)).limit == Approx(42));
}

TEST_CASE("what it carries in the drive counts", "[checks][solid-state-relay-derating]") {
    const DriveResult drive =
        RecordingBuilder(20).part("K1", probe::kContactCurrent, {{0, 13}, {20, 13}}).drive();
    CHECK(onlyFinding("solid-state-relay-derating", pump(5.5), &drive).value == Approx(13));
}

TEST_CASE("a mechanical relay is not judged as a semiconductor", "[checks][solid-state-relay-derating]") {
    CHECK(findings("solid-state-relay-derating", soundVan().build()).empty());
}

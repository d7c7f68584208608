#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit warnedOver(const char* feed) {
    CircuitBuilder builder = soundVan();
    return builder.part("fuse", "F8", {{"rating_A", 3}})
        .part("vacuum-switch", "B8", {{"setPoint_Pa", 30e3}})
        .part("lamp", "P8", {{"ratedPower_W", 0.3}}, {{"sort", "led"}})
        .part("ground", "X8")
        .wire("G1.30", "F8.1", 0.75e-6, 0.1)
        .wire(feed, "B8.1", 0.75e-6, 1)
        .wire("B8.2", "P8.1", 0.75e-6, 1)
        .wire("P8.2", "X8.31", 0.75e-6, 1)
        .build();
}

} // namespace

TEST_CASE("nobody tells the driver of low vacuum", "[checks][no-vacuum-warning][raises]") {
    const Circuit circuit = soundVan().build();
    const Finding finding = onlyFinding("no-vacuum-warning", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"A1"}});
    CHECK(finding.value == Approx(0));
    CHECK(finding.limit == Approx(1));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    const Circuit cured = afterRemedy(circuit, finding);
    CHECK(findings("battery-drain-parked", cured).empty());
}

TEST_CASE("a lamp on a vacuum switch and a fuse of its own warns", "[checks][no-vacuum-warning][near-miss]") {
    CHECK(findings("no-vacuum-warning", warnedOver("F8.2")).empty());
}

TEST_CASE("the fuse makes the difference", "[checks][no-vacuum-warning][at-limit]") {
    CHECK(findings("no-vacuum-warning", warnedOver("F8.2")).empty());
    const Finding finding = onlyFinding("no-vacuum-warning", warnedOver("F1.2"));
    CHECK(finding.word == SignalWord::Caution);
    CHECK(finding.parts == std::vector<PartId>{{"F1"}, {"P8"}});
    CHECK(finding.value == Approx(2));
    checkComplete(finding);
}

TEST_CASE("a lamp beside the pump tells that it runs, not that it fails", "[checks][no-vacuum-warning]") {
    CircuitBuilder builder = soundVan();
    builder.part("lamp", "P8").part("ground", "X8").wire("K1.87", "P8.1").wire("P8.2", "X8.31");
    CHECK(onlyFinding("no-vacuum-warning", builder.build()).word == SignalWord::Warning);
}

TEST_CASE("a lamp on the pump's own vacuum switch is no warning either", "[checks][no-vacuum-warning]") {
    CircuitBuilder builder = soundVan();
    builder.part("lamp", "P8").part("ground", "X8").wire("B1.2", "P8.1").wire("P8.2", "X8.31");
    CHECK(onlyFinding("no-vacuum-warning", builder.build()).word == SignalWord::Warning);
}

TEST_CASE("a buzzer over a relay warns too", "[checks][no-vacuum-warning]") {
    CircuitBuilder builder = soundVan();
    builder.part("fuse", "F8", {{"rating_A", 3}})
        .part("vacuum-switch", "B8", {{"setPoint_Pa", 30e3}})
        .part("relay", "K8")
        .part("buzzer", "P8")
        .part("ground", "X8")
        .wire("G1.30", "F8.1")
        .wire("F8.2", "B8.1")
        .wire("B8.2", "K8.86")
        .wire("K8.85", "X8.31")
        .wire("F8.2", "K8.30")
        .wire("K8.87", "P8.+")
        .wire("P8.-", "X8.31");
    CHECK(findings("no-vacuum-warning", builder.build()).empty());
}

TEST_CASE("without a booster there is nothing to warn of", "[checks][no-vacuum-warning]") {
    CHECK(findings("no-vacuum-warning", switchedLamp().build()).empty());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The van's relay on a timer that the vacuum switch triggers.
Circuit withTimer(CircuitBuilder::Choices choices) {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}});
    return builder.part("timer", "K2", {}, choices)
        .part("ground", "X8")
        .wire("F1.2", "K2.15")
        .wire("F1.2", "K2.30")
        .wire("F1.2", "B1.1")
        .wire("B1.2", "K2.S")
        .wire("K2.87", "K1.86")
        .wire("K2.31", "X8.31")
        .build();
}

} // namespace

TEST_CASE("a pump wants delay on release", "[checks][timer-function-unfit][raises][near-miss][at-limit]") {
    CHECK(findings("timer-function-unfit", withTimer({{"function", "delay-on-release"}})).empty());
    for (const char* function : {"single-shot", "delay-on-make"}) {
        const Circuit circuit = withTimer({{"function", function}});
        const Finding finding = onlyFinding("timer-function-unfit", circuit);
        CHECK(finding.word == SignalWord::Warning);
        CHECK(finding.parts == std::vector<PartId>{{"K2"}});
        checkComplete(finding);
        checkRemedy(circuit, finding);
    }
}

TEST_CASE("a new signal starts the time anew", "[checks][timer-function-unfit]") {
    const Circuit circuit = withTimer({{"retriggerable", "no"}});
    const Finding finding = onlyFinding("timer-function-unfit", circuit);
    CHECK(finding.word == SignalWord::Caution);
    checkRemedy(circuit, finding);
}

TEST_CASE("a timer that commands no pump may do what it likes", "[checks][timer-function-unfit]") {
    CircuitBuilder builder = soundVan();
    builder.part("timer", "K8", {}, {{"function", "single-shot"}});
    CHECK(findings("timer-function-unfit", builder.build()).empty());
}

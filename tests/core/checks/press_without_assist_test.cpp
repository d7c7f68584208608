#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit pressedAt(std::vector<double> times_s) {
    Circuit circuit = soundVan().build();
    circuit.plan.duration_s = 60;
    for (const double time_s : times_s) {
        Press press;
        press.at_s = time_s;
        press.hold_s = 2;
        press.rise_s = 0.2;
        circuit.plan.presses.push_back(press);
    }
    return circuit;
}

/// Presses ask for 1000 N; each gets its share of that.
DriveResult giving(const Circuit& circuit, const std::vector<double>& shares) {
    RecordingBuilder::Samples asked{{0, 0}};
    RecordingBuilder::Samples given{{0, 0}};
    for (std::size_t i = 0; i < shares.size(); ++i) {
        const double at_s = circuit.plan.presses[i].at_s;
        const auto add = [&](RecordingBuilder::Samples& samples, double force_N) {
            samples.insert(samples.end(),
                           {{at_s, 0}, {at_s + 0.3, force_N}, {at_s + 2, force_N}, {at_s + 2.2, 0}});
        };
        add(asked, 1000);
        add(given, 1000 * shares[i]);
    }
    return RecordingBuilder(60)
        .part("A1", probe::kAssistAsked, asked)
        .part("A1", probe::kAssist, given)
        .drive();
}

} // namespace

TEST_CASE("a press that gets 95 % of the assist is full",
          "[checks][press-without-assist][raises][near-miss][at-limit]") {
    const Circuit circuit = pressedAt({10});
    const DriveResult full = giving(circuit, {1});
    CHECK(findings("press-without-assist", circuit, &full).empty());
    const DriveResult inside = giving(circuit, {0.951});
    CHECK(findings("press-without-assist", circuit, &inside).empty());
    const DriveResult outside = giving(circuit, {0.949});
    const Finding finding = onlyFinding("press-without-assist", circuit, &outside);
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.parts == std::vector<PartId>{{"A1"}});
    CHECK(finding.value == Approx(0.949));
    CHECK(finding.limit == Approx(0.95));
    CHECK(*finding.at_s == Approx(10));
    checkComplete(finding);
}

TEST_CASE("less than half of the assist is a danger", "[checks][press-without-assist]") {
    const Circuit circuit = pressedAt({10});
    const DriveResult half = giving(circuit, {0.501});
    CHECK(onlyFinding("press-without-assist", circuit, &half).word == SignalWord::Warning);
    const DriveResult less = giving(circuit, {0.499});
    CHECK(onlyFinding("press-without-assist", circuit, &less).word == SignalWord::Danger);
}

TEST_CASE("presses that lack assist are counted and the worst is named", "[checks][press-without-assist]") {
    const Circuit circuit = pressedAt({5, 15, 25, 35});
    const DriveResult drive = giving(circuit, {0.9, 1, 0.2, 0.6});
    const Finding finding = onlyFinding("press-without-assist", circuit, &drive);
    CHECK(finding.value == Approx(0.2));
    CHECK(*finding.at_s == Approx(25));
    CHECK(finding.what.english().find("3 of 4 presses") != std::string::npos);
}

TEST_CASE("assist that lags while the force rises is not counted", "[checks][press-without-assist]") {
    const Circuit circuit = pressedAt({10});
    const DriveResult drive =
        RecordingBuilder(60)
            .part("A1", probe::kAssistAsked, {{0, 0}, {10, 0}, {10.2, 1000}, {12, 1000}, {12.2, 0}})
            .part("A1", probe::kAssist, {{0, 0}, {10.1, 0}, {10.39, 1000}, {12, 1000}, {12.2, 0}})
            .drive();
    CHECK(findings("press-without-assist", circuit, &drive).empty());
}

TEST_CASE("assist that comes only while the pedal is already held is missed",
          "[checks][press-without-assist]") {
    const Circuit circuit = pressedAt({10});
    const DriveResult drive =
        RecordingBuilder(60)
            .part("A1", probe::kAssistAsked, {{0, 0}, {10, 0}, {10.2, 1000}, {12, 1000}, {12.2, 0}})
            .part("A1", probe::kAssist, {{0, 0}, {10.3, 0}, {11, 1000}, {12, 1000}, {12.2, 0}})
            .drive();
    CHECK(onlyFinding("press-without-assist", circuit, &drive).word == SignalWord::Danger);
}

TEST_CASE("a touch that asks for next to nothing and a press after the run's end are not judged",
          "[checks][press-without-assist]") {
    const Circuit circuit = pressedAt({10, 59});
    const DriveResult drive =
        RecordingBuilder(60)
            .part("A1", probe::kAssistAsked, {{0, 0}, {10, 99}, {12, 99}, {13, 0}, {59, 0}, {60, 900}})
            .part("A1", probe::kAssist, {{0, 0}, {60, 0}})
            .drive();
    CHECK(findings("press-without-assist", circuit, &drive).empty());
}

TEST_CASE("without a drive nothing is said about assist", "[checks][press-without-assist]") {
    CHECK(findings("press-without-assist", pressedAt({10})).empty());
}

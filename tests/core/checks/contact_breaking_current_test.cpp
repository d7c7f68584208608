#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit pumpOn(double breakInductive_A, double breakResistive_A = 20) {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("fuse", "F1")
        .part("hand-switch", "S1",
              {{"breakInductive_A", breakInductive_A}, {"breakResistive_A", breakResistive_A}})
        .part("pump", "M1", {{"runningCurrent_A", 5.5}})
        .wire("G1.30", "F1.1")
        .wire("F1.2", "S1.1")
        .wire("S1.2", "M1.+")
        .wire("M1.-", "G1.31")
        .build();
}

} // namespace

TEST_CASE("a motor is broken within the inductive rating",
          "[checks][contact-breaking-current][raises][near-miss][at-limit]") {
    CHECK(findings("contact-breaking-current", pumpOn(5.6)).empty());
    CHECK(findings("contact-breaking-current", pumpOn(5.5)).empty());
    const Finding finding = onlyFinding("contact-breaking-current", pumpOn(5.4));
    CHECK(finding.value == Approx(5.5));
    CHECK(finding.limit == Approx(5.4));
    CHECK(finding.word == SignalWord::Caution);
    CHECK(finding.what.english().find("inductive") != std::string::npos);
    CHECK(finding.what.english().find("(a motor, DC-3)") != std::string::npos);
    checkComplete(finding);
}

TEST_CASE("without an inductive rating half the resistive one is the limit",
          "[checks][contact-breaking-current]") {
    // FAA AC 43.13-1B, table 11-4: at 12 V an inductive load asks for a switch of twice its current, so that
    // a motor of 5.5 A asks for 11 A.
    CHECK(findings("contact-breaking-current", pumpOn(0, 11)).empty());
    const Finding finding = onlyFinding("contact-breaking-current", pumpOn(0, 10.9));
    CHECK(finding.limit == Approx(5.45));
    CHECK(finding.source.find("AC 43.13-1B") != std::string::npos);
}

TEST_CASE("a lamp is broken within the resistive rating", "[checks][contact-breaking-current]") {
    const auto lamp = [](double breakResistive_A) {
        return switchedLamp(
                   {{"ratedPower_W", 60}},
                   {{"make_A", 100}, {"breakResistive_A", breakResistive_A}, {"breakInductive_A", 1}})
            .build();
    };
    CHECK(findings("contact-breaking-current", lamp(5)).empty());
    CHECK(onlyFinding("contact-breaking-current", lamp(4.9)).what.english().find("resistive") !=
          std::string::npos);
}

TEST_CASE("what flows just before an opening in the drive counts", "[checks][contact-breaking-current]") {
    const Circuit circuit = pumpOn(8);
    const auto opening = [](double current_A) {
        return RecordingBuilder(10)
            .part("S1", probe::kContact, {{0, 1}, {5, 0}})
            .part("S1", probe::kContactCurrent,
                  {{0, 20}, {1, 20}, {1, current_A}, {5, current_A}, {5, 0}, {10, 0}})
            .drive();
    };
    const DriveResult at = opening(8);
    CHECK(findings("contact-breaking-current", circuit, &at).empty());
    const DriveResult above = opening(8.1);
    const Finding finding = onlyFinding("contact-breaking-current", circuit, &above);
    CHECK(finding.value == Approx(8.1));
    CHECK(*finding.at_s == Approx(5));
}

TEST_CASE("a sound circuit breaks no current beyond a rating", "[checks][contact-breaking-current]") {
    CHECK(findings("contact-breaking-current", soundVan().build()).empty());
}

TEST_CASE("a diode across the motor leaves the resistive rating to hold",
          "[checks][contact-breaking-current]") {
    const Circuit circuit = pumpOn(5.4);
    const Finding finding = onlyFinding("contact-breaking-current", circuit);
    checkRemedy(circuit, finding, 0);
    const Circuit cured = afterRemedy(circuit, finding, 0);
    CHECK(findings("suppression-diode-reversed", cured).empty());
    CHECK(findings("diode-too-small", cured).empty());
}

TEST_CASE("a power relay takes over what the switch cannot break", "[checks][contact-breaking-current]") {
    const Circuit circuit = pumpOn(5.4, 5.4);
    const Finding finding = onlyFinding("contact-breaking-current", circuit);
    REQUIRE(finding.remedies.size() == 2); // no diode: the resistive rating is no larger
    checkRemedy(circuit, finding, 0);
    const Circuit cured = afterRemedy(circuit, finding, 0);
    for (const char* rule : {"coil-without-suppression", "open-terminal", "no-return-path",
                             "terminal-overfull", "reference-not-unique"}) {
        INFO(rule);
        CHECK(findings(rule, cured).empty());
    }
}

TEST_CASE("beyond what the usual relay breaks, and on the ground side, none is put in",
          "[checks][contact-breaking-current]") {
    const auto edits = [](const Circuit& circuit) {
        const Finding finding = onlyFinding("contact-breaking-current", circuit);
        return std::count_if(finding.remedies.begin(), finding.remedies.end(),
                             [](const Remedy& remedy) { return remedy.edit.has_value(); });
    };
    Circuit large = pumpOn(5.4, 5.4);
    large.parts.at(PartId{"M1"}).values["runningCurrent_A"] = 21;
    CHECK(edits(large) == 0);
    const Circuit below = CircuitBuilder()
                              .part("supply", "G1")
                              .part("hand-switch", "S1", {{"breakInductive_A", 5}, {"breakResistive_A", 5}})
                              .part("pump", "M1")
                              .wire("G1.30", "M1.+")
                              .wire("M1.-", "S1.1")
                              .wire("S1.2", "G1.31")
                              .build();
    CHECK(edits(below) == 0);
}

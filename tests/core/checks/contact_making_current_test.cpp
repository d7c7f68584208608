#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit pumpOn(double make_A) {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("fuse", "F1")
        .part("hand-switch", "S1", {{"continuous_A", 20}, {"make_A", make_A}})
        .part("pump", "M1", {{"runningCurrent_A", 5.5}, {"inrushCurrent_A", 12}})
        .wire("G1.30", "F1.1")
        .wire("F1.2", "S1.1")
        .wire("S1.2", "M1.+")
        .wire("M1.-", "G1.31")
        .build();
}

/// S1 closes at 2 s on this peak, which decays to 5.5 A.
DriveResult closingOn(double peak_A, double peakAfter_s = 0.001) {
    return RecordingBuilder(10)
        .part("S1", probe::kContact, {{0, 0}, {2, 1}})
        .part("S1", probe::kContactCurrent,
              {{0, 0}, {2, 0}, {2 + peakAfter_s, peak_A}, {2.4 + peakAfter_s, 5.5}, {10, 5.5}})
        .drive();
}

} // namespace

TEST_CASE("a contact may make the inrush on the nameplate up to its rating",
          "[checks][contact-making-current][raises][near-miss][at-limit]") {
    CHECK(findings("contact-making-current", pumpOn(12.1)).empty());
    CHECK(findings("contact-making-current", pumpOn(12)).empty());
    const Finding finding = onlyFinding("contact-making-current", pumpOn(11.9));
    CHECK(finding.value == Approx(12));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
}

TEST_CASE("more than twice the making rating is a warning", "[checks][contact-making-current]") {
    CHECK(onlyFinding("contact-making-current", pumpOn(6)).word == SignalWord::Caution);
    CHECK(onlyFinding("contact-making-current", pumpOn(5.9)).word == SignalWord::Warning);
}

TEST_CASE("the peak after a closing in the drive counts, a later one does not",
          "[checks][contact-making-current]") {
    const Circuit circuit = pumpOn(20);
    const DriveResult at = closingOn(20);
    CHECK(findings("contact-making-current", circuit, &at).empty());
    const DriveResult above = closingOn(20.5);
    const Finding finding = onlyFinding("contact-making-current", circuit, &above);
    CHECK(finding.value == Approx(20.5).epsilon(1e-4)); // it decays within the 50 µs
    CHECK(*finding.at_s == Approx(2));
    const DriveResult later = closingOn(30, 2);
    CHECK(findings("contact-making-current", circuit, &later).empty());
}

TEST_CASE("the charge of stray capacitance is no inrush", "[checks][contact-making-current]") {
    const auto spike = [](double length_s) {
        return RecordingBuilder(10)
            .part("S1", probe::kContact, {{0, 0}, {2, 1}})
            .part("S1", probe::kContactCurrent,
                  {{0, 0}, {2, 0}, {2, 60}, {2 + length_s, 60}, {2 + length_s, 1}, {10, 1}})
            .drive();
    };
    const DriveResult stray = spike(1e-6);
    CHECK(findings("contact-making-current", pumpOn(20), &stray).empty());
    const DriveResult capacitor = spike(100e-6);
    CHECK(onlyFinding("contact-making-current", pumpOn(20), &capacitor).value == Approx(60));
}

TEST_CASE("a contact whose maker says nothing about making is not judged",
          "[checks][contact-making-current]") {
    CHECK(findings("contact-making-current", pumpOn(0)).empty());
}

TEST_CASE("a sound circuit closes on no inrush beyond the rating", "[checks][contact-making-current]") {
    CHECK(findings("contact-making-current", soundVan().build()).empty());
}

TEST_CASE("a power relay takes over the inrush", "[checks][contact-making-current]") {
    const Circuit circuit = pumpOn(8);
    const Finding finding = onlyFinding("contact-making-current", circuit);
    CHECK(finding.what.english().find("into a motor, DC-3") != std::string::npos);
    checkRemedy(circuit, finding);
}

TEST_CASE("a contact of 10 A suits a filament lamp of 2 A", "[checks][contact-making-current][at-limit]") {
    // FAA AC 43.13-1B, table 11-4: lamps at 12 V ask for a switch of five times their current.
    const auto lampOf = [](double current_A, double make_A) {
        return switchedLamp({{"ratedPower_W", 12 * current_A}},
                            {{"breakResistive_A", 10}, {"make_A", make_A}})
            .build();
    };
    CHECK(findings("contact-making-current", lampOf(2, 10)).empty());
    const Finding finding = onlyFinding("contact-making-current", lampOf(2.01, 10));
    CHECK(finding.what.english().find("into a filament lamp, DC-6") != std::string::npos);
    CHECK(findings("contact-making-current", lampOf(2.01, 30)).empty()); // its maker says so
}

TEST_CASE("loads behind one contact start together", "[checks][contact-making-current]") {
    CircuitBuilder builder =
        switchedLamp({{"ratedPower_W", 12}}, {{"breakResistive_A", 5}, {"make_A", 25.9}});
    builder.part("lamp", "P2", {{"ratedPower_W", 12}}).wire("S1.2", "P2.1").wire("P2.2", "G1.31");
    // Twice 13 A: a cold filament takes ten to fifteen times its current.
    CHECK(onlyFinding("contact-making-current", builder.build()).value == Approx(26));
}

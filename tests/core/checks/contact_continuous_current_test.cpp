#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("a contact may carry its rating by the nameplates and no more",
          "[checks][contact-continuous-current][raises][near-miss][at-limit]") {
    const auto rated = [](double rating_A) {
        return switchedLamp({{"ratedPower_W", 60}}, {{"continuous_A", rating_A}, {"make_A", 100}}).build();
    };
    CHECK(findings("contact-continuous-current", rated(5.01)).empty());
    CHECK(findings("contact-continuous-current", rated(5)).empty());
    const Finding finding = onlyFinding("contact-continuous-current", rated(4.99));
    CHECK(finding.parts == std::vector<PartId>{{"S1"}});
    CHECK(finding.value == Approx(5));
    CHECK(finding.limit == Approx(4.99));
    CHECK(finding.what.english().find("by the nameplates") != std::string::npos);
    checkComplete(finding);
}

TEST_CASE("what a contact carries for five seconds in the drive counts as continuous",
          "[checks][contact-continuous-current]") {
    const Circuit circuit =
        switchedLamp({{"ratedPower_W", 60}}, {{"continuous_A", 10}, {"make_A", 100}}).build();
    const auto carried = [](double current_A, double length_s) {
        return RecordingBuilder(60)
            .part("S1", probe::kContactCurrent,
                  {{0, 0}, {20, 0}, {20, current_A}, {20 + length_s, current_A}, {20 + length_s, 0}, {60, 0}})
            .drive();
    };
    const DriveResult at = carried(10, 6);
    CHECK(findings("contact-continuous-current", circuit, &at).empty());
    const DriveResult above = carried(10.1, 6);
    const Finding finding = onlyFinding("contact-continuous-current", circuit, &above);
    CHECK(finding.value == Approx(10.1));
    CHECK(*finding.at_s == Approx(20));
    const DriveResult brief = carried(19, 2.5);
    CHECK(findings("contact-continuous-current", circuit, &brief).empty());
    const DriveResult backwards = carried(-10.1, 6);
    CHECK(findings("contact-continuous-current", circuit, &backwards).size() == 1);
}

TEST_CASE("a drive that shows less than the nameplates does not excuse them",
          "[checks][contact-continuous-current]") {
    const Circuit circuit =
        switchedLamp({{"ratedPower_W", 60}}, {{"continuous_A", 4.5}, {"make_A", 100}}).build();
    const DriveResult drive =
        RecordingBuilder(20).part("S1", probe::kContactCurrent, {{0, 2}, {20, 2}}).drive();
    CHECK(onlyFinding("contact-continuous-current", circuit, &drive).value == Approx(5));
}

TEST_CASE("a semiconductor output is left to its own rule", "[checks][contact-continuous-current]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("solid-state-relay", "K1", {{"ratedCurrent_A", 4}})
                                .part("lamp", "P1", {{"ratedPower_W", 60}})
                                .wire("G1.30", "K1.1")
                                .wire("K1.2", "P1.1")
                                .wire("P1.2", "G1.31")
                                .build();
    CHECK(findings("contact-continuous-current", circuit).empty());
    CHECK(findings("solid-state-relay-derating", circuit).size() == 1);
}

TEST_CASE("two loads behind one contact add up", "[checks][contact-continuous-current]") {
    CircuitBuilder builder = switchedLamp({{"ratedPower_W", 60}}, {{"continuous_A", 8}, {"make_A", 200}});
    CHECK(findings("contact-continuous-current", builder.build()).empty());
    const Circuit circuit = builder.part("lamp", "P2", {{"ratedPower_W", 48}})
                                .part("ground", "X3")
                                .wire("S1.2", "P2.1")
                                .wire("P2.2", "X3.31")
                                .build();
    CHECK(onlyFinding("contact-continuous-current", circuit).value == Approx(9));
}

TEST_CASE("a timer contact of 5 A does not carry a pump of 5.5 A", "[checks][contact-continuous-current]") {
    // Common practice, no published source: a power relay belongs between them.
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("fuse", "F1")
                                .part("timer", "K1", {{"continuous_A", 5}})
                                .part("pump", "M1", {{"runningCurrent_A", 5.5}})
                                .wire("G1.30", "F1.1")
                                .wire("F1.2", "K1.30")
                                .wire("K1.87", "M1.+")
                                .wire("M1.-", "G1.31")
                                .build();
    CHECK(onlyFinding("contact-continuous-current", circuit).value == Approx(5.5));
}

TEST_CASE("a sound circuit loads no contact beyond its rating", "[checks][contact-continuous-current]") {
    CHECK(findings("contact-continuous-current", soundVan().build()).empty());
}

TEST_CASE("in heat a relay's contact carries less", "[checks][contact-continuous-current][at-limit]") {
    // Data sheet of a power relay: 70 A at 23 °C, 50 A at 85 °C, 30 A at 125 °C. 45 A pass at 85 °C, not at
    // 125 °C.
    const auto carrying = [](double current_A, double ambient_K) {
        ProjectLimits limits;
        limits.ambient_K = ambient_K;
        return CircuitBuilder()
            .part("supply", "G1")
            .part("hand-switch", "S1")
            .part("relay", "K1", {{"continuous_A", 70}, {"make_A", 2000}}, {{"suppression", "diode"}})
            .part("lamp", "P1", {{"ratedPower_W", 12 * current_A}})
            .wire("G1.30", "S1.1")
            .wire("S1.2", "K1.86")
            .wire("K1.85", "G1.31")
            .wire("G1.30", "K1.30", 25e-6)
            .wire("K1.87", "P1.1", 25e-6)
            .wire("P1.2", "G1.31", 25e-6)
            .limits(limits)
            .build();
    };
    CHECK(findings("contact-continuous-current", carrying(69.9, 296.15)).empty());
    CHECK(findings("contact-continuous-current", carrying(70.1, 290)).size() == 1);
    CHECK(findings("contact-continuous-current", carrying(45, 358.15)).empty());
    CHECK(findings("contact-continuous-current", carrying(49.9, 358.15)).empty());
    CHECK(findings("contact-continuous-current", carrying(50.1, 358.15)).size() == 1);
    const Finding finding = onlyFinding("contact-continuous-current", carrying(45, 398.15));
    CHECK(finding.limit == Approx(30));
    CHECK(finding.what.english().find("rated for 70 A, and good for 30 A at 125 °C") != std::string::npos);
}

TEST_CASE("a power relay beside a timer carries what its contact cannot",
          "[checks][contact-continuous-current]") {
    CircuitBuilder builder = CircuitBuilder()
                                 .part("supply", "G1")
                                 .part("fuse", "F1")
                                 .part("hand-switch", "S1")
                                 .part("timer", "K2")
                                 .part("pump", "M1")
                                 .part("ground", "X1")
                                 .part("ground", "X2")
                                 .wire("G1.30", "F1.1", 2.5e-6, 0.1)
                                 .wire("G1.31", "X1.31", 6e-6, 0.3)
                                 .wire("F1.2", "K2.30", 2.5e-6)
                                 .wire("K2.87", "M1.+", 2.5e-6)
                                 .wire("M1.-", "X2.31", 2.5e-6)
                                 .wire("F1.2", "S1.1", 2.5e-6)
                                 .wire("S1.2", "K2.S", 2.5e-6)
                                 .wire("S1.2", "K2.15", 2.5e-6)
                                 .wire("K2.31", "X1.31", 2.5e-6);
    const Circuit circuit = builder.build();
    const Finding finding = onlyFinding("contact-continuous-current", circuit);
    checkRemedy(circuit, finding);
    CHECK(findings("contact-making-current", afterRemedy(circuit, finding)).empty());
}

TEST_CASE("relays side by side share what they carry, a bridging switch may carry all of it",
          "[checks][contact-continuous-current]") {
    // Contacts in parallel share carrying: common practice, no published source.
    const auto lampOver = [](const char* second, const char* near, const char* far) {
        ProjectLimits limits;
        limits.ambient_K = 293.15;
        CircuitBuilder builder = CircuitBuilder()
                                     .part("supply", "G1")
                                     .part("relay", "K1", {{"continuous_A", 3}}, {{"suppression", "diode"}})
                                     .part(second, "Y2", {{"continuous_A", 3}})
                                     .part("lamp", "P1", {{"ratedPower_W", 60}})
                                     .part("hand-switch", "S1")
                                     .wire("G1.30", "S1.1")
                                     .wire("S1.2", "K1.86")
                                     .wire("K1.85", "G1.31")
                                     .wire("G1.30", "K1.30")
                                     .wire("K1.87", "P1.1")
                                     .wire("P1.2", "G1.31");
        builder.wire("K1.30", std::string("Y2.") + near).wire("K1.87", std::string("Y2.") + far);
        return builder.limits(limits).build();
    };
    CHECK(findings("contact-continuous-current", lampOver("relay", "30", "87")).empty());
    const auto found = findings("contact-continuous-current", lampOver("hand-switch", "1", "2"));
    REQUIRE(found.size() == 2);
    CHECK(found[1].parts == std::vector<PartId>{{"Y2"}});
    CHECK(found[1].value == Approx(5));
}

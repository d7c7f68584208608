#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("a wire from plus to ground is a short without anything closing",
          "[checks][supply-short][raises]") {
    CircuitBuilder builder = switchedLamp();
    const Finding finding =
        onlyFinding("supply-short", builder.part("ground", "X9").wire("G1.30", "X9.31").build());
    CHECK(finding.word == SignalWord::Danger);
    CHECK(finding.what.english().find("closes") == std::string::npos);
    CHECK(finding.what.english().find("no fuse") != std::string::npos);
    CHECK(finding.wires == std::vector<WireId>{{"w6"}, {"w5"}});
    CHECK(finding.value > 100);
    checkComplete(finding);
}

TEST_CASE("a switch that bridges its lamp is a short when it closes, up to the fuse",
          "[checks][supply-short]") {
    CircuitBuilder builder = switchedLamp();
    const Circuit circuit =
        builder.part("hand-switch", "S2").wire("S1.2", "S2.1").wire("S2.2", "P1.2").build();
    const Finding finding = onlyFinding("supply-short", circuit);
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.what.english().find("S1 (1–2) and S2 (1–2) close") != std::string::npos);
    CHECK(finding.what.english().find("until F1 opens") != std::string::npos);
}

TEST_CASE("contacts of one relay that are never closed together make no short",
          "[checks][supply-short][near-miss]") {
    const auto changeover = [](const char* grounded) {
        CircuitBuilder builder = switchedLamp();
        return builder.part("relay", "K1", {}, {{"contacts", "changeover"}})
            .part("ground", "X9")
            .wire("S1.2", "K1.87")
            .wire("K1.30", "P1.1")
            .wire(grounded, "X9.31");
    };
    // P1.1 stays joined to S1.2 by a wire of the lamp circuit, so that 30 is the feed.
    const Circuit brake = CircuitBuilder()
                              .part("supply", "G1")
                              .part("relay", "K1", {}, {{"contacts", "changeover"}})
                              .part("pump", "M1")
                              .wire("G1.30", "K1.87")
                              .wire("K1.30", "M1.+")
                              .wire("K1.87a", "G1.31")
                              .wire("M1.-", "G1.31")
                              .build();
    CHECK(findings("supply-short", brake).empty());
    const Finding finding = onlyFinding("supply-short", changeover("K1.87a").build());
    CHECK(finding.what.english().find("S1 (1–2) closes") != std::string::npos);
}

TEST_CASE("the contacts that make the short are tried first among many", "[checks][supply-short]") {
    CircuitBuilder builder = switchedLamp();
    for (int i = 10; i < 60; ++i) { // sorted before Z1 and Z2
        const std::string number = std::to_string(i);
        builder.part("hand-switch", "S" + number).wire("F1.2", "S" + number + ".1");
    }
    const Circuit circuit = builder.part("hand-switch", "Z1")
                                .part("hand-switch", "Z2")
                                .wire("F1.2", "Z1.1")
                                .wire("Z1.2", "Z2.1")
                                .wire("Z2.2", "P1.2")
                                .build();
    const Finding finding = onlyFinding("supply-short", circuit);
    CHECK(finding.what.english().find("Z1 (1–2) and Z2 (1–2) close") != std::string::npos);
}

TEST_CASE("a diode in its direction across the supply is a short, against it none",
          "[checks][supply-short][at-limit]") {
    const auto across = [](const char* plus, const char* minus) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part("diode", "R1")
            .wire("G1.30", plus)
            .wire(minus, "G1.31")
            .build();
    };
    CHECK(findings("supply-short", across("R1.A", "R1.K")).size() == 1);
    CHECK(findings("supply-short", across("R1.K", "R1.A")).empty());
}

TEST_CASE("a sound circuit has no short in any state of its contacts", "[checks][supply-short]") {
    CHECK(findings("supply-short", soundVan().build()).empty());
    CHECK(findings("supply-short", switchedLamp().build()).empty());
}

TEST_CASE("two outputs that pull one line to plus and to ground are a short over both",
          "[checks][supply-short]") {
    const auto lineOf = [](const char* lower) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part("relay", "K1")
            .part("relay", "K2")
            .part("pump", "M1")
            .wire("G1.30", "K1.30")
            .wire("K1.87", "M1.+")
            .wire("M1.-", "G1.31")
            .wire("K2.30", "M1.+")
            .wire("K2.87", lower)
            .build();
    };
    const Finding finding = onlyFinding("supply-short", lineOf("G1.31"));
    CHECK(finding.word == SignalWord::Danger);
    CHECK(finding.what.english().find("K1 (30–87) and K2 (30–87) close") != std::string::npos);
    CHECK(findings("supply-short", lineOf("K1.30")).empty());
}

TEST_CASE("outputs against each other on two lines are two shorts", "[checks][supply-short]") {
    CircuitBuilder builder = CircuitBuilder().part("supply", "G1");
    for (const char* line : {"1", "2"}) {
        const std::string high = std::string("K") + line + "0";
        const std::string low = std::string("K") + line + "1";
        const std::string pump = std::string("M") + line;
        builder.part("relay", high).part("relay", low).part("pump", pump);
        builder.wire("G1.30", high + ".30").wire(high + ".87", pump + ".+").wire(pump + ".-", "G1.31");
        builder.wire(pump + ".+", low + ".30").wire(low + ".87", "G1.31");
    }
    const auto found = findings("supply-short", builder.build());
    REQUIRE(found.size() == 2);
    CHECK(found[0].what.english().find("K10 (30–87) and K11 (30–87) close") != std::string::npos);
    CHECK(found[1].what.english().find("K20 (30–87) and K21 (30–87) close") != std::string::npos);
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("a lamp with both ends on the feed has no return path", "[checks][no-return-path][raises]") {
    CircuitBuilder builder = switchedLamp();
    const Circuit circuit = builder.part("lamp", "P2").wire("S1.2", "P2.1").wire("P2.2", "S1.2").build();
    const Finding finding = onlyFinding("no-return-path", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"P2"}});
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
}

TEST_CASE("two lamps in a ring without a supply have no return path", "[checks][no-return-path]") {
    const Circuit circuit = CircuitBuilder()
                                .part("lamp", "P1")
                                .part("lamp", "P2")
                                .wire("P1.1", "P2.1")
                                .wire("P1.2", "P2.2")
                                .build();
    const auto found = findings("no-return-path", circuit);
    REQUIRE(found.size() == 2);
    CHECK(found[0].what.english().find("no supply") != std::string::npos);
}

TEST_CASE("a battery that is not grounded feeds nothing", "[checks][no-return-path]") {
    Circuit circuit = switchedLamp().build();
    circuit.wires.erase(WireId{"w5"}); // G1.31 to ground
    std::set<std::string> parts;
    for (const Finding& finding : findings("no-return-path", circuit)) {
        parts.insert(finding.parts.front().text);
    }
    CHECK(parts == std::set<std::string>{"F1", "P1", "S1"});
}

TEST_CASE("a diode that stands against the feed bars what lies behind it", "[checks][no-return-path]") {
    const auto withDiode = [](const char* fed, const char* feeding) {
        CircuitBuilder builder = switchedLamp();
        return builder.part("diode", "R1")
            .part("lamp", "P2")
            .part("ground", "X3")
            .wire("S1.2", fed)
            .wire(feeding, "P2.1")
            .wire("P2.2", "X3.31")
            .build();
    };
    CHECK(findings("no-return-path", withDiode("R1.A", "R1.K")).empty());
    const Finding finding = onlyFinding("no-return-path", withDiode("R1.K", "R1.A"));
    CHECK(finding.parts == std::vector<PartId>{{"P2"}});
    CHECK(finding.what.english().find("bars") != std::string::npos);
}

TEST_CASE("a zener below the supply's voltage lets current through backwards, one above does not",
          "[checks][no-return-path][at-limit]") {
    const auto behindZener = [](double zener_V) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part("zener", "R1", {{"zenerVoltage_V", zener_V}})
            .part("lamp", "P1")
            .wire("G1.30", "R1.K")
            .wire("R1.A", "P1.1")
            .wire("P1.2", "G1.31")
            .build();
    };
    CHECK(findings("no-return-path", behindZener(5)).empty());
    CHECK(onlyFinding("no-return-path", behindZener(33)).parts == std::vector<PartId>{{"P1"}});
}

TEST_CASE("a supply is not reported itself", "[checks][no-return-path]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("lamp", "P1")
                                .part("lamp", "P2")
                                .wire("G1.30", "P1.1")
                                .wire("G1.31", "P2.1")
                                .build();
    CHECK(findings("no-return-path", circuit).empty());
    CHECK(findings("open-terminal", circuit).size() == 2);
}

TEST_CASE("a lamp behind a capacitor gets no lasting current", "[checks][no-return-path]") {
    CircuitBuilder builder = switchedLamp();
    const Circuit circuit = builder.part("capacitor", "C1")
                                .part("lamp", "P2")
                                .part("ground", "X3")
                                .wire("S1.2", "C1.+")
                                .wire("C1.-", "P2.1")
                                .wire("P2.2", "X3.31")
                                .build();
    CHECK(onlyFinding("no-return-path", circuit).parts == std::vector<PartId>{{"P2"}});
}

TEST_CASE("a diode across a coil lies in a loop though it stands against the feed",
          "[checks][no-return-path]") {
    CircuitBuilder builder = soundVan({});
    CHECK(findings("no-return-path",
                   builder.part("diode", "R1").wire("R1.K", "K1.86").wire("R1.A", "K1.85").build())
              .empty());
}

TEST_CASE("a long chain of parts is followed to its end", "[checks][no-return-path]") {
    CircuitBuilder builder = CircuitBuilder().part("supply", "G1");
    constexpr std::size_t kParts = 3000;
    for (std::size_t i = 0; i < kParts; ++i) {
        builder.part("resistor", "R" + std::to_string(i));
        builder.wire(i == 0 ? "G1.30" : "R" + std::to_string(i - 1) + ".2", "R" + std::to_string(i) + ".1");
    }
    const Circuit broken = builder.build();
    CHECK(findings("no-return-path", broken).size() == kParts - 1); // the last one's end is open
    builder.wire("R" + std::to_string(kParts - 1) + ".2", "G1.31");
    CHECK(findings("no-return-path", builder.build()).empty());
}

TEST_CASE("in a sound circuit every way has its return", "[checks][no-return-path][near-miss]") {
    CHECK(findings("no-return-path", soundVan().build()).empty());
    CHECK(findings("no-return-path", switchedLamp().build()).empty());
}

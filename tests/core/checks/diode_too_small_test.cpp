#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A diode across the pump, which takes 5.5 A running and 12 A at its start.
Circuit acrossPump(CircuitBuilder::Values diode) {
    CircuitBuilder builder = soundVan();
    return builder.part("diode", "R1", diode).wire("R1.K", "M1.+").wire("R1.A", "M1.-").build();
}

} // namespace

TEST_CASE("a freewheel diode carries the load's current",
          "[checks][diode-too-small][raises][near-miss][at-limit]") {
    // Forward at least the load's current: relay contact protection in a card's manual.
    CHECK(findings("diode-too-small", acrossPump({{"ratedCurrent_A", 5.5}})).empty());
    const Circuit circuit = acrossPump({{"ratedCurrent_A", 5.4}});
    const Finding finding = onlyFinding("diode-too-small", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"R1"}});
    CHECK(finding.value == Approx(5.4));
    CHECK(finding.limit == Approx(5.5));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(afterRemedy(circuit, finding).parts.at(PartId{"R1"}).values.at("ratedCurrent_A") == Approx(6));
}

TEST_CASE("switched off at its start, a motor gives the diode its inrush",
          "[checks][diode-too-small][at-limit]") {
    CHECK(findings("diode-too-small", acrossPump({{"ratedCurrent_A", 6}, {"surgeCurrent_A", 12}})).empty());
    const Finding finding =
        onlyFinding("diode-too-small", acrossPump({{"ratedCurrent_A", 6}, {"surgeCurrent_A", 11.9}}));
    CHECK(finding.limit == Approx(12));
}

TEST_CASE("a diode blocks three times the supply", "[checks][diode-too-small][at-limit]") {
    // Ten times the supply, two to three with care: relay contact protection in a card's manual. 12.65 V.
    const auto blocking = [](double reverse_V) {
        return acrossPump({{"ratedCurrent_A", 6}, {"reverseVoltage_V", reverse_V}});
    };
    CHECK(findings("diode-too-small", blocking(38.1)).empty());
    const Finding finding = onlyFinding("diode-too-small", blocking(37.8));
    CHECK(finding.limit == Approx(38).epsilon(0.002));
    CHECK(finding.kind == QuantityKind::Voltage);
}

TEST_CASE("the worst of several shortages leads, and one larger diode ends them",
          "[checks][diode-too-small]") {
    const Circuit circuit =
        acrossPump({{"ratedCurrent_A", 1}, {"surgeCurrent_A", 10}, {"reverseVoltage_V", 20}});
    const Finding finding = onlyFinding("diode-too-small", circuit);
    CHECK(finding.limit == Approx(5.5));
    CHECK(finding.what.english().find("blocks 20 V") != std::string::npos);
    checkRemedy(circuit, finding);
}

TEST_CASE("a diode in a feed carries what it feeds", "[checks][diode-too-small][near-miss]") {
    const auto feeding = [](double rated_A) {
        CircuitBuilder builder = switchedLamp();
        return builder.part("diode", "R1", {{"ratedCurrent_A", rated_A}})
            .part("lamp", "P2", {{"ratedPower_W", 24}})
            .wire("S1.2", "R1.A")
            .wire("R1.K", "P2.1")
            .wire("P2.2", "G1.31")
            .build();
    };
    CHECK(findings("diode-too-small", feeding(2)).empty());
    CHECK(onlyFinding("diode-too-small", feeding(1.9)).limit == Approx(2));
}

TEST_CASE("a coil's current is little for any diode", "[checks][diode-too-small][near-miss]") {
    CircuitBuilder builder = soundVan({});
    builder.part("diode", "R1", {{"ratedCurrent_A", 1}, {"surgeCurrent_A", 30}, {"reverseVoltage_V", 100}});
    CHECK(findings("diode-too-small", builder.wire("R1.K", "K1.86").wire("R1.A", "K1.85").build()).empty());
}

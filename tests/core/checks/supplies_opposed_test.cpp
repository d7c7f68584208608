#include "core/parts/part_kind.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// Two batteries of 60 Ah with a switch between their plus poles, both on the body.
CircuitBuilder twoBatteries(double charge_share, double resistance_ohm, bool turned = false) {
    return CircuitBuilder()
        .part("supply", "G1", {{"internalResistance_ohm", resistance_ohm / 2}})
        .part("supply", "G2",
              {{"internalResistance_ohm", resistance_ohm / 2}, {"stateOfCharge_share", charge_share}})
        .part("hand-switch", "S1")
        .wire("G1.30", "S1.1", 1e-3, 0.01)
        .wire("S1.2", turned ? "G2.31" : "G2.30", 1e-3, 0.01)
        .wire("G1.31", turned ? "G2.30" : "G2.31", 1e-3, 0.01);
}

double emf_V(const Circuit& circuit, const char* id) {
    const Part& part = circuit.parts.at(PartId{id});
    return kindOf(part).features(part).source->emf_V;
}

} // namespace

TEST_CASE("a battery that stands plus on minus to another is a danger",
          "[checks][supplies-opposed][raises]") {
    const Circuit circuit = twoBatteries(1, 0.02, true).build();
    const Finding finding = onlyFinding("supplies-opposed", circuit);
    CHECK(finding.word == SignalWord::Danger);
    CHECK(finding.parts == std::vector<PartId>{{"G1"}, {"G2"}});
    CHECK(finding.value == Approx(2 * emf_V(circuit, "G1") / 0.02).epsilon(0.001));
    CHECK(finding.what.english().find("as soon as S1 (1–2) closes") != std::string::npos);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a flat battery takes a tenth of its ampere-hours from a full one",
          "[checks][supplies-opposed][at-limit]") {
    // 6 A into 60 Ah: common practice, no published source.
    const Circuit apart = twoBatteries(0.3, 1).build();
    const double difference_V = emf_V(apart, "G1") - emf_V(apart, "G2");
    CHECK(findings("supplies-opposed", twoBatteries(0.3, difference_V / 5.99).build()).empty());
    const Circuit circuit = twoBatteries(0.3, difference_V / 6.01).build();
    const Finding finding = onlyFinding("supplies-opposed", circuit);
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.value == Approx(6.01).epsilon(0.001));
    CHECK(finding.limit == Approx(6));
    CHECK(finding.parts == std::vector<PartId>{{"G1"}, {"G2"}});
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("equal batteries side by side and batteries in a row are no opposition",
          "[checks][supplies-opposed][near-miss]") {
    CHECK(findings("supplies-opposed", twoBatteries(1, 0.02).build()).empty());
    const Circuit row = CircuitBuilder()
                            .part("supply", "G1")
                            .part("supply", "G2")
                            .part("lamp", "P1", {{"ratedVoltage_V", 24}})
                            .wire("G1.30", "P1.1")
                            .wire("P1.2", "G2.31")
                            .wire("G2.30", "G1.31")
                            .build();
    CHECK(findings("supplies-opposed", row).empty());
}

TEST_CASE("a diode towards the weaker battery lets current in, one away from it does not",
          "[checks][supplies-opposed]") {
    const auto over = [](const char* strongEnd, const char* weakEnd) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part("supply", "G2", {{"stateOfCharge_share", 0.2}})
            .part("diode", "R1")
            .wire("G1.30", strongEnd)
            .wire(weakEnd, "G2.30")
            .wire("G1.31", "G2.31")
            .build();
    };
    CHECK(findings("supplies-opposed", over("R1.A", "R1.K")).size() == 1);
    CHECK(findings("supplies-opposed", over("R1.K", "R1.A")).empty());
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A part with two marked terminals on the lamp's fuse, one end on the feed and the other on the body.
Circuit with(const char* kind, const std::string& toPlus, const std::string& toMinus) {
    CircuitBuilder builder = switchedLamp();
    return builder.part(kind, "Y1")
        .part("ground", "X8")
        .wire("F1.2", "Y1." + toPlus)
        .wire("Y1." + toMinus, "X8.31")
        .build();
}

} // namespace

TEST_CASE("buzzer, capacitor, timer and solid-state relay have a plus side",
          "[checks][polarity-reversed][raises][near-miss][at-limit]") {
    struct Case {
        const char* kind;
        const char* plus;
        const char* minus;
    };
    for (const Case& one : {Case{"buzzer", "+", "-"}, Case{"capacitor", "+", "-"}, Case{"timer", "15", "31"},
                            Case{"solid-state-relay", "A1", "A2"}}) {
        INFO(one.kind);
        CHECK(findings("polarity-reversed", with(one.kind, one.plus, one.minus)).empty());
        const Circuit circuit = with(one.kind, one.minus, one.plus);
        const Finding finding = onlyFinding("polarity-reversed", circuit);
        CHECK(finding.word == SignalWord::Warning);
        CHECK(finding.parts == std::vector<PartId>{{"Y1"}});
        checkComplete(finding);
        checkRemedy(circuit, finding);
    }
}

TEST_CASE("a capacitor that is not polarised may stand either way", "[checks][polarity-reversed]") {
    Circuit circuit = with("capacitor", "-", "+");
    circuit.parts.at(PartId{"Y1"}).choices["polarised"] = "no";
    CHECK(findings("polarity-reversed", circuit).empty());
}

TEST_CASE("a battery with its plus on the body is a danger", "[checks][polarity-reversed]") {
    Circuit circuit = soundVan().build();
    for (auto& [id, wire] : circuit.wires) {
        if (wire.from.part == PartId{"G1"}) {
            wire.from.terminal = wire.from.terminal == "30" ? "31" : "30";
        }
    }
    const std::vector<Finding> found = findings("polarity-reversed", circuit);
    REQUIRE_FALSE(found.empty());
    CHECK(found.front().word == SignalWord::Danger);
    CHECK(found.front().parts == std::vector<PartId>{{"G1"}});
    CHECK(findings("polarity-reversed", afterRemedy(circuit, found.front())).empty());
}

TEST_CASE("the output of a solid-state relay has a plus side as well", "[checks][polarity-reversed]") {
    const auto output = [](const char* fed, const char* feeding) {
        CircuitBuilder builder = switchedLamp();
        return builder.part("solid-state-relay", "K1")
            .part("lamp", "P2")
            .wire("F1.2", fed)
            .wire(feeding, "P2.1")
            .wire("P2.2", "G1.31")
            .wire("S1.2", "K1.A1")
            .wire("K1.A2", "G1.31")
            .build();
    };
    CHECK(findings("polarity-reversed", output("K1.1", "K1.2")).empty());
    const Circuit circuit = output("K1.2", "K1.1");
    const Finding finding = onlyFinding("polarity-reversed", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    checkRemedy(circuit, finding);
}

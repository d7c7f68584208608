#include "core/checks/switched_load.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// A relay's coil of this inductance and 90 Ω behind a switch.
Circuit coilOf(double inductance_H, const char* suppression) {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("hand-switch", "S1")
        .part("relay", "K1", {{"coilInductance_H", inductance_H}}, {{"suppression", suppression}})
        .wire("G1.30", "S1.1")
        .wire("S1.2", "K1.86")
        .wire("K1.85", "G1.31")
        .build();
}

bool inductive(const Circuit& circuit) {
    const Nets nets = findNets(circuit);
    const CheckInputs inputs{circuit, nets};
    const Survey survey(inputs);
    REQUIRE(survey.loadPaths().size() == 1);
    return breaksInductively(survey, survey.loadPaths().front());
}

std::string category(const char* kind, CircuitBuilder::Choices choices = {}) {
    CircuitBuilder builder;
    const Circuit circuit = builder.part(kind, "Y1", {}, choices).build();
    const Nets nets = findNets(circuit);
    const CheckInputs inputs{circuit, nets};
    const Survey survey(inputs);
    return std::string(categoryOf(survey.loadPaths().front().load).name);
}

} // namespace

TEST_CASE("loads have the utilisation categories of the standard", "[checks][switched-load]") {
    // IEC 60947-4-1: DC-3 motors, DC-6 incandescent lamps; IEC 60947-5-1: DC-12 resistive and isolated by
    // opto-couplers, DC-13 electromagnets.
    CHECK(category("pump") == "DC-3");
    CHECK(category("lamp") == "DC-6");
    CHECK(category("lamp", {{"sort", "led"}}) == "DC-12");
    CHECK(category("relay") == "DC-13");
    CHECK(category("buzzer") == "DC-12");
}

TEST_CASE("a coil is inductive above an L/R of one millisecond", "[checks][switched-load]") {
    // DC-1 and DC-12 are tested at 1 ms: IEC 60947-4-1, IEC 60947-5-1.
    CHECK_FALSE(inductive(coilOf(0.09, "none")));
    CHECK(inductive(coilOf(0.0901, "none")));
}

TEST_CASE("a diode across a winding takes its current over, a resistor does not", "[checks][switched-load]") {
    CHECK_FALSE(inductive(coilOf(0.7, "diode")));
    CHECK(inductive(coilOf(0.7, "resistor")));
    CHECK(inductive(coilOf(0.7, "zener")));
}

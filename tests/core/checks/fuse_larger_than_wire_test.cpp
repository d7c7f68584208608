#include "core/parts/conductor.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The lamp circuit with this fuse; only w3, behind the switch, is thin: 18 AWG, T105.
Circuit fused(double rating_A) {
    Circuit circuit =
        switchedLamp({{"ratedPower_W", 60}}, {{"make_A", 100}}, {{"rating_A", rating_A}}, 10e-6).build();
    circuit.wires.at(WireId{"w3"}).area_m2 = 0.823e-6;
    return circuit;
}

} // namespace

TEST_CASE("a fuse of 20 A before 18 AWG in an engine space is 118 % of the wire",
          "[checks][fuse-larger-than-wire]") {
    // Engine-space column for 105 °C wire: 18 AWG 17 A. 118 % passes the 125 % and the 150 % rule, not 100 %.
    const Finding finding = onlyFinding("fuse-larger-than-wire", fused(20));
    CHECK(finding.word == SignalWord::Caution);
    CHECK(finding.parts == std::vector<PartId>{{"F1"}});
    CHECK(finding.wires == std::vector<WireId>{{"w3"}});
    CHECK(finding.value == Approx(20));
    CHECK(finding.limit == Approx(17).epsilon(0.001));
    checkComplete(finding);
}

TEST_CASE("up to the wire's capacity a fuse is right, beyond 125 % it is a warning",
          "[checks][fuse-larger-than-wire][raises][near-miss][at-limit]") {
    const double limit_A = ampacity_A(0.823e-6, "T105", 323.15, 1);
    CHECK(findings("fuse-larger-than-wire", fused(0.999 * limit_A)).empty());
    CHECK(findings("fuse-larger-than-wire", fused(limit_A)).empty());
    CHECK(onlyFinding("fuse-larger-than-wire", fused(1.001 * limit_A)).word == SignalWord::Caution);
    CHECK(onlyFinding("fuse-larger-than-wire", fused(1.249 * limit_A)).word == SignalWord::Caution);
    // Caltrans equipment electrical standards 3.4: at most 125 %.
    const Finding above = onlyFinding("fuse-larger-than-wire", fused(1.251 * limit_A));
    CHECK(above.word == SignalWord::Warning);
    CHECK(above.source.find("Caltrans") != std::string::npos);
    // 33 CFR 183.455(c)(1): at most 150 %.
    CHECK(onlyFinding("fuse-larger-than-wire", fused(1.499 * limit_A)).source.find("Caltrans") !=
          std::string::npos);
    CHECK(onlyFinding("fuse-larger-than-wire", fused(1.501 * limit_A)).source == "33 CFR 183.455(c)(1)");
}

TEST_CASE("a smaller fuse or larger wires put it right", "[checks][fuse-larger-than-wire]") {
    const Circuit circuit = fused(30);
    const Finding finding = onlyFinding("fuse-larger-than-wire", circuit);
    REQUIRE(finding.remedies.size() == 2);
    checkRemedy(circuit, finding, 0);
    checkRemedy(circuit, finding, 1);
    CHECK(afterRemedy(circuit, finding, 0).parts.at(PartId{"F1"}).values.at("rating_A") == Approx(15));
    CHECK(findings("fuse-smaller-than-load", afterRemedy(circuit, finding, 0)).empty());
}

TEST_CASE("no smaller fuse is offered where the load needs the larger one",
          "[checks][fuse-larger-than-wire]") {
    Circuit circuit = fused(30);
    circuit.parts.at(PartId{"P1"}).values["ratedPower_W"] = 12 * 16;
    const Finding finding = onlyFinding("fuse-larger-than-wire", circuit);
    REQUIRE(finding.remedies.size() == 1);
    checkRemedy(circuit, finding);
}

TEST_CASE("wires before the fuse, behind the load and behind a further fuse are not its own",
          "[checks][fuse-larger-than-wire]") {
    Circuit circuit = fused(30);
    circuit.wires.at(WireId{"w3"}).area_m2 = 10e-6;
    circuit.wires.at(WireId{"w1"}).area_m2 = 0.5e-6;
    circuit.wires.at(WireId{"w4"}).area_m2 = 0.5e-6;
    CHECK(findings("fuse-larger-than-wire", circuit).empty());
    CircuitBuilder builder =
        switchedLamp({{"ratedPower_W", 60}}, {{"make_A", 100}}, {{"rating_A", 30}}, 10e-6);
    const Circuit branched = builder.part("fuse", "F2", {{"rating_A", 5}})
                                 .part("buzzer", "P2")
                                 .part("ground", "X3")
                                 .wire("S1.2", "F2.1", 10e-6)
                                 .wire("F2.2", "P2.+", 0.5e-6)
                                 .wire("P2.-", "X3.31", 0.5e-6)
                                 .build();
    CHECK(findings("fuse-larger-than-wire", branched).empty());
}

TEST_CASE("a wire that two fuses feed over diodes is the wire of neither alone",
          "[checks][fuse-larger-than-wire]") {
    CircuitBuilder builder = CircuitBuilder().part("supply", "G1").part("buzzer", "P1").part("splice", "X1");
    for (const char* number : {"1", "2"}) {
        const std::string fuse = std::string("F") + number;
        const std::string diode = std::string("R") + number;
        builder.part("fuse", fuse, {{"rating_A", 30}})
            .part("diode", diode)
            .wire("G1.30", fuse + ".1", 10e-6)
            .wire(fuse + ".2", diode + ".A", 10e-6)
            .wire(diode + ".K", "X1.1", 10e-6);
    }
    const Circuit circuit = builder.wire("X1.1", "P1.+", 0.75e-6).wire("P1.-", "G1.31").build();
    CHECK(findings("fuse-larger-than-wire", circuit).empty());
}

TEST_CASE("a sound circuit has no fuse larger than its wires", "[checks][fuse-larger-than-wire]") {
    CHECK(findings("fuse-larger-than-wire", soundVan().build()).empty());
}

#include "tests/core/checks/run_rule.h"

#include <cmath>

using namespace pumpwright;

namespace {

/// The van's relay with a diode in it or beside it, and a contact that may break so much inductively: the
/// pump takes 5.5 A.
Circuit relayOf(double breakInductive_A, bool outside = false, double inductance_H = 0.7) {
    CircuitBuilder builder = outside ? soundVan({}) : soundVan();
    if (outside) {
        builder.part("diode", "R1").wire("R1.K", "K1.86").wire("R1.A", "K1.85");
    }
    Circuit circuit = builder.build();
    circuit.parts.at(PartId{"K1"}).values["breakInductive_A"] = breakInductive_A;
    circuit.parts.at(PartId{"K1"}).values["coilInductance_H"] = inductance_H;
    return circuit;
}

/// [s] that a 0.7 V diode adds to a clamp of 24.7 V: L/R·(ln((I0 + Vd/R)/(Irel + Vd/R)) − the same with 24.7
/// V), with 12.65 V, 90 Ω and drop-out at 1.6 V.
double added_s(double inductance_H) {
    return inductance_H / 90 *
           (std::log((12.65 + 0.7) / (1.6 + 0.7)) - std::log((12.65 + 24.7) / (1.6 + 24.7)));
}

} // namespace

TEST_CASE("a diode at a relay whose contact has much to break slows it",
          "[checks][diode-delays-release][raises]") {
    const Circuit circuit = relayOf(8);
    const Finding finding = onlyFinding("diode-delays-release", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    CHECK(finding.value == Approx(added_s(0.7)).epsilon(0.01)); // 11 ms
    CHECK(finding.limit == Approx(5e-3));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a diode outside gets a zener in a row", "[checks][diode-delays-release][raises]") {
    const Circuit circuit = relayOf(8, true);
    const Finding finding = onlyFinding("diode-delays-release", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}, {"R1"}});
    checkRemedy(circuit, finding);
    const Circuit cured = afterRemedy(circuit, finding);
    CHECK(findings("coil-without-suppression", cured).empty());
    CHECK(findings("suppression-diode-reversed", cured).empty());
}

TEST_CASE("up to half of the inductive rating slow contacts break well",
          "[checks][diode-delays-release][near-miss][at-limit]") {
    CHECK(findings("diode-delays-release", relayOf(11)).empty());
    CHECK(findings("diode-delays-release", relayOf(10.9)).size() == 1);
}

TEST_CASE("five milliseconds more are allowed", "[checks][diode-delays-release][at-limit]") {
    const double limit_H = 5e-3 / added_s(1);
    CHECK(findings("diode-delays-release", relayOf(8, false, 0.999 * limit_H)).empty());
    CHECK(findings("diode-delays-release", relayOf(8, false, 1.001 * limit_H)).size() == 1);
}

TEST_CASE("resistor, and diode with zener, let go fast enough", "[checks][diode-delays-release][near-miss]") {
    for (const char* suppression : {"resistor", "zener"}) {
        Circuit circuit = relayOf(8);
        circuit.parts.at(PartId{"K1"}).choices["suppression"] = suppression;
        CHECK(findings("diode-delays-release", circuit).empty());
    }
}

TEST_CASE("a contact with a lamp behind it may open slowly", "[checks][diode-delays-release]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("hand-switch", "S1")
                                .part("relay", "K1", {{"breakInductive_A", 1}}, {{"suppression", "diode"}})
                                .part("lamp", "P1", {{"ratedPower_W", 60}})
                                .wire("G1.30", "S1.1")
                                .wire("S1.2", "K1.86")
                                .wire("K1.85", "G1.31")
                                .wire("G1.30", "K1.30")
                                .wire("K1.87", "P1.1")
                                .wire("P1.2", "G1.31")
                                .build();
    CHECK(findings("diode-delays-release", circuit).empty());
}

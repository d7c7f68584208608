#include "core/parts/part_kind.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The pump on a solid-state relay that the vacuum switch commands.
Circuit solidState() {
    CircuitBuilder builder = vanVacuumSide();
    return builder.part("supply", "G1")
        .part("fuse", "F1")
        .part("solid-state-relay", "K1")
        .part("ground", "X1")
        .part("ground", "X2")
        .part("ground", "X3")
        .wire("G1.31", "X1.31", 6e-6, 0.5)
        .wire("G1.30", "F1.1", 2.5e-6, 0.15)
        .wire("F1.2", "K1.1", 2.5e-6)
        .wire("K1.2", "M1.+", 2.5e-6)
        .wire("M1.-", "X2.31", 2.5e-6)
        .wire("F1.2", "B1.1")
        .wire("B1.2", "K1.A1")
        .wire("K1.A2", "X3.31")
        .build();
}

} // namespace

TEST_CASE("a motor on a semiconductor needs a diode across it", "[checks][motor-without-freewheel][raises]") {
    const Circuit circuit = solidState();
    const Finding finding = onlyFinding("motor-without-freewheel", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}, {"M1"}});
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    checkRemedy(circuit, finding);
    CHECK(findings("suppression-diode-reversed", afterRemedy(circuit, finding)).empty());
}

TEST_CASE("a motor on a mechanical contact gets by without", "[checks][motor-without-freewheel][near-miss]") {
    CHECK(findings("motor-without-freewheel", soundVan().build()).empty());
}

TEST_CASE("a diode that ends one terminal short of the motor frees nothing",
          "[checks][motor-without-freewheel][at-limit]") {
    const auto diodeTo = [](const char* cathode) {
        Circuit circuit = solidState();
        circuit.parts.emplace(PartId{"R1"}, newPart(*findPartKind("diode"), "R1", {}));
        Wire anode;
        anode.from = endOf("R1.A");
        anode.to = endOf("M1.-");
        Wire other;
        other.from = endOf("R1.K");
        other.to = endOf(cathode);
        circuit.wires.emplace(WireId{"d1"}, anode);
        circuit.wires.emplace(WireId{"d2"}, other);
        return circuit;
    };
    CHECK(findings("motor-without-freewheel", diodeTo("M1.+")).empty());
    CHECK(findings("motor-without-freewheel", diodeTo("K1.1")).size() == 1);
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The switched lamp with so many further lamps behind the switch.
Circuit lampsOn(int more) {
    CircuitBuilder builder = switchedLamp();
    for (int i = 0; i < more; ++i) {
        const std::string lamp = "P" + std::to_string(2 + i);
        const std::string ground = "X" + std::to_string(3 + i);
        builder.part("lamp", lamp).part("ground", ground).wire("S1.2", lamp + ".1", 0.75e-6);
        builder.wire(lamp + ".2", ground + ".31", 0.75e-6);
    }
    return builder.build();
}

} // namespace

TEST_CASE("a blade takes one crimp with two wires", "[checks][terminal-overfull][raises][at-limit]") {
    CHECK(findings("terminal-overfull", lampsOn(1)).empty());
    const Circuit circuit = lampsOn(2);
    const Finding finding = onlyFinding("terminal-overfull", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"S1"}});
    CHECK(finding.wires.size() == 3);
    CHECK(finding.value == Approx(3));
    CHECK(finding.limit == Approx(2));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("the thickest wire stays, and one wire carries what the others carry",
          "[checks][terminal-overfull]") {
    const Circuit circuit = lampsOn(3);
    const Circuit cured = afterRemedy(circuit, onlyFinding("terminal-overfull", circuit));
    CHECK(cured.wires.at(WireId{"w3"}).from == endOf("S1.2")); // 2.5 mm² to the first lamp
    std::set<double> joints_m2;
    for (const auto& [id, wire] : cured.wires) {
        if (wire.to == endOf("S1.2")) {
            joints_m2.insert(wire.area_m2);
        }
    }
    CHECK(joints_m2 == std::set<double>{2.5e-6}); // three of 0.75 mm²
    CHECK(findNets(cured).nets.size() == findNets(circuit).nets.size());
}

TEST_CASE("a splice takes six wires, a stud four", "[checks][terminal-overfull][near-miss]") {
    CircuitBuilder builder = CircuitBuilder().part("splice", "X1").part("ground", "X2");
    for (int i = 0; i < 4; ++i) {
        const std::string lamp = "P" + std::to_string(i);
        builder.part("lamp", lamp).wire("X1.1", lamp + ".1").wire(lamp + ".2", "X2.31");
    }
    CHECK(findings("terminal-overfull", builder.build()).empty());
}

TEST_CASE("more wires than a splice takes are left to the builder", "[checks][terminal-overfull]") {
    const Finding finding = onlyFinding("terminal-overfull", lampsOn(7));
    for (const Remedy& remedy : finding.remedies) {
        CHECK_FALSE(remedy.edit.has_value());
    }
}

TEST_CASE("sound circuits have no terminal with too many wires", "[checks][terminal-overfull]") {
    CHECK(findings("terminal-overfull", soundVan().build()).empty());
    CHECK(findings("terminal-overfull", switchedLamp().build()).empty());
}

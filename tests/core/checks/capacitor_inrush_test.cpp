#include "tests/core/checks/run_rule.h"

#include <cmath>

using namespace pumpwright;

namespace {

/// A capacitor across the relay's coil, which the vacuum switch feeds; wires and fuse have next to no
/// resistance, the switch and the battery 1 mΩ each.
Circuit acrossCoil(double esr_ohm, double make_A, double capacitance_F = 470e-6) {
    CircuitBuilder builder = soundVan({});
    Circuit circuit =
        builder.part("capacitor", "C1", {{"esr_ohm", esr_ohm}, {"capacitance_F", capacitance_F}})
            .wire("C1.+", "K1.86")
            .wire("C1.-", "K1.85")
            .build();
    circuit.parts.at(PartId{"B1"}).values["make_A"] = make_A;
    circuit.parts.at(PartId{"B1"}).values["contactResistance_ohm"] = 1e-3;
    circuit.parts.at(PartId{"G1"}).values["internalResistance_ohm"] = 1e-3;
    circuit.parts.at(PartId{"F1"}).values["rating_A"] = 80;
    for (auto& [id, wire] : circuit.wires) {
        wire.area_m2 = 1e-3;
    }
    return circuit;
}

} // namespace

TEST_CASE("a capacitor alone across a coil shorts the small switch for a moment",
          "[checks][capacitor-inrush][raises]") {
    const Circuit circuit = acrossCoil(0.2, 10);
    const Finding finding = onlyFinding("capacitor-inrush", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"B1"}, {"C1"}});
    CHECK(finding.value > 40);
    CHECK(finding.value < 12.65 / 0.2);
    CHECK(finding.limit == Approx(10));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("a contact may make the charge of a capacitor up to its rating",
          "[checks][capacitor-inrush][near-miss][at-limit]") {
    // I = V/(ESR + the rest): physics. 2 Ω leave about 6.3 A; the mean over 50 µs is 2.6 % less with 2 Ω·470
    // µF.
    const double inrush_A = onlyFinding("capacitor-inrush", acrossCoil(2, 0.1)).value;
    const double peak_A = 12.65 / 2.003;
    CHECK(inrush_A == Approx(peak_A * (1 - 50e-6 / (2 * 2 * 470e-6))).epsilon(0.005));
    CHECK(findings("capacitor-inrush", acrossCoil(2, 1.001 * inrush_A)).empty());
    CHECK(onlyFinding("capacitor-inrush", acrossCoil(2, 0.999 * inrush_A)).word == SignalWord::Caution);
}

TEST_CASE("a capacitor that is full in a moment melts nothing", "[checks][capacitor-inrush][near-miss]") {
    // 100 nF hold 1.3 µC at 12.65 V: 25 mA over 50 µs.
    CHECK(findings("capacitor-inrush", acrossCoil(0.2, 1, 100e-9)).empty());
}

TEST_CASE("the resistor of the remedy keeps the charge below the rating", "[checks][capacitor-inrush]") {
    const Circuit circuit = acrossCoil(0.2, 10);
    const Circuit cured = afterRemedy(circuit, onlyFinding("capacitor-inrush", circuit));
    bool found = false;
    for (const auto& [id, part] : cured.parts) {
        if (part.kind == "resistor") {
            found = true;
            CHECK(part.values.at("resistance_ohm") == Approx(2.2)); // 12.65 V/8 A less what is there
        }
    }
    CHECK(found);
}

TEST_CASE("what a capacitor does to a contact in the drive is told once", "[checks][capacitor-inrush]") {
    const Circuit circuit = acrossCoil(0.2, 10);
    const DriveResult drive =
        RecordingBuilder(10)
            .part("B1", probe::kContact, {{0, 0}, {2, 1}})
            .part("B1", probe::kContactCurrent, {{0, 0}, {2, 0}, {2, 55}, {2.0005, 0.2}, {10, 0.2}})
            .drive();
    CHECK(findings("contact-making-current", circuit, &drive).empty());
    CHECK(findings("capacitor-inrush", circuit, &drive).size() == 1);
}

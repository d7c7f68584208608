#include "core/parts/conductor.h"
#include "core/parts/part_kind.h"
#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// w1…w4 of 1 mm², together long enough to lose this share of 12.0 V at 5 A by the nameplates.
Circuit losing(double share, double supply_V) {
    constexpr double kArea_m2 = 1e-6;
    const ProjectLimits limits;
    const double perMetre_V = 5 * copperResistivity_ohmm(limits.ambient_K) / kArea_m2;
    const double strap_V = 5 * copperResistivity_ohmm(limits.ambient_K) * 0.5 / 6e-6;
    const double length_m = (share * supply_V - strap_V) / perMetre_V - 0.1;
    return switchedLamp({{"ratedPower_W", 60}}, {{"make_A", 100}}, {{"rating_A", 10}}, kArea_m2, length_m / 3)
        .build();
}

double supplyVoltage_V() {
    const Circuit circuit = switchedLamp().build();
    return kindOf(circuit.parts.at(PartId{"G1"})).features(circuit.parts.at(PartId{"G1"})).source->emf_V;
}

} // namespace

TEST_CASE("by the nameplates, feed and return may lose the project's share",
          "[checks][voltage-drop][raises][near-miss][at-limit]") {
    // ABYC E-11: 10 % for circuits that are not critical.
    const double supply_V = supplyVoltage_V();
    CHECK(findings("voltage-drop", losing(0.0999, supply_V)).empty());
    const Finding finding = onlyFinding("voltage-drop", losing(0.1001, supply_V));
    CHECK(finding.parts == std::vector<PartId>{{"P1"}});
    CHECK(finding.wires.size() == 5);
    CHECK(finding.value == Approx(0.1001));
    CHECK(finding.limit == Approx(0.10));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
}

TEST_CASE("the loss in 14 AWG at 5.5 A over a loop of 6 m is 0.273 V", "[checks][voltage-drop]") {
    // 20.0 °C, 2.081 mm², by R = ρl/A with ρ = 1.7241e-8 Ω·m of IEC 60028, value from memory.
    ProjectLimits limits;
    limits.ambient_K = 293.15;
    limits.voltageDropShare = 0.02;
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("pump", "M1", {{"runningCurrent_A", 5.5}})
                                .wire("G1.30", "M1.+", 2.081e-6, 3)
                                .wire("M1.-", "G1.31", 2.081e-6, 3)
                                .limits(limits)
                                .build();
    CHECK(onlyFinding("voltage-drop", circuit).value * supplyVoltage_V() == Approx(0.273).epsilon(0.005));
}

TEST_CASE("electronics and coils are not judged by a share", "[checks][voltage-drop]") {
    const auto behindLongWire = [](const char* kind, const char* plus, const char* minus) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part(kind, "Y1", {{"current_A", 1}, {"coilResistance_ohm", 12}})
            .wire("G1.30", std::string("Y1.") + plus, 0.5e-6, 60)
            .wire(std::string("Y1.") + minus, "G1.31")
            .build();
    };
    CHECK(findings("voltage-drop", behindLongWire("buzzer", "+", "-")).empty());
    CHECK(findings("voltage-drop", behindLongWire("relay", "86", "85")).empty());
}

TEST_CASE("the project sets its own share", "[checks][voltage-drop]") {
    Circuit circuit = losing(0.05, supplyVoltage_V());
    CHECK(findings("voltage-drop", circuit).empty());
    circuit.limits.voltageDropShare = 0.03;
    CHECK(findings("voltage-drop", circuit).size() == 1);
}

TEST_CASE("in the drive the terminal voltages while the load runs decide", "[checks][voltage-drop]") {
    const Circuit circuit = switchedLamp().build();
    const auto runningOn = [](double lamp_V) {
        return RecordingBuilder(20)
            .part("P1", probe::kCurrent, {{0, 0}, {4, 0}, {4, 60}, {4.2, 5}, {14, 5}, {14, 0}, {20, 0}})
            .terminal("G1.30", {{0, 12}, {20, 12}})
            .terminal("G1.31", {{0, 0}, {20, 0}})
            .terminal("P1.1",
                      {{0, 0}, {4, 0}, {4, 6}, {4.2, lamp_V + 0.5}, {14, lamp_V + 0.5}, {14, 0}, {20, 0}})
            .terminal("P1.2", {{0, 0.5}, {20, 0.5}})
            .drive();
    };
    const DriveResult at = runningOn(10.81);
    CHECK(findings("voltage-drop", circuit, &at).empty());
    const DriveResult below = runningOn(10.79);
    const Finding finding = onlyFinding("voltage-drop", circuit, &below);
    CHECK(finding.value == Approx(1.21 / 12).epsilon(1e-4));
    CHECK(finding.what.english().find("in the drive") != std::string::npos);
}

TEST_CASE("the pause between two runs is no loss", "[checks][voltage-drop]") {
    const DriveResult drive =
        RecordingBuilder(20)
            .part("P1", probe::kCurrent,
                  {{0, 5}, {5, 5}, {5, 0}, {5.4, 0}, {5.4, 5}, {8, 5}, {8, 0}, {20, 0}})
            .terminal("G1.30", {{0, 12}, {20, 12}})
            .terminal("G1.31", {{0, 0}, {20, 0}})
            .terminal("P1.1", {{0, 11}, {5, 11}, {5, 0}, {5.4, 0}, {5.4, 11}, {8, 11}, {8, 0}, {20, 0}})
            .terminal("P1.2", {{0, 0}, {20, 0}})
            .drive();
    CHECK(findings("voltage-drop", switchedLamp().build(), &drive).empty());
}

TEST_CASE("the remedy lays wires that lose less", "[checks][voltage-drop]") {
    const Circuit circuit = losing(0.2, supplyVoltage_V());
    const Finding finding = onlyFinding("voltage-drop", circuit);
    checkRemedy(circuit, finding);
}

TEST_CASE("where contacts lose too much, larger wires are not offered", "[checks][voltage-drop]") {
    const Circuit circuit = switchedLamp().build();
    const DriveResult drive = RecordingBuilder(20)
                                  .part("P1", probe::kCurrent, {{0, 5}, {20, 5}})
                                  .terminal("G1.30", {{0, 12}, {20, 12}})
                                  .terminal("G1.31", {{0, 0}, {20, 0}})
                                  .terminal("P1.1", {{0, 6}, {20, 6}})
                                  .terminal("P1.2", {{0, 0}, {20, 0}})
                                  .drive();
    for (const Remedy& remedy : onlyFinding("voltage-drop", circuit, &drive).remedies) {
        CHECK_FALSE(remedy.edit.has_value());
    }
}

TEST_CASE("a sound circuit loses little on its wires", "[checks][voltage-drop]") {
    CHECK(findings("voltage-drop", soundVan().build()).empty());
}

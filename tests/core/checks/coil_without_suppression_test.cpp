#include "tests/core/checks/run_rule.h"

#include <cmath>

using namespace pumpwright;

namespace {

/// K1 drops out at 5 s; its coil voltage then swings to minus `spike_V`.
DriveResult switchedOff(double spike_V) {
    return RecordingBuilder(10)
        .part("K1", probe::kEnergised, {{0, 0}, {1, 1}, {5, 0}})
        .part("K1", probe::kCoilVoltage,
              {{0, 0}, {1, 0}, {1, 12}, {5, 12}, {5, -spike_V}, {5.001, 0}, {10, 0}})
        .drive();
}

} // namespace

TEST_CASE("a coil with nothing across it makes a spike as far as the gap stands it",
          "[checks][coil-without-suppression][raises]") {
    const Circuit circuit = soundVan({}).build();
    const Finding finding = onlyFinding("coil-without-suppression", circuit);
    CHECK(finding.word == SignalWord::Caution);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    // A gap stands no less than about 327 V, the Paschen minimum in air, value from memory of textbooks; this
    // one 330 V. I·√(L/C) would be above 3 kV.
    CHECK(finding.value == Approx(330));
    CHECK(finding.limit == Approx(100));
    CHECK(finding.what.english().find("opening gap") != std::string::npos);
    CHECK(finding.what.english().find("across the contact 1–2 of B1, which stands 330 V") !=
          std::string::npos);
    checkComplete(finding);
    REQUIRE(finding.remedies.size() == 2);
    checkRemedy(circuit, finding, 0);
    checkRemedy(circuit, finding, 1);
}

TEST_CASE("with much stray capacitance the closed form gives the spike",
          "[checks][coil-without-suppression]") {
    Circuit circuit = soundVan({}).build();
    Part& relay = circuit.parts.at(PartId{"K1"});
    relay.values["strayCapacitance_F"] = 200e-9;
    const Finding finding = onlyFinding("coil-without-suppression", circuit);
    // I·√(L/C) with about 12.7 V on 90 Ω and 0.7 H: about 264 V.
    CHECK(finding.value == Approx(264).epsilon(0.02));
    relay.values["strayCapacitance_F"] = 1.5e-6; // about 96 V: no more than equipment stands anyway
    CHECK(findings("coil-without-suppression", circuit).empty());
}

TEST_CASE("the drive's own spike counts where the coil was switched off in it",
          "[checks][coil-without-suppression][at-limit]") {
    const Circuit circuit = soundVan({}).build();
    const DriveResult above = switchedOff(101);
    const Finding finding = onlyFinding("coil-without-suppression", circuit, &above);
    CHECK(finding.value == Approx(101));
    CHECK(finding.limit == Approx(100));
    REQUIRE(finding.at_s.has_value());
    CHECK(*finding.at_s == Approx(5));
    CHECK(finding.what.english().find("in the drive") != std::string::npos);
    const DriveResult at = switchedOff(100);
    CHECK(findings("coil-without-suppression", circuit, &at).empty());
    const DriveResult below = switchedOff(99);
    CHECK(findings("coil-without-suppression", circuit, &below).empty());
}

TEST_CASE("a drive in which the coil stays on says nothing about its spike",
          "[checks][coil-without-suppression]") {
    const DriveResult drive = RecordingBuilder(10)
                                  .part("K1", probe::kEnergised, {{0, 1}})
                                  .part("K1", probe::kCoilVoltage, {{0, 12}, {10, 12}})
                                  .drive();
    CHECK(onlyFinding("coil-without-suppression", soundVan({}).build(), &drive).value == Approx(330));
}

TEST_CASE("diode, resistor or capacitor across the coil suppress it",
          "[checks][coil-without-suppression][near-miss]") {
    const auto with = [](const char* kind, const char* one, const char* other) {
        CircuitBuilder builder = soundVan({});
        return builder.part(kind, "Y1")
            .wire(std::string("Y1.") + one, "K1.86")
            .wire(std::string("Y1.") + other, "K1.85")
            .build();
    };
    CHECK(findings("coil-without-suppression", with("diode", "K", "A")).empty());
    CHECK(findings("coil-without-suppression", with("zener", "K", "A")).empty());
    CHECK(findings("coil-without-suppression", with("resistor", "1", "2")).empty());
    CHECK(findings("coil-without-suppression", with("capacitor", "+", "-")).empty());
    CHECK(findings("coil-without-suppression", with("buzzer", "+", "-")).size() == 1);
}

TEST_CASE("a diode with a zener in a row suppresses, one that ends elsewhere does not",
          "[checks][coil-without-suppression]") {
    const auto row = [](const char* end) {
        CircuitBuilder builder = soundVan({});
        return builder.part("diode", "R1")
            .part("zener", "R2")
            .wire("R1.A", "K1.85")
            .wire("R1.K", "R2.A")
            .wire("R2.K", end)
            .build();
    };
    CHECK(findings("coil-without-suppression", row("K1.86")).empty());
    CHECK(findings("coil-without-suppression", row("F1.2")).size() == 1);
}

TEST_CASE("built-in suppression of any sort is enough", "[checks][coil-without-suppression]") {
    for (const char* sort : {"diode", "resistor", "zener"}) {
        CHECK(findings("coil-without-suppression", soundVan({{"suppression", sort}}).build()).empty());
    }
}

TEST_CASE("a relay that is not wired is no case for suppression", "[checks][coil-without-suppression]") {
    CHECK(findings("coil-without-suppression", CircuitBuilder().part("relay", "K1").build()).empty());
}

TEST_CASE("with plus on 85 the remedy is a diode outside, the other way round",
          "[checks][coil-without-suppression]") {
    Circuit circuit = soundVan({}).build();
    for (auto& [id, wire] : circuit.wires) {
        for (End* end : {&wire.from, &wire.to}) {
            if (end->part == PartId{"K1"} && (end->terminal == "85" || end->terminal == "86")) {
                end->terminal = end->terminal == "85" ? "86" : "85";
            }
        }
    }
    const Finding finding = onlyFinding("coil-without-suppression", circuit);
    REQUIRE(finding.remedies.size() == 1);
    CHECK(finding.remedies[0].text.english().find("cathode to K1.85") != std::string::npos);
    checkRemedy(circuit, finding);
    CHECK(findings("suppression-diode-reversed", afterRemedy(circuit, finding)).empty());
}

TEST_CASE("a semiconductor's breakdown voltage is the limit of the spike that it has to stand",
          "[checks][coil-without-suppression][at-limit]") {
    // The relay's coil on a solid-state output that breaks down at 60 V; 12.65 V on 90 Ω and 0.7 H.
    const auto onOutput = [](double spike_V) {
        CircuitBuilder builder = vanVacuumSide();
        addPumpFeed(builder);
        const double capacitance_F = 0.7 * std::pow(12.65 / 90 / spike_V, 2);
        Circuit circuit = builder.part("solid-state-relay", "K2")
                              .wire("F1.2", "K2.1")
                              .wire("K2.2", "K1.86")
                              .wire("F1.2", "B1.1")
                              .wire("B1.2", "K2.A1")
                              .wire("K2.A2", "X3.31")
                              .build();
        circuit.parts.at(PartId{"K1"}).values["strayCapacitance_F"] = capacitance_F;
        return circuit;
    };
    CHECK(findings("coil-without-suppression", onOutput(0.995 * (60 - 12.65))).empty());
    const Circuit circuit = onOutput(1.005 * (60 - 12.65));
    const Finding finding = onlyFinding("coil-without-suppression", circuit);
    CHECK(finding.value == Approx(1.005 * (60 - 12.65)).epsilon(0.001));
    CHECK(finding.limit == Approx(60 - 12.65).epsilon(0.001));
    CHECK(finding.what.english().find("the output 1–2 of K2, which stands 60 V") != std::string::npos);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

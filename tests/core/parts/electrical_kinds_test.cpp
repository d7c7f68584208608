#include "core/parts/conductor.h"
#include "core/parts/kinds.h"
#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

#include <cmath>

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

Part partWith(const PartKind& kind, std::map<std::string, double> values,
              std::map<std::string, std::string> choices = {}) {
    Part part = newPart(kind, "X1", {});
    part.values = std::move(values);
    part.choices = std::move(choices);
    return part;
}

} // namespace

TEST_CASE("a supply delivers what its internal resistance lets through", "[parts][supply]") {
    LawBench bench(supplyKind(), partWith(supplyKind(), {{"internalResistance_ohm", 0.01}}));
    bench.voltage("30") = 12.55; // 0.1 V below the full battery's 12.65 V
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(10.0, 1e-9));
    CHECK_THAT(bench.currentInto("30"), WithinRel(-10.0, 1e-9));
    CHECK_THAT(bench.equations().f(bench.own("state of charge")), WithinRel(-10.0, 1e-9));
}

TEST_CASE("a charging source regulates its voltage, keeps to its limit and never takes current",
          "[parts][supply]") {
    DrivePlan plan;
    plan.charging = {{1, 2}};
    const Part part = partWith(supplyKind(), {}, {{"charging", "converter"}});
    LawBench bench(supplyKind(), part, plan);
    const Unknown charging = bench.own("charging current");
    // What the source's current goes to at this voltage: where its row is at rest.
    const auto askedAt = [&](double voltage_V) {
        bench.voltage("30") = voltage_V;
        bench.x(charging) = 0;
        return bench.equations().f(charging);
    };
    CHECK(askedAt(12.65) == 0);
    bench.runTo(1);
    CHECK_THAT(askedAt(12.65), WithinAbs(40, 1e-6)); // 1.35 V over 0.01 ohm would be 135 A
    CHECK_THAT(askedAt(13.9), WithinAbs(10, 1e-6));
    CHECK_THAT(askedAt(15), WithinAbs(0, 1e-6));
    bench.voltage("30") = 12.65; // no current of the battery's own
    bench.x(charging) = 12;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinAbs(12, 1e-9));
    CHECK_THAT(bench.currentInto("30"), WithinAbs(-12, 1e-9));
    bench.runTo(2);
    CHECK(askedAt(12.65) == 0);
}

TEST_CASE("a supply without a charging source ignores the plan's charging", "[parts][supply]") {
    DrivePlan plan;
    plan.charging = {{0, 2}};
    LawBench bench(supplyKind(), newPart(supplyKind(), "G1", {}), plan);
    CHECK(bench.settle().empty());
}

TEST_CASE("a hand switch does what the plan says of it, and of it only", "[parts][hand-switch]") {
    DrivePlan plan;
    plan.switchMoves = {{1, {"p1"}, true}, {2, {"other"}, false}, {3, {"p1"}, false}};
    LawBench bench(handSwitchKind(), newPart(handSwitchKind(), "S1", {}), plan);
    bench.settle();
    CHECK(bench.probe(probe::kContact) == 0);
    bench.runTo(1);
    CHECK(bench.probe(probe::kContact) == 1);
    bench.runTo(2.5);
    CHECK(bench.probe(probe::kContact) == 1);
    bench.runTo(3);
    CHECK(bench.probe(probe::kContact) == 0);
}

TEST_CASE("a hand switch that is on at the start conducts without a move", "[parts][hand-switch]") {
    LawBench bench(handSwitchKind(), partWith(handSwitchKind(), {}, {{"atStart", "on"}}));
    CHECK(bench.settle().empty());
    bench.voltage("1") = 0.01;
    CHECK_THAT(bench.probe(probe::kContactCurrent), WithinRel(1.0, 1e-9));
    CHECK(handSwitchKind()
              .features(partWith(handSwitchKind(), {}, {{"atStart", "on"}}))
              .contacts[0]
              .closedAtRest);
}

TEST_CASE("a pedal switch closes at its force and opens a little below", "[parts][pedal-switch]") {
    DrivePlan plan;
    plan.presses = {{0, 10, 100, 1}}; // 100 N/s
    LawBench bench(pedalSwitchKind(), newPart(pedalSwitchKind(), "S1", {}), plan);
    bench.time_s = 0.149;
    CHECK(bench.settle().empty());
    bench.time_s = 0.151;
    CHECK(bench.settle() == std::vector<std::string>{"contacts close"});
    bench.time_s = 10.86; // 14 N, above 90 % of 15 N
    CHECK(bench.settle().empty());
    bench.time_s = 10.87;
    CHECK(bench.settle() == std::vector<std::string>{"contacts open"});
}

TEST_CASE("an open contact leaks next to nothing up to its breakdown and holds the voltage there",
          "[parts][contact]") {
    LawBench bench(handSwitchKind(), newPart(handSwitchKind(), "S1", {}));
    for (const double sign : {1.0, -1.0}) {
        bench.voltage("1") = sign * 300;
        CHECK(std::abs(bench.currentInto("1")) < 1e-6);
        bench.voltage("1") = sign * 340;
        CHECK_THAT(bench.currentInto("1"), WithinAbs(sign * 10, 0.01));
    }
}

TEST_CASE("a gap below the Paschen minimum is not accepted", "[parts][contact]") {
    for (const ParameterSpec& spec : handSwitchKind().parameters()) {
        if (spec.key == "gapBreakdown_V") {
            CHECK(spec.low >= 327);
        }
    }
}

TEST_CASE("a warm winding has more resistance, and its pull-in current stays", "[parts][relay]") {
    // 90 ohm at 105 °C and 7.2 V pull-in at 85 °C: from the temperature coefficient of copper, 0.00393/K at
    // 20 °C (IEC 60028, value from memory).
    DrivePlan hot;
    hot.ambient_K = 378.15;
    LawBench bench(relayKind(), newPart(relayKind(), "K1", {}), hot);
    bench.voltage("86") = 12;
    bench.x(bench.own("coil current")) = 12 / 120.07;
    CHECK_THAT(bench.equations().f(bench.own("coil current")), WithinAbs(0, 12 * 5e-4));
    CHECK_THAT(7.2 * copperWarmShare(358.15), WithinRel(9.04, 5e-3));
}

TEST_CASE("each suppression conducts only where it should", "[parts][relay]") {
    const auto besideWinding = [](const std::string& choice, double coil_V) {
        LawBench bench(relayKind(), partWith(relayKind(), {}, {{"suppression", choice}}));
        bench.voltage("86") = coil_V;
        bench.x(bench.own("voltage of the winding's capacitance")) = coil_V;
        return bench.currentInto("86");
    };
    const auto throughSuppression = [&](const std::string& choice, double coil_V) {
        return besideWinding(choice, coil_V) - besideWinding("none", coil_V);
    };
    // what is left without suppression is the loss of the iron: a fifth of the winding's √(C/L)
    CHECK_THAT(besideWinding("none", 12), WithinRel(12 * std::sqrt(1e-9 / 0.7) / 5, 1e-6));
    CHECK_THAT(throughSuppression("diode", 12), WithinAbs(0, 1e-6));
    CHECK(throughSuppression("diode", -1) < -0.5);
    CHECK_THAT(throughSuppression("resistor", 12), WithinRel(12.0 / 680, 1e-9));
    CHECK_THAT(throughSuppression("resistor", -12), WithinRel(-12.0 / 680, 1e-9));
    CHECK_THAT(throughSuppression("zener", 300), WithinAbs(0, 1e-9));
    CHECK_THAT(throughSuppression("zener", -23), WithinAbs(0, 1e-6));
    CHECK_THAT(throughSuppression("zener", -24.7), WithinRel(-0.05, 1e-6));
}

TEST_CASE("a changeover relay has a break contact that is closed at rest", "[parts][relay]") {
    const Part part = partWith(relayKind(), {}, {{"contacts", "changeover"}});
    LawBench bench(relayKind(), part);
    bench.settle();
    CHECK(bench.probe("contact 30-87a") == 1);
    CHECK(bench.probe(probe::kContact) == 0);
    bench.x(bench.own("coil current")) = 0.13;
    bench.settle();
    CHECK(bench.probe("contact 30-87a") == 0);
    CHECK(bench.probe(probe::kContact) == 0);
    bench.runTo(0.0041);
    CHECK(bench.probe(probe::kContact) == 1);
    const Features features = relayKind().features(part);
    REQUIRE(features.contacts.size() == 2);
    CHECK(features.contacts[1].closedAtRest);
}

TEST_CASE("a solid-state relay switches at its thresholds and keeps its state between them", "[parts][ssr]") {
    LawBench bench(solidStateRelayKind(), newPart(solidStateRelayKind(), "K1", {}));
    bench.voltage("A1") = 2.99;
    CHECK(bench.settle().empty());
    bench.voltage("A1") = 3;
    CHECK(bench.settle() == std::vector<std::string>{"output conducts"});
    bench.voltage("A1") = 1.01;
    CHECK(bench.settle().empty());
    bench.voltage("A1") = 1;
    CHECK(bench.settle() == std::vector<std::string>{"output blocks"});
}

TEST_CASE("a solid-state relay's input takes a nearly constant current, and none backwards", "[parts][ssr]") {
    LawBench bench(solidStateRelayKind(), newPart(solidStateRelayKind(), "K1", {}));
    for (const double input_V : {2.0, 5.0, 12.0, 32.0}) {
        bench.voltage("A1") = input_V;
        CHECK_THAT(bench.currentInto("A1"), WithinRel(0.010, 0.011));
    }
    bench.voltage("A1") = -12;
    CHECK(std::abs(bench.currentInto("A1")) < 1e-6);
}

TEST_CASE("a blocking solid-state relay leaks, conducts backwards and avalanches", "[parts][ssr]") {
    LawBench bench(solidStateRelayKind(), newPart(solidStateRelayKind(), "K1", {}));
    bench.voltage("1") = 12;
    CHECK_THAT(bench.currentInto("1"), WithinRel(1e-4, 0.02)); // and the body diode's own 2 µA
    bench.voltage("1") = -1;
    CHECK(bench.currentInto("1") < -30);
    bench.voltage("1") = 61;
    CHECK(bench.currentInto("1") > 1);
}

TEST_CASE("a conducting solid-state relay warms up to junction to surroundings times its loss",
          "[parts][ssr]") {
    // 5.5 A, 10 mOhm, 10 K/W, 60 °C: 0.3025 W and 63.0 °C, by arithmetic, with an on-resistance that does not
    // rise.
    DrivePlan plan;
    plan.ambient_K = 333.15;
    const double warm = 1 + 0.007 * 500 * std::tanh((336.2 - 298.15) / 500);
    LawBench bench(solidStateRelayKind(),
                   partWith(solidStateRelayKind(), {{"onResistance_ohm", 0.010 / warm}}), plan);
    bench.voltage("A1") = 12;
    bench.settle();
    bench.voltage("1") = 5.5 * 0.010;
    bench.x(bench.own("junction temperature")) = 333.15 + 3.025;
    CHECK_THAT(bench.probe(probe::kContactCurrent), WithinRel(5.5, 1e-3));
    CHECK_THAT(bench.equations().f(bench.own("junction temperature")), WithinAbs(0, 0.001));
}

TEST_CASE("a diode drops its stated voltage at its rated current", "[parts][diode]") {
    LawBench bench(diodeKind(), newPart(diodeKind(), "R1", {}));
    bench.voltage("A") = 0.9;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(3.0, 1e-6));
    bench.voltage("A") = -100;
    CHECK(std::abs(bench.probe(probe::kCurrent)) < 1e-5);
}

TEST_CASE("a Zener diode holds its voltage at a quarter of its rated power", "[parts][zener]") {
    LawBench bench(zenerKind(), newPart(zenerKind(), "R1", {}));
    bench.voltage("K") = 24;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(-5.0 / (4 * 24), 1e-6));
}

TEST_CASE("a Zener diode counts as a way for the supply's current only below the supply's voltage",
          "[parts][zener]") {
    CHECK(zenerKind().features(partWith(zenerKind(), {{"zenerVoltage_V", 24}})).paths.size() == 1);
    CHECK(zenerKind().features(partWith(zenerKind(), {{"zenerVoltage_V", 12}})).paths.size() == 2);
}

TEST_CASE("a capacitor's current is what its series resistance lets through", "[parts][capacitor]") {
    LawBench bench(capacitorKind(), newPart(capacitorKind(), "C1", {}));
    bench.voltage("+") = 12;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(60.0, 1e-9)); // 12 V over 0.2 ohm
    bench.x(bench.own("stored voltage")) = 12;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinAbs(0, 1e-9));
    CHECK_THAT(bench.masses().at(bench.own("stored voltage"), bench.own("stored voltage")),
               WithinRel(470e-6, 1e-12));
}

TEST_CASE("a filament glows at its rated power and takes ten to fifteen times its current when cold",
          "[parts][lamp]") {
    // Multiples of 10 to 15 at switch-on: common practice, as load tables of relay and switch makers print
    // them.
    LawBench bench(lampKind(), newPart(lampKind(), "P1", {}));
    bench.voltage("1") = 12;
    const double cold_A = bench.probe(probe::kCurrent);
    const double rated_A = 5.0 / 12;
    CHECK(cold_A > 10 * rated_A);
    CHECK(cold_A < 15 * rated_A);
    CHECK(bench.probe(probe::kEnergised) == 0);
    const Unknown filament = bench.own("filament temperature");
    bench.x(filament) = 2500;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(rated_A, 1e-6));
    CHECK_THAT(bench.equations().f(filament), WithinAbs(0, 0.005));
    CHECK(bench.probe(probe::kEnergised) == 1);
    CHECK_THAT(lampKind().features(newPart(lampKind(), "P1", {})).loads[0].inrush_A, WithinRel(cold_A, 0.1));
}

TEST_CASE("an LED lamp is dark at a few volts and takes a constant current around its rating",
          "[parts][lamp]") {
    LawBench bench(lampKind(), partWith(lampKind(), {{"ratedPower_W", 1.2}}, {{"sort", "led"}}));
    bench.voltage("1") = 3;
    CHECK(bench.probe(probe::kEnergised) == 0);
    for (const double supply_V : {11.0, 12.0, 14.4}) {
        bench.voltage("1") = supply_V;
        CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(0.1, 0.01));
        CHECK(bench.probe(probe::kEnergised) == 1);
    }
    bench.voltage("1") = -12;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(-0.1, 0.01));
}

TEST_CASE("a buzzer sounds from its minimum voltage on, and not backwards", "[parts][buzzer]") {
    LawBench bench(buzzerKind(), newPart(buzzerKind(), "P1", {}));
    bench.voltage("+") = 2.99;
    CHECK(bench.probe(probe::kEnergised) == 0);
    bench.voltage("+") = 12;
    CHECK(bench.probe(probe::kEnergised) == 1);
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(0.02, 0.02));
    bench.voltage("+") = -12;
    CHECK(bench.probe(probe::kEnergised) == 0);
    CHECK(std::abs(bench.probe(probe::kCurrent)) < 1e-6);
}

TEST_CASE("a connector has two terminals and one path for each way", "[parts][connector]") {
    for (const std::string ways : {"1", "2", "3", "4", "6"}) {
        const Part part = partWith(connectorKind(), {}, {{"ways", ways}});
        const auto count = static_cast<std::size_t>(ways[0] - '0');
        CHECK(connectorKind().terminals(part).size() == 2 * count);
        CHECK(connectorKind().features(part).paths.size() == count);
        CHECK(connectorKind().features(part).contacts.size() == count);
    }
}

TEST_CASE("a ground point's current goes into the body", "[parts][ground]") {
    LawBench bench(groundKind(), newPart(groundKind(), "X1", {}));
    bench.voltage("31") = 0.02;
    CHECK_THAT(bench.currentInto("31"), WithinRel(10.0, 1e-9));
}

TEST_CASE("a fuse counts its way to opening, then blocks and stays open", "[parts][fuse]") {
    LawBench bench(fuseKind(), newPart(fuseKind(), "F1", {})); // 15 A, 4.8 mOhm
    const Unknown share = bench.own("share of the way to opening");
    bench.voltage("1") = 0.0048 * 15 * 1.09;
    CHECK(bench.equations().f(share) == 0);
    bench.voltage("1") = 0.0048 * 15 * 2;
    // Type C at 200 %: 0.15 to 5 s, and the middle of the band is their geometric mean.
    CHECK_THAT(bench.equations().f(share), WithinRel(1 / std::sqrt(0.15 * 5), 1e-6));
    bench.voltage("1") = -0.0048 * 15 * 2;
    CHECK_THAT(bench.equations().f(share), WithinRel(1 / std::sqrt(0.15 * 5), 1e-6));
    bench.x(share) = 0.999;
    CHECK(bench.settle().empty());
    bench.x(share) = 1;
    CHECK(bench.settle() == std::vector<std::string>{"fuse opens"});
    bench.voltage("1") = 12;
    CHECK(std::abs(bench.probe(probe::kCurrent)) < 1e-6);
    CHECK(bench.probe(probe::kOpenShare) == 1);
    CHECK(bench.equations().f(share) == 0);
}

TEST_CASE("a wire's resistance is that of copper at its temperature", "[parts][wire]") {
    Wire wire;
    wire.area_m2 = 2.5e-6;
    wire.length_m = 10;
    LawBench bench(wire);
    bench.voltage("from") = 1;
    // 1.7241e-8 ohm·m over 2.5 mm² and 10 m, and the 10 µohm of its crimps.
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(1 / (0.0689640 + 1e-5), 1e-6));
    bench.x(bench.own("conductor temperature")) = 293.15 + 85;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(1 / (0.0689640 * 1.33405 + 1e-5), 1e-4));
}

TEST_CASE("a wire of no length still has the resistance of its crimps", "[parts][wire]") {
    Wire wire;
    wire.length_m = 0;
    LawBench bench(wire);
    bench.voltage("from") = 1e-5;
    CHECK_THAT(bench.probe(probe::kCurrent), WithinRel(1.0, 1e-9));
}

TEST_CASE("a bundled wire gets rid of less heat", "[parts][wire]") {
    Wire wire;
    LawBench alone(wire);
    wire.bundled = 3;
    LawBench bundled(wire);
    const Unknown temperature = alone.own("conductor temperature");
    alone.x(temperature) += 10;
    bundled.x(temperature) += 10;
    CHECK_THAT(bundled.equations().f(temperature), WithinRel(0.49 * alone.equations().f(temperature), 1e-9));
}

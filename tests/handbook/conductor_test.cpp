#include "core/circuit/circuit.h"
#include "core/parts/conductor.h"
#include "core/units/constants.h"
#include "core/units/wire_size.h"
#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

#include <cmath>
#include <numbers>

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

double diameter_mm(int gauge) {
    return 1e3 * std::sqrt(4 * awgArea_m2(gauge) / std::numbers::pi);
}

double resistance_ohmPerKm(int gauge, double temperature_K) {
    return 1e3 * copperResistivity_ohmm(temperature_K) / awgArea_m2(gauge);
}

} // namespace

TEST_CASE("American wire gauge: diameters and areas", "[handbook][conductor]") {
    // ASTM B258: 36 AWG 0.127 mm and 4/0 AWG 11.684 mm are exact; the formula gives 10 AWG.
    CHECK_THAT(diameter_mm(36), WithinRel(0.127, 1e-4));
    CHECK_THAT(diameter_mm(-3), WithinRel(11.684, 1e-4));
    CHECK_THAT(diameter_mm(10), WithinRel(2.588, 5e-4));
    CHECK_THAT(1e6 * awgArea_m2(10), WithinRel(5.261, 5e-4));
}

TEST_CASE("copper wire: ohms per 1000 ft at 20 °C", "[handbook][conductor]") {
    // Values from memory of NBS Handbook 100, Copper Wire Tables (1966).
    struct Row {
        int gauge;
        double ohmPerKft;
    };
    for (const Row& row : {Row{10, 0.9989}, Row{12, 1.588}, Row{14, 2.525}, Row{16, 4.016}, Row{18, 6.385},
                           Row{20, 10.15}, Row{22, 16.14}, Row{24, 25.67}}) {
        INFO(row.gauge << " AWG");
        CHECK_THAT(0.3048 * resistance_ohmPerKm(row.gauge, kCopperReference_K),
                   WithinRel(row.ohmPerKft, 2e-3));
    }
}

TEST_CASE("copper wire: 14 AWG at 75 °C", "[handbook][conductor]") {
    // NEC chapter 9, table 8: 3.07 ohm per 1000 ft.
    CHECK_THAT(0.3048 * resistance_ohmPerKm(14, 348.15), WithinRel(3.07, 0.01));
}

TEST_CASE("copper: resistance at 105 °C against 20 °C", "[handbook][conductor]") {
    // 0.00393/K at 20 °C: value from memory of IEC 60028.
    CHECK_THAT(copperWarmShare(378.15), WithinRel(1.334, 2e-3));
    // AC 43.13-1B, paragraph 11-66: R(T) = R20·(234.5 + T)/254.5; its 1/254.5 is 0.003929/K.
    CHECK_THAT(copperWarmShare(378.15), WithinRel((234.5 + 105) / 254.5, 1e-3));
}

TEST_CASE("voltage drop of 5.5 A over a loop of 6 m of 14 AWG", "[handbook][conductor]") {
    // By arithmetic from the resistivity of IEC 60028: 0.273 V.
    CHECK_THAT(5.5 * 6e-3 * resistance_ohmPerKm(14, kCopperReference_K), WithinRel(0.273, 5e-3));
}

TEST_CASE("ampacity outside an engine space", "[handbook][conductor]") {
    // 33 CFR 183.425, Table 5 (30 °C, under 50 V).
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T105", 303.15, 1), WithinAbs(35, 1e-6));
    CHECK_THAT(ampacity_A(awgArea_m2(10), "T80", 303.15, 1), WithinAbs(50, 1e-6));
    CHECK_THAT(ampacity_A(awgArea_m2(18), "T60", 303.15, 1), WithinAbs(10, 1e-6));
    CHECK_THAT(ampacity_A(awgArea_m2(2), "T125", 303.15, 1), WithinAbs(225, 1e-6));
}

TEST_CASE("ampacity in an engine space of 50 °C", "[handbook][conductor]") {
    // Factor 0.85 for 105 °C insulation, as wire makers' engine-space columns to 33 CFR 183.425 print it: 14
    // AWG 29.75 A (printed 30), 18 AWG 17 A.
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T105", 323.15, 1), WithinAbs(29.75, 1e-6));
    CHECK_THAT(ampacity_A(awgArea_m2(18), "T105", 323.15, 1), WithinAbs(17, 1e-6));
    // The other factors: values from memory of note 1 to the same table.
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T60", 323.15, 1), WithinRel(0.58 * 20, 1e-9));
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T75", 323.15, 1), WithinRel(0.75 * 20, 1e-9));
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T80", 323.15, 1), WithinRel(0.78 * 25, 1e-9));
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T90", 323.15, 1), WithinRel(0.82 * 30, 1e-9));
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T125", 323.15, 1), WithinRel(0.89 * 40, 1e-9));
}

TEST_CASE("ampacity in a bundle", "[handbook][conductor]") {
    // Values from memory of note 2 to 33 CFR 183.425, Table 5.
    CHECK(bundleShare(1) == 1);
    CHECK(bundleShare(2) == 1);
    CHECK(bundleShare(3) == 0.70);
    CHECK(bundleShare(4) == 0.60);
    CHECK(bundleShare(6) == 0.60);
    CHECK(bundleShare(7) == 0.50);
    CHECK(bundleShare(24) == 0.50);
    CHECK(bundleShare(25) == 0.40);
    CHECK_THAT(ampacity_A(awgArea_m2(14), "T105", 303.15, 3), WithinRel(24.5, 1e-9));
}

TEST_CASE("ampacity grows with the area and falls with the surroundings' temperature",
          "[handbook][conductor]") {
    for (const InsulationClass& insulation : insulationClasses()) {
        double last_A = 0;
        for (double area_m2 = 0.2e-6; area_m2 < 60e-6; area_m2 *= 1.07) {
            const double now_A = ampacity_A(area_m2, insulation.id, 303.15, 1);
            CHECK(now_A >= last_A);
            last_A = now_A;
        }
        last_A = 1e9;
        for (double ambient_K = 250; ambient_K < 420; ambient_K += 1) {
            const double now_A = ampacity_A(1.5e-6, insulation.id, ambient_K, 1);
            CHECK(now_A <= last_A);
            last_A = now_A;
        }
        CHECK(ampacity_A(1.5e-6, insulation.id, insulation.maxTemperature_K, 1) == 0);
        CHECK(ampacity_A(1.5e-6, insulation.id, insulation.maxTemperature_K - 1, 1) > 0);
    }
}

TEST_CASE("metric wires lie between the gauges beside them, and small ones below 18 AWG",
          "[handbook][conductor]") {
    // 1.5 mm² lies between 16 AWG (25 A) and 14 AWG (35 A) of 33 CFR 183.425, Table 5.
    CHECK(ampacity_A(1.5e-6, "T105", 303.15, 1) > 25);
    CHECK(ampacity_A(1.5e-6, "T105", 303.15, 1) < 35);
    // Below the table: common practice, no published source. 0.5 mm² is about 20 AWG.
    CHECK(ampacity_A(0.5e-6, "T105", 303.15, 1) > 12);
    CHECK(ampacity_A(0.5e-6, "T105", 303.15, 1) < 17);
}

TEST_CASE("insulation classes are found by id, in order of temperature", "[handbook][conductor]") {
    CHECK(findInsulation("T105")->maxTemperature_K == 378.15);
    CHECK(findInsulation("T200") == nullptr);
    CHECK(ampacity_A(2e-6, "unknown", 303.15, 1) == ampacity_A(2e-6, "T60", 303.15, 1));
    double last_K = 0;
    for (const InsulationClass& one : insulationClasses()) {
        CHECK(one.maxTemperature_K > last_K);
        last_K = one.maxTemperature_K;
    }
}

TEST_CASE("a 2.5 mm² wire warms up by about 10 K at 15 A, with a time constant of about 79 s",
          "[handbook][conductor]") {
    // Textbook heat transfer: d 2.0 mm, D 2.8 mm, 20 W/m²K and 0.17 W/mK give 6.0 K·m/W and 13.1 J/K·m.
    Wire wire;
    wire.area_m2 = 2.5e-6;
    wire.length_m = 1;
    test::LawBench bench(wire);
    const Unknown temperature = bench.own("conductor temperature");
    const double capacity_JperK = bench.masses().at(temperature, temperature);
    const double loss_WperK = -bench.equations().slope(temperature, temperature);
    CHECK_THAT(capacity_JperK, WithinRel(13.1, 0.01));
    CHECK_THAT(1 / loss_WperK, WithinRel(6.0, 0.01));
    CHECK_THAT(capacity_JperK / loss_WperK, WithinRel(79.0, 0.01));
    CHECK_THAT(15 * 15 * 7.6e-3 / loss_WperK, WithinAbs(10, 0.5));
}

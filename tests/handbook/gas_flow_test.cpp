// Flow of air through orifices, tubes and leaks, against values that others print or that follow from printed
// formulas with a pocket calculator.
//
// Sources: choked and subcritical isentropic nozzle flow as printed in compressible-flow textbooks;
// ISO 6358-1 (form of the elliptic law; its reference density 1.185 kg/m³ and temperature 293.15 K are values
// from memory of ISO 6358-1); Hagen-Poiseuille for a compressible gas as printed in vacuum textbooks (value
// from memory of vacuum textbooks); Sutherland's formula, US Standard Atmosphere 1976 eq. 51 (value from
// memory of US Standard Atmosphere 1976).

#include "core/parts/gas.h"
#include "core/parts/surroundings.h"
#include "core/units/atmosphere.h"
#include "tests/support/catch.h"

#include <cmath>
#include <numbers>

using namespace pumpwright;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kAtmosphere_Pa = 101325;
constexpr double kTwentyCelsius_K = 293.15;

FlowSides from(double pressure_Pa, double towards_Pa, double temperature_K = kTwentyCelsius_K) {
    return {pressure_Pa, temperature_K, towards_Pa, temperature_K};
}

/// Throughput Q = p·V̇ [Pa·m³/s] of a mass flow at 20 °C.
double throughput(const MassFlow& flow) {
    return flow.value * kAirGasConstant_JPerKgK * kTwentyCelsius_K;
}

} // namespace

TEST_CASE("a hole of 1 mm passes 1.878e-4 kg/s of free air when choked", "[handbook][gas]") {
    // Choked nozzle, discharge coefficient 1, 101,325 Pa, 20 °C: A·p·2.360e-3 s/m (compressible-flow
    // textbooks).
    const Orifice hole = Orifice::hole(1e-3);
    const double flow = orificeFlow(hole, from(kAtmosphere_Pa, 20e3)).value;
    CHECK_THAT(flow, WithinRel(1.878e-4, 3e-3));
    // The same as 9.36 L/min of free air (20 °C, 101,325 Pa: 1.204 kg/m³).
    CHECK_THAT(flow / 1.2041 * 60e3, WithinRel(9.36, 3e-3));
    // And as sonic conductance C = ṁ/(ρ0·p1) [ISO 6358-1].
    CHECK_THAT(hole.sonicConductance(), WithinRel(1.564e-9, 3e-3));
}

TEST_CASE("a choked hole does not feel the pressure behind it, and chokes at 0.528", "[handbook][gas]") {
    // Critical pressure ratio of air (2/(γ+1))^(γ/(γ−1)) = 0.528 (compressible-flow textbooks).
    const Orifice hole = Orifice::hole(1e-3);
    const double choked = orificeFlow(hole, from(kAtmosphere_Pa, 1e3)).value;
    CHECK(orificeFlow(hole, from(kAtmosphere_Pa, 0.527 * kAtmosphere_Pa)).value == choked);
    CHECK(orificeFlow(hole, from(kAtmosphere_Pa, 0.60 * kAtmosphere_Pa)).value < 0.995 * choked);
}

TEST_CASE("a hole of 1 mm from ambient into 80 kPa passes what the isentropic nozzle does",
          "[handbook][gas]") {
    // 1.567e-4 kg/s by the isentropic formula, 1.564e-4 kg/s by the ellipse of ISO 6358-1 with b = 0.528.
    const double flow = orificeFlow(Orifice::hole(1e-3), from(kAtmosphere_Pa, 80e3)).value;
    CHECK_THAT(flow, WithinRel(1.567e-4, 3e-3));
    CHECK_THAT(flow, WithinRel(1.564e-4, 1e-3));
}

TEST_CASE("the elliptic law stays near the isentropic nozzle from choking to small pressure drops",
          "[handbook][gas]") {
    // ṁ = A·p1·√(2γ/(R·T·(γ−1))·(r^(2/γ) − r^((γ+1)/γ))) (compressible-flow textbooks). The ellipse is an
    // approximation to it; 1.5 % covers its own error and the laminar start of this program.
    const double area_m2 = std::numbers::pi / 4 * 1e-6;
    for (const double ratio : {0.55, 0.65, 0.75, 0.85, 0.95, 0.98}) {
        const double nozzle = area_m2 * kAtmosphere_Pa *
                              std::sqrt(2 * 1.4 / (287.053 * kTwentyCelsius_K * 0.4) *
                                        (std::pow(ratio, 2 / 1.4) - std::pow(ratio, 2.4 / 1.4)));
        INFO("pressure ratio " << ratio);
        CHECK_THAT(orificeFlow(Orifice::hole(1e-3), from(kAtmosphere_Pa, ratio * kAtmosphere_Pa)).value,
                   WithinRel(nozzle, 0.015));
    }
}

TEST_CASE("choked flow falls with the root of the temperature", "[handbook][gas]") {
    // ṁ = C·ρ0·p1·√(T0/T1) [ISO 6358-1].
    const Orifice hole = Orifice::hole(1e-3);
    const double cold = orificeFlow(hole, from(kAtmosphere_Pa, 20e3, 273.15)).value;
    const double hot = orificeFlow(hole, from(kAtmosphere_Pa, 20e3, 373.15)).value;
    CHECK_THAT(cold / hot, WithinRel(std::sqrt(373.15 / 273.15), 1e-9));
}

TEST_CASE("a hole of 0.1 mm into 5 L raises the pressure by 31.6 Pa a second", "[handbook][gas]") {
    // dp/dt = ṁ·R·T/V while choked, isothermal, 20 °C (gas law); 0.56 inHg a minute.
    const double flow = orificeFlow(Orifice::hole(1e-4), from(kAtmosphere_Pa, 33e3)).value;
    const double rise_Paps = flow * kAirGasConstant_JPerKgK * kTwentyCelsius_K / 5e-3;
    CHECK_THAT(rise_Paps, WithinRel(31.6, 5e-3));
    CHECK_THAT(rise_Paps * 60 / 3386.389, WithinRel(0.56, 5e-3));
}

TEST_CASE("the viscosity of air follows Sutherland", "[handbook][gas]") {
    // 1.813e-5 Pa·s at 20 °C and 1.7894e-5 Pa·s at 15 °C (values from memory of US Standard Atmosphere 1976).
    CHECK_THAT(airViscosity_PaS(Temperature(kTwentyCelsius_K)), WithinRel(1.813e-5, 1e-3));
    CHECK_THAT(airViscosity_PaS(Temperature(288.15)), WithinRel(1.7894e-5, 1e-3));
}

TEST_CASE("a laminar tube passes what Hagen and Poiseuille say", "[handbook][gas]") {
    // 0.2 mm × 10 mm, 101,325 → 50,000 Pa, µ 1.82e-5 Pa·s: Q = π·d⁴·(p1² − p2²)/(256·µ·l) = 0.838 Pa·m³/s.
    CHECK_THAT(throughput(laminarFlow(2e-4, 0.01, 1.82e-5, from(kAtmosphere_Pa, 50e3))),
               WithinRel(0.838, 0.01));
}

TEST_CASE("the conductance of a long tube is 135 d⁴ p/l in workshop units", "[handbook][gas]") {
    // C [L/s] = 135·d⁴·p̄/l in cm and mbar, air at 20 °C, as printed in vacuum tables. d 0.4 cm, l 100 cm,
    // mean pressure 500 mbar, 1 mbar across: C = 17.28 L/s.
    const double Q = throughput(laminarFlow(4e-3, 1, 1.82e-5, from(50050, 49950)));
    CHECK_THAT(Q / 100 * 1e3, WithinRel(135 * 0.4 * 0.4 * 0.4 * 0.4 * 500 / 100, 0.01));
}

TEST_CASE("the bore limits a hose where the laminar formula promises the impossible", "[handbook][gas]") {
    // 4 mm × 1 m, 101,325 → 50,000 Pa: the laminar formula gives 1,341 Pa·m³/s, a choked orifice of 4 mm
    // passes 253 Pa·m³/s (both formulas as above).
    const FlowSides sides = from(kAtmosphere_Pa, 50e3);
    const MassFlow friction = laminarFlow(4e-3, 1, 1.82e-5, sides);
    const MassFlow bore = orificeFlow(Orifice::hole(4e-3), sides);
    CHECK_THAT(throughput(friction), WithinRel(1341, 0.01));
    CHECK_THAT(throughput(bore), WithinRel(253, 0.01));
    CHECK(throughput(limitedFlow(friction, bore)) < 253);
    CHECK(throughput(limitedFlow(friction, bore)) > 200);
}

TEST_CASE("a leak that a tightness test allows is a leak of known size", "[handbook][gas]") {
    // 25 mmHg in 15 s into 5 L is 1.11 Pa·m³/s (Q = V·dp/dt; limit as workshop manuals print it). By the
    // choked formula that is a hole of d = √(4·Q/(π·p·2.360e-3·R·T)).
    const double Q = 5e-3 * 25 * 133.322 / 15;
    CHECK_THAT(Q, WithinRel(1.11, 5e-3));
    const double diameter_m =
        std::sqrt(4 * Q / (std::numbers::pi * kAtmosphere_Pa * 2.360e-3 * 287.053 * kTwentyCelsius_K));
    CHECK_THAT(throughput(orificeFlow(Orifice::hole(diameter_m), from(kAtmosphere_Pa, 35e3))),
               WithinRel(Q, 3e-3));
}

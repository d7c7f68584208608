#include "core/parts/gas.h"
#include "tests/core/parts/gas_bench.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using namespace pumpwright::tests;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kVolume_m3 = 1e-3;

/// Two vessels of 1 L, one at 90 kPa and 310 K, the other at 40 kPa and 270 K.
struct TwoVessels {
    GasBench bench;
    GasNode high = bench.addGas("high", kVolume_m3, true);
    GasNode low = bench.addGas("low", kVolume_m3, true);

    TwoVessels() {
        bench.fill(high, kVolume_m3, 90e3, 310);
        bench.fill(low, kVolume_m3, 40e3, 270);
        bench.clear();
    }
    double f(Unknown row) const { return bench.f[static_cast<std::size_t>(row)]; }
};

MassFlow orificeBetween(const TwoVessels& vessels, const GasNode& from, const GasNode& to) {
    return orificeFlow(Orifice::hole(1e-3), flowSides(gasSides(vessels.bench.point(), from, to)));
}

/// An orifice as the only thing between two nodes.
class OrificeLaw final : public Law {
public:
    OrificeLaw(GasNode from, GasNode to) : m_from(from), m_to(to) {}
    void addEquations(const Point& at, Equations& equations) const override {
        const GasSides sides = gasSides(at, m_from, m_to);
        addGasFlow(equations, sides, orificeFlow(Orifice::hole(1e-3), flowSides(sides)));
    }

private:
    GasNode m_from;
    GasNode m_to;
};

} // namespace

TEST_CASE("what leaves one volume enters the other, mass and enthalpy", "[parts][gas]") {
    TwoVessels vessels;
    const GasSides sides = gasSides(vessels.bench.point(), vessels.high, vessels.low);
    const MassFlow flow = orificeBetween(vessels, vessels.high, vessels.low);
    addGasFlow(vessels.bench, sides, flow);

    CHECK(flow.value > 0);
    CHECK(vessels.f(vessels.high.mass) == -flow.value);
    CHECK(vessels.f(vessels.low.mass) == flow.value);
    CHECK(vessels.f(vessels.low.energy) == -vessels.f(vessels.high.energy));
    CHECK_THAT(vessels.f(vessels.low.energy), WithinRel(flow.value * 1004.7 * 310, 1e-4));
}

TEST_CASE("a flow takes the enthalpy of the side that it comes from, whichever way it is written",
          "[parts][gas]") {
    TwoVessels vessels;
    const GasSides sides = gasSides(vessels.bench.point(), vessels.low, vessels.high);
    addGasFlow(vessels.bench, sides, orificeBetween(vessels, vessels.low, vessels.high));
    CHECK(vessels.f(vessels.low.mass) > 0);
    CHECK_THAT(vessels.f(vessels.low.energy) / vessels.f(vessels.low.mass), WithinRel(1004.7 * 310, 1e-4));
}

TEST_CASE("a further slope of a flow moves mass and enthalpy on both sides alike", "[parts][gas]") {
    TwoVessels vessels;
    const Unknown opening = vessels.bench.addUnknown({"opening", 0, 1});
    const GasSides sides = gasSides(vessels.bench.point(), vessels.high, vessels.low);
    addGasFlowSlope(vessels.bench, sides, orificeBetween(vessels, vessels.high, vessels.low), opening, 2.0);
    auto& slopes = vessels.bench.slopes;
    CHECK(slopes[std::pair(vessels.high.mass, opening)] == -2.0);
    CHECK(slopes[std::pair(vessels.low.mass, opening)] == 2.0);
    CHECK_THAT(slopes[std::pair(vessels.low.energy, opening)], WithinRel(2.0 * 1004.7 * 310, 1e-4));
}

TEST_CASE("an orifice states the slopes of its flow, choked, below and backward", "[parts][gas]") {
    TwoVessels vessels;
    for (const double low_Pa : {20e3, 60e3, 89.999e3, 90.001e3, 100e3}) {
        vessels.bench.fill(vessels.low, kVolume_m3, low_Pa, 270);
        INFO(low_Pa << " Pa against 90 kPa");
        CHECK(slopesMatch(vessels.bench, OrificeLaw(vessels.high, vessels.low)));
    }
}

TEST_CASE("flow between equal pressures is zero and turns round without a jump", "[parts][gas]") {
    const auto flowAt = [](double low_Pa) {
        TwoVessels vessels;
        vessels.bench.fill(vessels.high, kVolume_m3, 90e3, 300);
        vessels.bench.fill(vessels.low, kVolume_m3, low_Pa, 300);
        return orificeBetween(vessels, vessels.high, vessels.low).value;
    };
    const double perPascal = flowAt(90e3 - 1);
    CHECK(flowAt(90e3) == 0);
    CHECK(perPascal > 0);
    CHECK_THAT(flowAt(90e3 + 1), WithinRel(-perPascal, 1e-3));
    CHECK_THAT(flowAt(90e3 - 2), WithinRel(2 * perPascal, 0.05));
    // Further away it grows with the root of the pressure difference.
    CHECK_THAT(flowAt(90e3 - 2000) / flowAt(90e3 - 500), WithinRel(2.0, 0.05));
}

TEST_CASE("friction and bore in a row pass less than either, and the smaller one decides", "[parts][gas]") {
    const MassFlow friction{1e-3, {}};
    const MassFlow bore{2e-5, {}};
    const double passed = limitedFlow(friction, bore).value;
    CHECK(passed < 2e-5);
    CHECK_THAT(passed, WithinRel(2e-5, 1e-3));
    CHECK(limitedFlow(MassFlow{-1e-3, {}}, MassFlow{-2e-5, {}}).value == -passed);

    TwoVessels equal;
    equal.bench.fill(equal.low, kVolume_m3, 90e3, 310);
    const FlowSides sides = flowSides(gasSides(equal.bench.point(), equal.high, equal.low));
    const MassFlow none =
        limitedFlow(laminarFlow(4e-3, 1, 1.8e-5, sides), orificeFlow(Orifice::hole(4e-3), sides));
    CHECK(none.value == 0);
    CHECK(none.slopes[0] > 0);
    CHECK(none.slopes[0] == -none.slopes[2]);
}

TEST_CASE("a volume at ambient temperature with consistent pressure is at rest", "[parts][gas]") {
    GasBench bench;
    const GasNode gas = bench.addGas("vessel", kVolume_m3, true);
    const GasVolume volume = GasVolume::withWall(gas, kVolume_m3, 3, bench.surroundings());
    bench.clear();
    volume.addEquations(bench.point(), bench);
    CHECK(bench.f[static_cast<std::size_t>(gas.mass)] == 0);
    CHECK_THAT(bench.f[static_cast<std::size_t>(gas.energy)], WithinAbs(0, 1e-9));
    CHECK_THAT(bench.f[static_cast<std::size_t>(gas.pressure)], WithinAbs(0, 1e-6));
}

TEST_CASE("the wall warms cold gas with its time constant", "[parts][gas]") {
    GasBench bench;
    const GasNode gas = bench.addGas("vessel", kVolume_m3, true);
    const GasVolume volume = GasVolume::withWall(gas, kVolume_m3, 3, bench.surroundings());
    // At the density that the time constant is stated for, 20 K colder.
    const double mass_kg = bench[gas.mass];
    bench[gas.energy] = air::energy_J(mass_kg, 273.15);
    bench.clear();
    volume.addEquations(bench.point(), bench);
    const double heating_Kps =
        bench.f[static_cast<std::size_t>(gas.energy)] / (mass_kg * air::kHeatAtVolume_JperkgK);
    CHECK_THAT(heating_Kps, WithinRel(20.0 / 3.0, 1e-6));
}

TEST_CASE("mass and energy of a volume are states, its pressure is not", "[parts][gas]") {
    GasBench bench;
    const GasNode gas = bench.addGas("vessel", kVolume_m3, true);
    GasVolume::withWall(gas, kVolume_m3, 3, bench.surroundings()).addMasses(bench);
    CHECK(bench.masses.size() == 2);
    CHECK(bench.masses[std::pair(gas.mass, gas.mass)] == 1);
    CHECK(bench.masses[std::pair(gas.energy, gas.energy)] == 1);
}

TEST_CASE("senseless mass, energy and pressure give finite flows", "[parts][gas]") {
    TwoVessels vessels;
    for (const double wrong : {0.0, -1.0, -1e300, 1e300, 1e-300}) {
        for (const Unknown unknown : {vessels.high.pressure, vessels.high.mass, vessels.high.energy}) {
            TwoVessels broken;
            broken.bench[unknown] = wrong;
            const GasSides sides = gasSides(broken.bench.point(), broken.high, broken.low);
            addGasFlow(broken.bench, sides, orificeFlow(Orifice::hole(1e-3), flowSides(sides)));
            for (const double value : broken.bench.f) {
                CHECK(std::isfinite(value));
            }
        }
    }
}

TEST_CASE("the atmosphere has the pressure of the plan's altitude", "[parts][gas]") {
    DrivePlan plan;
    plan.altitude = {{0, 2000}};
    GasBench bench(plan);
    const GasState state = gasState(bench.point(), {});
    CHECK_THAT(state.pressure_Pa, WithinRel(79495.0, 1e-3));
    CHECK(state.temperature_K == plan.ambient_K);
}

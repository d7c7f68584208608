#include "core/parts/gas.h"
#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kVolume_m3 = 1e-3;
const Orifice kHole = Orifice::hole(1e-3);

/// A hole of 1 mm as the only thing between two vessels.
class HoleLaw final : public Law {
public:
    HoleLaw(GasNode from, GasNode to) : m_from(from), m_to(to) {}
    void addEquations(const Point& at, Equations& equations) const override {
        const GasSides sides = gasSides(at, m_from, m_to);
        addGasFlow(equations, sides, orificeFlow(kHole, flowSides(sides)));
    }

private:
    GasNode m_from;
    GasNode m_to;
};

/// A vessel of 1 L whose wall needs 3 s.
class VesselOnly final : public Law {
public:
    explicit VesselOnly(LawContext& context)
        : m_volume(GasVolume::withWall(context.addGas("vessel", kVolume_m3, true), kVolume_m3, 3,
                                       context.surroundings())) {}
    void addEquations(const Point& at, Equations& equations) const override {
        m_volume.addEquations(at, equations);
    }
    void addMasses(MassMatrix& masses) const override { m_volume.addMasses(masses); }

private:
    GasVolume m_volume;
};

/// Two vessels of 1 L, one at 90 kPa and 310 K, the other at 40 kPa and 270 K, with the hole between them.
struct TwoVessels {
    LawBench bench{[](LawContext& context) {
        const GasNode from = context.addGas("high", kVolume_m3, true);
        return std::make_unique<HoleLaw>(from, context.addGas("low", kVolume_m3, true));
    }};
    GasNode high = bench.gas("high");
    GasNode low = bench.gas("low");

    TwoVessels() { fill(90e3, 310, 40e3, 270); }
    void fill(double high_Pa, double high_K, double low_Pa, double low_K) {
        bench.fill("high", kVolume_m3, high_Pa, high_K);
        bench.fill("low", kVolume_m3, low_Pa, low_K);
    }
    /// [kg/s] from high to low.
    double flow() const { return bench.equations().f(low.mass); }
};

} // namespace

TEST_CASE("what leaves one volume enters the other, mass and enthalpy", "[parts][gas]") {
    const TwoVessels vessels;
    const PlainEquations equations = vessels.bench.equations();
    CHECK(vessels.flow() > 0);
    CHECK(equations.f(vessels.high.mass) == -vessels.flow());
    CHECK(equations.f(vessels.high.energy) == -equations.f(vessels.low.energy));
    CHECK_THAT(equations.f(vessels.low.energy), WithinRel(vessels.flow() * 1004.7 * 310, 1e-4));
}

TEST_CASE("a flow takes the enthalpy of the side that it comes from, whichever way it is written",
          "[parts][gas]") {
    TwoVessels vessels;
    vessels.fill(40e3, 270, 90e3, 310);
    CHECK(vessels.flow() < 0);
    CHECK_THAT(vessels.bench.equations().f(vessels.low.energy) / vessels.flow(),
               WithinRel(1004.7 * 310, 1e-4));
}

TEST_CASE("a further slope of a flow moves mass and enthalpy on both sides alike", "[parts][gas]") {
    const TwoVessels vessels;
    const GasSides sides = gasSides(vessels.bench.point(), vessels.high, vessels.low);
    PlainEquations equations(vessels.bench.size());
    const Unknown opening = vessels.low.pressure; // any column will do
    addGasFlowSlope(equations, sides, orificeFlow(kHole, flowSides(sides)), opening, 2.0);
    CHECK(equations.slope(vessels.high.mass, opening) == -2.0);
    CHECK(equations.slope(vessels.low.mass, opening) == 2.0);
    CHECK_THAT(equations.slope(vessels.low.energy, opening), WithinRel(2.0 * 1004.7 * 310, 1e-4));
    CHECK(equations.slope(vessels.high.energy, opening) == -equations.slope(vessels.low.energy, opening));
}

TEST_CASE("an orifice states the slopes of its flow, choked, below and backward", "[parts][gas]") {
    TwoVessels vessels;
    for (const double low_Pa : {20e3, 60e3, 89.7e3, 90.3e3, 100e3}) {
        INFO(low_Pa << " Pa against 90 kPa");
        vessels.fill(90e3, 310, low_Pa, 270);
        checkSlopes(vessels.bench);
    }
}

TEST_CASE("flow between equal pressures is zero and turns round without a jump", "[parts][gas]") {
    const auto flowAt = [](double low_Pa) {
        TwoVessels vessels;
        vessels.fill(90e3, 300, low_Pa, 300);
        return vessels.flow();
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
}

TEST_CASE("friction and bore in a row have the slope of both at equal pressures", "[parts][gas]") {
    TwoVessels vessels;
    vessels.fill(90e3, 300, 90e3, 300);
    const FlowSides sides = flowSides(gasSides(vessels.bench.point(), vessels.high, vessels.low));
    const MassFlow friction = laminarFlow(4e-3, 1, 1.8e-5, sides);
    const MassFlow bore = orificeFlow(Orifice::hole(4e-3), sides);
    const MassFlow both = limitedFlow(friction, bore);
    CHECK(both.value == 0);
    CHECK(both.slopes[0] > 0);
    CHECK(both.slopes[0] < std::min(friction.slopes[0], bore.slopes[0]));
    CHECK(both.slopes[0] == -both.slopes[2]);
}

TEST_CASE("a volume at ambient temperature with consistent pressure is at rest", "[parts][gas]") {
    const LawBench bench([](LawContext& context) { return std::make_unique<VesselOnly>(context); });
    const PlainEquations equations = bench.equations();
    for (Unknown row = 0; row < static_cast<Unknown>(bench.size()); ++row) {
        CHECK_THAT(equations.f(row), WithinAbs(0, 1e-6));
    }
}

TEST_CASE("the wall warms cold gas with its time constant", "[parts][gas]") {
    LawBench bench([](LawContext& context) { return std::make_unique<VesselOnly>(context); });
    const GasNode gas = bench.gas("vessel");
    // At the density that the time constant is stated for, 20 K colder.
    const double mass_kg = bench.x(gas.mass);
    bench.x(gas.energy) = air::energy_J(mass_kg, 273.15);
    const double heating_Kps = bench.equations().f(gas.energy) / (mass_kg * air::kHeatAtVolume_JperkgK);
    CHECK_THAT(heating_Kps, WithinRel(20.0 / 3.0, 1e-6));
    CHECK(bench.equations().f(gas.mass) == 0);
}

TEST_CASE("mass and energy of a volume are states, its pressure is not", "[parts][gas]") {
    LawBench bench([](LawContext& context) { return std::make_unique<VesselOnly>(context); });
    const GasNode gas = bench.gas("vessel");
    const PlainMasses masses = bench.masses();
    CHECK(masses.at(gas.mass, gas.mass) == 1);
    CHECK(masses.at(gas.energy, gas.energy) == 1);
    CHECK(masses.at(gas.pressure, gas.pressure) == 0);
}

TEST_CASE("senseless mass, energy and pressure give finite flows", "[parts][gas]") {
    for (const double wrong : {0.0, -1.0, -1e300, 1e300, 1e-300}) {
        for (Unknown unknown = 0; unknown < 6; ++unknown) {
            TwoVessels vessels;
            vessels.bench.x(unknown) = wrong;
            const PlainEquations equations = vessels.bench.equations();
            for (Unknown row = 0; row < 6; ++row) {
                CHECK(std::isfinite(equations.f(row)));
            }
        }
    }
}

TEST_CASE("the atmosphere has the pressure of the plan's altitude", "[parts][gas]") {
    DrivePlan plan;
    plan.altitude = {{0, 2000}};
    const LawBench bench([](LawContext& context) { return std::make_unique<VesselOnly>(context); }, plan);
    const GasState state = gasState(bench.point(), {});
    CHECK_THAT(state.pressure_Pa, WithinRel(79495.0, 1e-3));
    CHECK(state.temperature_K == plan.ambient_K);
}

#include "core/parts/gas.h"

#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

// Bounds of what formulas get to see. Real runs stay well inside; Newton's first guesses may not.
constexpr double kLowestPressure_Pa = 1;
constexpr double kLowestMass_kg = 1e-14;
constexpr double kLowestTemperature_K = 20;
constexpr double kHighestTemperature_K = 3000;

/// Share of the squared choked flow below which an orifice counts as laminar.
constexpr double kLaminarShare = 1e-3;

/// √(γ/R)·(2/(γ+1))^((γ+1)/(2(γ−1))): choked mass flow is this times A·p/√T.
const double kChokedFlow = std::sqrt(kAirHeatRatio / kAirGasConstant_JPerKgK) *
                           std::pow(2 / (kAirHeatRatio + 1), (kAirHeatRatio + 1) / (2 * (kAirHeatRatio - 1)));

/// A flow law that is stated for flow from `from` to `to` only, used in the direction of the pressure drop.
template <class Forward>
MassFlow inEitherDirection(const FlowSides& sides, Forward forward) {
    if (sides.fromPressure_Pa >= sides.toPressure_Pa) {
        return forward(sides);
    }
    const MassFlow back = forward(FlowSides{sides.toPressure_Pa, sides.toTemperature_K, sides.fromPressure_Pa,
                                            sides.fromTemperature_K});
    return {-back.value, {-back.slopes[2], -back.slopes[3], -back.slopes[0], -back.slopes[1]}};
}

/// The share of the choked flow that passes, and its slope; `u` is the pressure drop as a share of the
/// critical one.
Sloped<1> shareOfChoked(double u) {
    if (u >= 1) {
        return {1, {}};
    }
    const double squared = u * (2 - u);
    const double perStraight = 1 / (squared + kLaminarShare);
    const double factor = std::sqrt((1 + kLaminarShare) * perStraight);
    return {squared * factor, {2 * (1 - u) * factor * (1 - 0.5 * squared * perStraight)}};
}

void addToBothSides(Equations& equations, Unknown row, Unknown otherRow, Unknown column, double slope) {
    equations.addSlope(row, column, -slope);
    equations.addSlope(otherRow, column, slope);
}

/// Adds the slopes of something that leaves one row and enters another, and that depends on the gas at both
/// nodes.
void addFlowSlopes(Equations& equations, const GasSides& sides, Unknown row, Unknown otherRow,
                   const std::array<double, 4>& slopes) {
    const auto add = [&](Unknown column, double slope) {
        addToBothSides(equations, row, otherRow, column, slope);
    };
    add(sides.from.pressure, slopes[0]);
    add(sides.from.mass, slopes[1] * sides.fromState.temperaturePerMass);
    add(sides.from.energy, slopes[1] * sides.fromState.temperaturePerEnergy);
    add(sides.to.pressure, slopes[2]);
    add(sides.to.mass, slopes[3] * sides.toState.temperaturePerMass);
    add(sides.to.energy, slopes[3] * sides.toState.temperaturePerEnergy);
}

/// [J/kg] of the gas that flows.
double flowEnthalpy(const GasSides& sides, const MassFlow& flow) {
    const GasState& source = flow.value >= 0 ? sides.fromState : sides.toState;
    return air::kHeatAtPressure_JperkgK * source.temperature_K;
}

} // namespace

double air::mass_kg(double pressure_Pa, double volume_m3, double temperature_K) {
    return pressure_Pa * volume_m3 / (kAirGasConstant_JPerKgK * temperature_K);
}

double air::energy_J(double mass_kg, double temperature_K) {
    return mass_kg * kHeatAtVolume_JperkgK * temperature_K;
}

GasState gasState(const Point& at, const GasNode& node) {
    if (node.isAtmosphere()) {
        return {at.surroundings.ambientPressure_Pa(at.time_s), at.surroundings.ambientTemperature_K(), 0, 0};
    }
    GasState state{std::max(at[node.pressure], kLowestPressure_Pa), 0, 0, 0};
    const double mass = std::max(at[node.mass], kLowestMass_kg);
    const double perEnergy = 1 / (mass * air::kHeatAtVolume_JperkgK);
    const double temperature = at[node.energy] * perEnergy;
    state.temperature_K = std::clamp(temperature, kLowestTemperature_K, kHighestTemperature_K);
    if (temperature > kLowestTemperature_K && temperature < kHighestTemperature_K) {
        state.temperaturePerMass =
            at[node.mass] > kLowestMass_kg ? -temperature * perEnergy * air::kHeatAtVolume_JperkgK : 0;
        state.temperaturePerEnergy = perEnergy;
    }
    return state;
}

GasSides gasSides(const Point& at, const GasNode& from, const GasNode& to) {
    return {from, to, gasState(at, from), gasState(at, to)};
}

FlowSides flowSides(const GasSides& sides) {
    return {sides.fromState.pressure_Pa, sides.fromState.temperature_K, sides.toState.pressure_Pa,
            sides.toState.temperature_K};
}

Orifice Orifice::hole(double diameter_m) {
    return {std::numbers::pi / 4 * diameter_m * diameter_m};
}

double Orifice::sonicConductance() const {
    constexpr double kReferenceDensity_kgperm3 = 1.185;
    constexpr double kReferenceTemperature_K = 293.15;
    return effectiveArea_m2 * kChokedFlow / (kReferenceDensity_kgperm3 * std::sqrt(kReferenceTemperature_K));
}

// These three are written out with their slopes: most of a run's time would go by in the arithmetic of
// Sloped.

MassFlow orificeFlow(const Orifice& orifice, const FlowSides& sides) {
    return inEitherDirection(sides, [&](const FlowSides& s) -> MassFlow {
        const double ratio = s.toPressure_Pa / s.fromPressure_Pa;
        const double perSpan = 1 / (1 - orifice.criticalRatio);
        const double perTemperature = 1 / s.fromTemperature_K;
        const double chokedPerPressure = orifice.effectiveArea_m2 * kChokedFlow * std::sqrt(perTemperature);
        const Sloped<1> share = shareOfChoked((1 - ratio) * perSpan);
        const double flow = chokedPerPressure * s.fromPressure_Pa * share.value;
        const double perRatio = chokedPerPressure * share.slopes[0] * perSpan;
        return {
            flow,
            {chokedPerPressure * share.value + perRatio * ratio, -0.5 * flow * perTemperature, -perRatio, 0}};
    });
}

MassFlow laminarFlow(double diameter_m, double length_m, double viscosity_Pas, const FlowSides& sides) {
    const double squared_m2 = diameter_m * diameter_m;
    const double conductance = std::numbers::pi * squared_m2 * squared_m2 /
                               (256 * viscosity_Pas * length_m * kAirGasConstant_JPerKgK);
    return inEitherDirection(sides, [&](const FlowSides& s) -> MassFlow {
        const double perTemperature = 1 / s.fromTemperature_K;
        const double perSquare = conductance * perTemperature;
        const double flow =
            perSquare * (s.fromPressure_Pa - s.toPressure_Pa) * (s.fromPressure_Pa + s.toPressure_Pa);
        return {
            flow,
            {2 * perSquare * s.fromPressure_Pa, -flow * perTemperature, -2 * perSquare * s.toPressure_Pa, 0}};
    });
}

MassFlow limitedFlow(const MassFlow& friction, const MassFlow& bore) {
    if (bore.value == 0) {
        // Both start from zero as straight lines in the pressure difference.
        return chained(friction, 0, 1 / std::hypot(1.0, friction.slopes[0] / bore.slopes[0]));
    }
    const double ratio = friction.value / bore.value;
    const double perRoot = 1 / std::sqrt(1 + ratio * ratio);
    const double perFriction = perRoot * perRoot * perRoot;
    return chained(friction, bore, friction.value * perRoot, perFriction,
                   ratio * ratio * ratio * perFriction);
}

void addGasFlow(Equations& equations, const GasSides& sides, const MassFlow& flow_kgps) {
    const double enthalpy_Jperkg = flowEnthalpy(sides, flow_kgps);
    equations.addCurrent(sides.from.mass, sides.to.mass, flow_kgps.value);
    equations.addCurrent(sides.from.energy, sides.to.energy, enthalpy_Jperkg * flow_kgps.value);
    if (!equations.takesSlopes()) {
        return;
    }
    std::array<double, 4> powerSlopes = flow_kgps.slopes;
    for (double& slope : powerSlopes) {
        slope *= enthalpy_Jperkg;
    }
    powerSlopes[flow_kgps.value >= 0 ? 1 : 3] += air::kHeatAtPressure_JperkgK * flow_kgps.value;
    addFlowSlopes(equations, sides, sides.from.mass, sides.to.mass, flow_kgps.slopes);
    addFlowSlopes(equations, sides, sides.from.energy, sides.to.energy, powerSlopes);
}

void addGasFlowSlope(Equations& equations, const GasSides& sides, const MassFlow& flow_kgps, Unknown column,
                     double slope) {
    if (!equations.takesSlopes()) {
        return;
    }
    addToBothSides(equations, sides.from.mass, sides.to.mass, column, slope);
    addToBothSides(equations, sides.from.energy, sides.to.energy, column,
                   flowEnthalpy(sides, flow_kgps) * slope);
}

void addGasFlowAccount(const GasSides& sides, const MassFlow& flow_kgps, Account& account) {
    if (sides.from.isAtmosphere() != sides.to.isAtmosphere()) {
        const double inward = sides.from.isAtmosphere() ? 1 : -1;
        account.bringInGas(inward * flow_kgps.value, flowEnthalpy(sides, flow_kgps));
    }
}

GasVolume GasVolume::withWall(const GasNode& node, double volume_m3, double wallTimeConstant_s,
                              const Surroundings& surroundings) {
    const double mass =
        air::mass_kg(surroundings.ambientPressure_Pa(0), volume_m3, surroundings.ambientTemperature_K());
    return {node, volume_m3, mass * air::kHeatAtVolume_JperkgK / wallTimeConstant_s};
}

void GasVolume::addMasses(MassMatrix& masses) const {
    masses.add(node.mass, node.mass, 1);
    masses.add(node.energy, node.energy, 1);
}

void GasVolume::addAccount(const Point& at, Account& account) const {
    account.held_kg += at[node.mass];
    account.held_J += at[node.energy];
    account.bringIn(wallConductance_WperK *
                    (at.surroundings.ambientTemperature_K() - gasState(at, node).temperature_K));
}

void GasVolume::addEquations(const Point& at, Equations& equations) const {
    addEquations(at, equations, volume_m3, node.pressure, 0);
}

void GasVolume::addEquations(const Point& at, Equations& equations, double volumeNow_m3, Unknown travel,
                             double volumePerTravel_m2) const {
    const GasState gas = gasState(at, node);
    equations.add(node.energy,
                  wallConductance_WperK * (at.surroundings.ambientTemperature_K() - gas.temperature_K));
    equations.addSlope(node.energy, node.mass, -wallConductance_WperK * gas.temperaturePerMass);
    equations.addSlope(node.energy, node.energy, -wallConductance_WperK * gas.temperaturePerEnergy);

    const double pressurePerEnergy = (kAirHeatRatio - 1) / volumeNow_m3;
    const double pressure = pressurePerEnergy * at[node.energy];
    equations.add(node.pressure, pressure - at[node.pressure]);
    equations.addSlope(node.pressure, node.pressure, -1);
    equations.addSlope(node.pressure, node.energy, pressurePerEnergy);
    equations.addSlope(node.pressure, travel, -pressure / volumeNow_m3 * volumePerTravel_m2);
}

} // namespace pumpwright

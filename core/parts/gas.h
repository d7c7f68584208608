#pragma once

#include "core/parts/law.h"
#include "core/parts/sloped.h"
#include "core/units/constants.h"

namespace pumpwright {

/// Dry air as an ideal gas.
namespace air {
inline constexpr double kHeatAtVolume_JperkgK = kAirGasConstant_JPerKgK / (kAirHeatRatio - 1);
inline constexpr double kHeatAtPressure_JperkgK = kAirHeatRatio * kHeatAtVolume_JperkgK;

/// [kg] of air in a volume, by p·V = m·R·T.
double mass_kg(double pressure_Pa, double volume_m3, double temperature_K);
/// [J] internal energy of a mass of air.
double energy_J(double mass_kg, double temperature_K);
} // namespace air

/// Pressure and temperature of a gas node at an instant, kept within bounds in which every formula has a
/// value, and how the temperature grows with the node's mass and energy.
struct GasState {
    double pressure_Pa;
    double temperature_K;
    double temperaturePerMass;
    double temperaturePerEnergy;
};
GasState gasState(const Point& at, const GasNode& node);

/// [kg/s], with slopes towards pressure and temperature on both sides, in the order of FlowSides.
using MassFlow = Sloped<4>;

/// Two gas nodes between which gas can flow, at an instant.
struct GasSides {
    GasNode from;
    GasNode to;
    GasState fromState;
    GasState toState;
};
GasSides gasSides(const Point& at, const GasNode& from, const GasNode& to);

/// What drives a flow.
struct FlowSides {
    double fromPressure_Pa;
    double fromTemperature_K;
    double toPressure_Pa;
    double toTemperature_K;
};
FlowSides flowSides(const GasSides& sides);

/// A hole, by its effective area (discharge coefficient times area) and critical pressure ratio.
struct Orifice {
    double effectiveArea_m2;
    double criticalRatio = 0.528; ///< of an ideal nozzle in air: (2/(γ+1))^(γ/(γ−1))

    /// The round hole of this diameter with a discharge coefficient of 1.
    static Orifice hole(double diameter_m);
    /// The sonic conductance C [m³/(s·Pa)] at 20 °C [ISO 6358-1].
    double sonicConductance() const;
};

/// Flow through an orifice, choked or below, with the elliptic law of ISO 6358-1. Below a pressure difference
/// of about 0.03 % it goes over to a straight line, as a real hole does when its flow gets laminar.
MassFlow orificeFlow(const Orifice& orifice, const FlowSides& sides);

/// Laminar compressible flow in a tube, ṁ = π·d⁴·(p1² − p2²)/(256·µ·l·R·T) [Hagen-Poiseuille], T upstream.
MassFlow laminarFlow(double diameter_m, double length_m, double viscosity_Pas, const FlowSides& sides);

/// What passes a tube whose friction alone gives `friction` and whose bore alone passes no more than `bore`:
/// below both, and near the smaller one where they differ much.
MassFlow limitedFlow(const MassFlow& friction, const MassFlow& bore);

/// Adds a flow of gas: its mass leaves `from` and enters `to`, and takes with it its enthalpy ṁ·cp·T of the
/// side that it comes from.
void addGasFlow(Equations& equations, const GasSides& sides, const MassFlow& flow_kgps);

/// Adds how that flow grows with a further unknown (a valve's opening, the speed of a pump).
void addGasFlowSlope(Equations& equations, const GasSides& sides, const MassFlow& flow_kgps, Unknown column,
                     double slope);

/// Books a flow for which addGasFlow() stands: what crosses from the atmosphere or to it.
void addGasFlowAccount(const GasSides& sides, const MassFlow& flow_kgps, Account& account);

/// Adds to a row something that depends on a few unknowns.
template <std::size_t N>
void addRow(Equations& equations, Unknown row, const Sloped<N>& value,
            const std::array<Unknown, N>& columns) {
    equations.add(row, value.value);
    for (std::size_t i = 0; i < N; ++i) {
        equations.addSlope(row, columns[i], value.slopes[i]);
    }
}

/// Gas in a vessel whose wall is at ambient temperature. The law of the part that owns the volume adds its
/// equations, once: m' = Σ flows, U' = Σ enthalpy flows + wall heat, and 0 = (γ−1)·U/V − p. Flows are added
/// by whoever lets them through.
struct GasVolume {
    GasNode node;
    double volume_m3;
    double wallConductance_WperK;

    /// With a wall that brings gas of ambient density back to ambient temperature with this time constant.
    static GasVolume withWall(const GasNode& node, double volume_m3, double wallTimeConstant_s,
                              const Surroundings& surroundings);

    void addMasses(MassMatrix& masses) const;
    /// Gas held, and heat from the wall. The work of a moving wall is the caller's.
    void addAccount(const Point& at, Account& account) const;
    void addEquations(const Point& at, Equations& equations) const;
    /// For a chamber with a moving wall: its volume now, in place of volume_m3, and how the volume grows
    /// with the unknown `travel`. The work −p·dV/dt is the caller's.
    void addEquations(const Point& at, Equations& equations, double volumeNow_m3, Unknown travel,
                      double volumePerTravel_m2) const;
};

/// Wall time constant [s] of the small volumes in fittings, tees, ports and switches, which are nearly all
/// wall [common practice, no published source].
inline constexpr double kFittingWallTime_s = 0.05;

} // namespace pumpwright

#pragma once

#include <cmath>

namespace pumpwright {

/// What a law exchanges with the world outside the circuit at an instant, and what it holds. A run adds these
/// up: what came in has gone out or is held.
struct Account {
    double energyIn_W = 0;
    double energyOut_W = 0;
    double held_J = 0;
    double gasIn_kgps = 0;
    double gasOut_kgps = 0;
    double held_kg = 0;
    double delivered_A = 0; ///< by sources, in either direction

    /// Energy from outside; below zero it goes out.
    void bringIn(double power_W) { (power_W >= 0 ? energyIn_W : energyOut_W) += std::abs(power_W); }
    /// Heat, light and work to the outside; below zero it comes in.
    void giveOff(double power_W) { bringIn(-power_W); }
    /// Gas from the atmosphere with its enthalpy; below zero it goes out.
    void bringInGas(double flow_kgps, double enthalpy_Jperkg) {
        (flow_kgps >= 0 ? gasIn_kgps : gasOut_kgps) += std::abs(flow_kgps);
        bringIn(flow_kgps * enthalpy_Jperkg);
    }
};

} // namespace pumpwright

#pragma once

#include <span>
#include <string_view>

namespace pumpwright {

/// Insulation of a wire by the conductor temperature that it stands for life.
struct InsulationClass {
    std::string_view id; ///< stored in files: "T105"
    std::string_view label;
    double maxTemperature_K;
};

/// From the coolest to the hottest.
std::span<const InsulationClass> insulationClasses();

/// The class with this id, or nullptr.
const InsulationClass* findInsulation(std::string_view id);

/// [Ω·m] of annealed copper of 100 % IACS. Linear in the temperature; never below a tenth of the value at 20
/// °C.
double copperResistivity_ohmm(double temperature_K);
/// Its slope [Ω·m/K].
double copperResistivitySlope(double temperature_K);

/// R(T)/R(20 °C) of copper windings.
double copperWarmShare(double temperature_K);

/// Current [A] that a single copper wire may carry without a break.
///
/// `bundled` counts the loaded wires of its bundle, itself included. Zero where the surroundings are as hot
/// as the insulation stands; an unknown insulation counts as the coolest class.
double ampacity_A(double area_m2, std::string_view insulation, double ambient_K, int bundled);

/// Heat of one metre of wire.
struct WireHeat {
    double capacity_JperKm;
    double resistance_KmperW; ///< to the surroundings, in its bundle
};

WireHeat wireHeat(double area_m2, int bundled);

/// Share of the current that is left to each of `bundled` loaded wires.
double bundleShare(int bundled);

} // namespace pumpwright

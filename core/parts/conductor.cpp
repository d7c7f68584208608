#include "core/parts/conductor.h"

#include "core/parts/saturation.h"
#include "core/units/constants.h"
#include "core/units/text.h"
#include "core/units/wire_size.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

constexpr double kTableAmbient_K = kZeroCelsius_K + 30;
constexpr double kEngineSpaceAmbient_K = kZeroCelsius_K + 50;

constexpr std::size_t kClassCount = 6;
constexpr std::array<InsulationClass, kClassCount> kClasses{{
    {"T60", words("60 °C"), 333.15},
    {"T75", words("75 °C"), 348.15},
    {"T80", words("80 °C (PVC)"), 353.15},
    {"T90", words("90 °C"), 363.15},
    {"T105", words("105 °C (heat-resistant PVC)"), 378.15},
    {"T125", words("125 °C (cross-linked polyethylene)"), 398.15},
}};

struct AmpacityRow {
    int gauge;
    std::array<double, kClassCount> current_A; ///< in the order of kClasses
};

/// 33 CFR 183.425, Table 5: allowable amperage of copper conductors at 30 °C in boats under 50 V.
constexpr std::array<AmpacityRow, 9> kTable5{{
    {18, {10, 10, 15, 20, 20, 25}},
    {16, {15, 15, 20, 25, 25, 30}},
    {14, {20, 20, 25, 30, 35, 40}},
    {12, {25, 25, 35, 40, 45, 50}},
    {10, {40, 40, 50, 55, 60, 70}},
    {8, {55, 65, 70, 70, 80, 90}},
    {6, {80, 95, 100, 100, 120, 125}},
    {4, {105, 125, 130, 135, 160, 170}},
    {2, {140, 170, 175, 180, 210, 225}},
}};

/// Factors for an engine space of 50 °C, note 1 to the same table: 0.85 as printed in wire makers'
/// engine-space columns, the others values from memory of 33 CFR 183.425.
constexpr std::array<double, kClassCount> kEngineSpaceShare{0.58, 0.75, 0.78, 0.82, 0.85, 0.89};

/// Beyond the rows the current goes with this power of the area, about as it does within them. Common
/// practice, no published source: the regulation allows no wire below 18 AWG.
constexpr double kAreaPower = 0.6;

/// Heat, values from memory of textbook heat transfer: copper and PVC per volume [J/m³K], PVC [W/mK], still
/// air with radiation [W/m²K].
constexpr double kCopperHeat = 3.44e6;
constexpr double kInsulationHeat = 1.5e6;
constexpr double kInsulationConductivity = 0.17;
constexpr double kSurfaceTransfer = 20;
/// A stranded conductor is this much thicker than a solid one of the same area.
constexpr double kStrandedDiameterShare = 1.12;

std::size_t classIndex(std::string_view id) {
    const auto found = std::find_if(kClasses.begin(), kClasses.end(),
                                    [&](const InsulationClass& one) { return one.id == id; });
    return found == kClasses.end() ? 0 : static_cast<std::size_t>(found - kClasses.begin());
}

double tableCurrent_A(double area_m2, std::size_t column) {
    const auto first = kTable5.begin();
    const auto next = std::find_if(first, kTable5.end(),
                                   [&](const AmpacityRow& row) { return awgArea_m2(row.gauge) >= area_m2; });
    if (next == first || next == kTable5.end()) {
        const AmpacityRow& edge = next == first ? kTable5.front() : kTable5.back();
        return edge.current_A[column] * std::pow(area_m2 / awgArea_m2(edge.gauge), kAreaPower);
    }
    const AmpacityRow& low = *std::prev(next);
    const double lowArea_m2 = awgArea_m2(low.gauge);
    const double share = std::log(area_m2 / lowArea_m2) / std::log(awgArea_m2(next->gauge) / lowArea_m2);
    return low.current_A[column] * std::pow(next->current_A[column] / low.current_A[column], share);
}

/// 1 up to 30 °C, the printed factor at 50 °C, 0 at the insulation's limit. Between and beyond as a power of
/// the temperature rise that is left; the power comes out near ½, as heat going with the current squared
/// asks.
double ambientShare(std::size_t column, double ambient_K) {
    const double limit_K = kClasses[column].maxTemperature_K;
    if (ambient_K <= kTableAmbient_K) {
        return 1;
    }
    if (ambient_K >= limit_K) {
        return 0;
    }
    const auto left = [&](double at_K) { return (limit_K - at_K) / (limit_K - kTableAmbient_K); };
    const double power = std::log(kEngineSpaceShare[column]) / std::log(left(kEngineSpaceAmbient_K));
    return std::pow(left(ambient_K), power);
}

} // namespace

std::span<const InsulationClass> insulationClasses() {
    return kClasses;
}

const InsulationClass* findInsulation(std::string_view id) {
    const InsulationClass& found = kClasses[classIndex(id)];
    return found.id == id ? &found : nullptr;
}

double copperWarmShare(double temperature_K) {
    return copperResistivity_ohmm(temperature_K) / kCopperResistivity_OhmM;
}

double copperResistivity_ohmm(double temperature_K) {
    const double share = 1 + kCopperTemperatureCoefficient_perK * (temperature_K - kCopperReference_K);
    return kCopperResistivity_OhmM * (0.1 + smoothRamp(share - 0.1, 0.02).value);
}

double copperResistivitySlope(double temperature_K) {
    const double share = 1 + kCopperTemperatureCoefficient_perK * (temperature_K - kCopperReference_K);
    return kCopperResistivity_OhmM * kCopperTemperatureCoefficient_perK * smoothRamp(share - 0.1, 0.02).slope;
}

/// The wall is assumed, as thin-wall road-vehicle wire has it: a fifth of the conductor, 0.28 to 0.65 mm.
WireHeat wireHeat(double area_m2, int bundled) {
    const double conductor_m = kStrandedDiameterShare * std::sqrt(4 * area_m2 / std::numbers::pi);
    const double wall_m = std::clamp(0.2 * conductor_m, 0.28e-3, 0.65e-3);
    const double outer_m = conductor_m + 2 * wall_m;
    const double insulation_m2 = std::numbers::pi / 4 * (outer_m * outer_m - conductor_m * conductor_m);
    const double through = std::log(outer_m / conductor_m) / (2 * std::numbers::pi * kInsulationConductivity);
    const double off = 1 / (kSurfaceTransfer * std::numbers::pi * outer_m);
    // In a bundle the same rise is reached at bundleShare() of the current, so with its square of the heat.
    const double share = bundleShare(bundled);
    return {area_m2 * kCopperHeat + insulation_m2 * kInsulationHeat, (through + off) / (share * share)};
}

double bundleShare(int bundled) {
    // Note 2 to Table 5, values from memory of 33 CFR 183.425. Printed for circuits of 50 V and more, taken
    // here for 12 V too: a wire's heat does not ask for the voltage.
    if (bundled < 3) {
        return 1;
    }
    if (bundled < 4) {
        return 0.70;
    }
    if (bundled < 7) {
        return 0.60;
    }
    return bundled < 25 ? 0.50 : 0.40;
}

double ampacity_A(double area_m2, std::string_view insulation, double ambient_K, int bundled) {
    const std::size_t column = classIndex(insulation);
    return tableCurrent_A(area_m2, column) * ambientShare(column, ambient_K) * bundleShare(bundled);
}

} // namespace pumpwright

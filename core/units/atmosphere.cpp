#include "core/units/atmosphere.h"

#include "core/units/constants.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

// The lowest layer of ISO 2533, where temperature falls evenly with altitude.
constexpr double kLowest_m = -2000.0;
constexpr double kHighest_m = 11000.0;

} // namespace

double standardTemperature_K(double altitude_m) {
    return kSeaLevelTemperature_K - kTroposphereLapse_KPerM * std::clamp(altitude_m, kLowest_m, kHighest_m);
}

/// Hydrostatic balance with a constant lapse rate [ISO 2533, 2.8].
double standardPressure_Pa(double altitude_m) {
    constexpr double kExponent =
        kStandardGravity_mPerS2 / (kAirGasConstant_JPerKgK * kTroposphereLapse_KPerM);
    return kStandardAtmosphere_Pa *
           std::pow(standardTemperature_K(altitude_m) / kSeaLevelTemperature_K, kExponent);
}

double standardDensity_kgPerM3(double altitude_m) {
    return airDensity_kgPerM3(AbsolutePressure(standardPressure_Pa(altitude_m)),
                              Temperature(standardTemperature_K(altitude_m)));
}

double airDensity_kgPerM3(AbsolutePressure pressure, Temperature temperature) {
    return pressure.si() / (kAirGasConstant_JPerKgK * temperature.si());
}

/// [ISO 2533, 2.13]
double airViscosity_PaS(Temperature temperature) {
    const double kelvin = temperature.si();
    return kSutherlandFactor * kelvin * std::sqrt(kelvin) / (kelvin + kSutherlandTemperature_K);
}

} // namespace pumpwright

#include "core/units/atmosphere.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {

double standardPressure_Pa(double altitude_m)
{
    const double temperature_K = 288.15 - 0.0065 * std::clamp(altitude_m, -2000.0, 11000.0);
    return 101325.0 * std::pow(temperature_K / 288.15, 5.25588);
}

} // namespace pumpwright

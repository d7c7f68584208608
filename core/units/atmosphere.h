#pragma once

#include "core/units/pressure.h"
#include "core/units/temperature.h"

namespace pumpwright {

/// Pressure [Pa] of the standard atmosphere at a geopotential altitude of −2000…11000 m (clamped) [ISO 2533].
double standardPressure_Pa(double altitude_m);

/// Its temperature [K] and density [kg/m³], with the same range.
double standardTemperature_K(double altitude_m);
double standardDensity_kgPerM3(double altitude_m);

/// [kg/m³], dry air as an ideal gas.
double airDensity_kgPerM3(AbsolutePressure pressure, Temperature temperature);

/// Dynamic viscosity of air by Sutherland's formula [Pa·s]; it does not depend on pressure.
double airViscosity_PaS(Temperature temperature);

} // namespace pumpwright

#pragma once

namespace pumpwright {

/// Pressure [Pa] of the standard atmosphere at a geopotential altitude of −2000…11000 m (clamped) [ISO 2533].
double standardPressure_Pa(double altitude_m);

} // namespace pumpwright

#pragma once

#include "core/parts/saturation.h"

namespace pumpwright {

/// [V] of a rested 12 V lead-acid battery at 25 °C over its state of charge (0…1), and its slope.
///
/// Beyond the table: a discharged battery's voltage dies away, a full one's rises steeply, which is how it
/// stops taking charge.
SmoothValue openCircuitVoltage_V(double stateOfCharge_share);

} // namespace pumpwright

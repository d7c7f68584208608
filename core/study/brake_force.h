#pragma once

#include "core/circuit/circuit.h"

#include <optional>

namespace pumpwright {

/// [N] on the pedal for a deceleration [m/s²] that the brakes alone bring, with full assist: the booster's
/// law the other way round. At most what brings the vehicle to the limit of the road's grip; 0 for none.
double pedalForce_N(const Part& booster, double deceleration_mps2);

/// The first booster of the circuit, or nullptr.
const Part* firstBooster(const Circuit& circuit);

} // namespace pumpwright

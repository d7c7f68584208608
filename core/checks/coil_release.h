#pragma once

#include "core/parts/features.h"

namespace pumpwright {

/// [s] in which the current of a coil (at 20 °C) that has been fed by `supply_V` falls to its drop-out
/// current while `clamp_V` stands across it, of a diode, or of a diode and a zener: L/R·ln((I0 + Vc/R)/(Irel
/// + Vc/R)). The armature's travel comes on top. Zero where the coil holds no longer.
double releaseTime_s(const Coil& coil, double supply_V, double clamp_V);

} // namespace pumpwright

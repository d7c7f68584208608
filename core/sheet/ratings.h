#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/part_kind.h"

#include <string>

namespace pumpwright {

/// What a buyer must ask for: "15 A, type C" of a fuse, "coil 90 Ω with diode; contact 40 A" of a relay; of a
/// part without electrical ratings the values that its kind states first.
std::string ratingsText(const Part& part);

/// Whether a choice says how the drive is simulated (where in its band a fuse opens, how a switch stands at
/// the start) and not what is bought or set.
bool isAssumption(const ChoiceSpec& choice);

} // namespace pumpwright

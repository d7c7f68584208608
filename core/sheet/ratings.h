#pragma once

#include "core/circuit/circuit.h"

#include <string>

namespace pumpwright {

/// What a buyer must ask for: "15 A, type C" of a fuse, "coil 90 Ω with diode; contact 40 A" of a relay; of a
/// part without electrical ratings the values that its kind states first.
std::string ratingsText(const Part& part);

} // namespace pumpwright

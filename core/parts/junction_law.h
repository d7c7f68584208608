#pragma once

#include "core/parts/junction.h"

#include <memory>

namespace pumpwright {

/// The law of a part that is nothing but one junction, with its current as probe.
std::unique_ptr<Law> junctionLaw(Unknown anode, Unknown cathode, const JunctionValues& values);

} // namespace pumpwright

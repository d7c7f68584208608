#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/recording.h"

#include <string>

namespace pumpwright {

/// A head line, then all channels at times `every_s` apart, in SI units.
std::string samplesCsv(const Circuit& circuit, const Recording& recording, double every_s);

} // namespace pumpwright

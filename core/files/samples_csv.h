#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/recording.h"

#include <string>

namespace pumpwright {

/// What a channel is called: "K1 coilCurrent"; at terminals and ports, which have one quantity each, "K1:86".
std::string channelName(const Circuit& circuit, const ChannelKey& key);

/// A head line, then all channels at times `every_s` apart, in SI units.
std::string samplesCsv(const Circuit& circuit, const Recording& recording, double every_s);

} // namespace pumpwright

#pragma once

#include "core/simulate/recording.h"

#include <string>
#include <vector>

namespace pumpwright {

/// One measured quantity over time, to be laid over the channel of the simulation that it belongs to.
struct LogTrace {
    ChannelKey key;
    std::string name; ///< "A1:vacuum"
    QuantityKind kind = QuantityKind::Number;
    std::vector<double> times_s; ///< of the drive; rising
    std::vector<double> values;  ///< SI
};

/// What was measured on the bench or in the car.
struct BenchLog {
    std::vector<LogTrace> traces;
};

} // namespace pumpwright

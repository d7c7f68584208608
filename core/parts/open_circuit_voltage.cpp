#include "core/parts/open_circuit_voltage.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

/// Open-circuit voltage at 0, 25, 50, 75 and 100 %, as encyclopedias of lead-acid batteries print it; other
/// lists differ by 0.1 V, and by 0.3 V for an empty battery.
constexpr std::array kTable_V{11.89, 12.06, 12.24, 12.45, 12.65};
constexpr double kStep = 0.25;

/// Beyond the ends, common practice without a published source: an empty battery has lost two thirds of its
/// voltage after another tenth of its capacity; a full one reaches 14 V with about one hundredth more.
constexpr double kEmptyDecay = 10;
constexpr double kFullRise_V = 100;

} // namespace

SmoothValue openCircuitVoltage_V(double stateOfCharge_share) {
    if (stateOfCharge_share < 0) {
        const double left = std::exp(kEmptyDecay * stateOfCharge_share);
        return {kTable_V.front() * left, kTable_V.front() * left * kEmptyDecay};
    }
    if (stateOfCharge_share > 1) {
        return {kTable_V.back() + kFullRise_V * (stateOfCharge_share - 1), kFullRise_V};
    }
    const auto section = std::min(static_cast<std::size_t>(stateOfCharge_share / kStep), kTable_V.size() - 2);
    const double slope = (kTable_V[section + 1] - kTable_V[section]) / kStep;
    return {kTable_V[section] + slope * (stateOfCharge_share - kStep * static_cast<double>(section)), slope};
}

} // namespace pumpwright

#include "core/checks/coil_release.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {

double releaseTime_s(const Coil& coil, double supply_V, double clamp_V) {
    const double held_A = supply_V / coil.resistance_ohm;
    const double clamp_A = clamp_V / coil.resistance_ohm;
    const double ratio = (held_A + clamp_A) / (coil.dropOut_A + clamp_A);
    return coil.inductance_H / coil.resistance_ohm * std::max(0.0, std::log(ratio));
}

} // namespace pumpwright

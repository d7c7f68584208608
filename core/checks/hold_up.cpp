#include "core/checks/hold_up.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {

double holdUp_s(double capacitance_F, double load_ohm, double start_V, double least_V) {
    return load_ohm * capacitance_F * std::max(0.0, std::log(start_V / least_V));
}

double constantHoldUp_s(double capacitance_F, double load_A, double start_V, double least_V) {
    return capacitance_F * std::max(0.0, start_V - least_V) / load_A;
}

} // namespace pumpwright

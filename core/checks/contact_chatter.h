#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/recording.h"

#include <vector>

namespace pumpwright {

// Two closings within two seconds are a restart; three are chatter. Common practice, no published source.
inline constexpr double kChatterWindow_s = 2;
inline constexpr double kAllowedClosings = 2;

/// Times at which a contact closes, without its bounce. `state` is the channel of its state.
std::vector<double> closings_s(const Channel& state);

/// The window in which a contact closes most often.
struct ContactChatter {
    double closings = 0; ///< within the window, without bounce and without those that the plan commands
    double at_s = 0;

    bool chatters() const { return closings > kAllowedClosings; }
};

/// `state` is the channel of the contact's state.
ContactChatter contactChatter(const DrivePlan& plan, const Channel& state);

/// The worst of all contacts of the circuit.
ContactChatter worstChatter(const Circuit& circuit, const Recording& recording);

} // namespace pumpwright

#pragma once

#include "core/checks/survey.h"

#include <vector>

namespace pumpwright {

/// What driver and vacuum do to the contacts: all hand switches on, the foot on the pedal, the vacuum below
/// every set point.
struct Operation {
    bool handOn = false;
    bool pedalDown = false;
    bool vacuumLow = false;
};

/// A circuit that is left alone: relays, timers and solid-state relays have followed what feeds them.
struct StandingState {
    std::vector<bool> fed;   ///< by number of the load path: current flows through it
    std::vector<bool> shuts; ///< by number of the branch: a contact that is closed
};

/// Whether a load's way there or back leads over a branch of this sort.
bool leadsOver(const Survey& survey, const LoadPath& path, BranchSort sort);

/// A timer for single shots has made its shot and is off. Relays that switch themselves off and on for ever
/// have no such state; a few rounds of following one another decide then.
StandingState standingState(const Survey& survey, const Operation& operation);

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/recording.h"

#include <optional>

namespace pumpwright {

/// A drive in the few numbers by which studies compare circuits. The worst of all boosters, the sum of all
/// motors.
struct DriveNumbers {
    double mostClosings =
        0;                 ///< of one contact in kChatterWindow_s, without bounce and what the plan commands
    bool chatters = false; ///< more of them than kAllowedClosings
    int presses = 0;
    int lackingPresses = 0;                ///< without full assist
    double leastAssistShare = 1;           ///< of the assist asked for, at the worst press
    std::optional<double> lowestVacuum_Pa; ///< while the foot is on the pedal; nothing without a press
    int pumpStarts = 0;
    double pumpRunning_s = 0;
    friend bool operator==(const DriveNumbers&, const DriveNumbers&) = default;
};

DriveNumbers driveNumbers(const Circuit& circuit, const Recording& recording);

} // namespace pumpwright

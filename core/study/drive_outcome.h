#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/drive.h"
#include "core/study/drive_numbers.h"

#include <array>
#include <string>

namespace pumpwright {

/// A circuit driven over its plan and checked, in numbers.
struct DriveOutcome {
    DriveStatus status = DriveStatus::Finished;
    std::string message; ///< why the drive could not be finished
    DriveNumbers numbers;
    int reservePresses = 0;
    std::array<int, 4> openFindings{}; ///< by signal word, worst first; without those that somebody accepted
    friend bool operator==(const DriveOutcome&, const DriveOutcome&) = default;
};

/// `stop` turns true when the outcome is not wanted any more. It is then Cancelled, as that of a cancelled
/// drive is, and nothing else of it is told.
DriveOutcome driveOutcome(const Circuit& circuit, const DriveResult& drive, const std::atomic<bool>& stop);
/// Drives first.
DriveOutcome driveOutcome(const Circuit& circuit, const std::atomic<bool>& stop);

/// More presses than these are not counted.
inline constexpr int kMostReservePresses = 12;

/// How many times in a row the plan's hardest press gets full assist after the drive's end, with the pump
/// dead: what the stored vacuum is good for. 0 to kMostReservePresses.
int reservePresses(const Circuit& circuit, const Recording& recording,
                   const std::atomic<bool>* cancel = nullptr);

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/drive.h"
#include "core/study/drive_numbers.h"
#include "core/study/study_run.h"

#include <array>
#include <string>
#include <vector>

namespace pumpwright {

/// The circuit as it is drawn, or with one of its trials, driven over its plan and checked.
struct TrialOutcome {
    std::string id; ///< of the trial; empty for the circuit as it is drawn
    std::string name;
    Circuit circuit; ///< with the trial's edit
    DriveStatus status = DriveStatus::Finished;
    std::string message; ///< why the drive could not be finished
    DriveNumbers numbers;
    int reservePresses = 0;
    std::array<int, 4> openFindings{}; ///< by signal word, worst first; without those that somebody accepted
    std::vector<PartId> addedParts;    ///< that the circuit as it is drawn does not have
};

/// More presses than these are not counted.
inline constexpr int kMostReservePresses = 12;

/// How many times in a row the plan's hardest press gets full assist after the drive's end, with the pump
/// dead: what the stored vacuum is good for. 0 to kMostReservePresses.
int reservePresses(const Circuit& circuit, const Recording& recording);

/// The circuit with a trial's edit; what the edit leaves without a place is taken away.
Circuit trialCircuit(const Circuit& circuit, const Trial& trial);

/// The circuit as it is drawn first, then its trials in the order of their ids; fewer if it was cancelled.
std::vector<TrialOutcome> runTrials(const Circuit& circuit, const StudyOptions& options = {});

} // namespace pumpwright

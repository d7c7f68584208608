#pragma once

#include "core/circuit/circuit.h"
#include "core/study/drive_outcome.h"
#include "core/study/study_run.h"

#include <functional>
#include <string>
#include <vector>

namespace pumpwright {

/// The circuit as it is drawn, or with one of its trials, driven over its plan and checked.
struct TrialOutcome : DriveOutcome {
    std::string id; ///< of the trial; empty for the circuit as it is drawn
    std::string name;
    Circuit circuit;                ///< with the trial's edit
    std::vector<PartId> addedParts; ///< that the circuit as it is drawn does not have
    std::vector<Channel> traces;    ///< vacuum at each booster, current of each pump
};

/// The circuit with a trial's edit; what the edit leaves without a place is taken away.
Circuit trialCircuit(const Circuit& circuit, const Trial& trial);

struct TrialOptions : StudyOptions {
    std::function<void(const std::vector<TrialOutcome>&)> partial; ///< called with all so far, after each
};

/// The circuit as it is drawn first, then its trials in the order of their ids; fewer if it was cancelled.
std::vector<TrialOutcome> runTrials(const Circuit& circuit, const TrialOptions& options = {});

} // namespace pumpwright

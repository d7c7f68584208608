#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/drive.h"

#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// Vacuum at one port over the whole drive.
struct VacuumSummary {
    PartId part;
    std::string port;
    double lowest_Pa = 0;
    double highest_Pa = 0;
    double atEnd_Pa = 0;
};

/// What one press found and got, at one booster.
struct PressSummary {
    PartId booster;
    double at_s = 0;
    double force_N = 0;
    double vacuumBefore_Pa = 0;
    double vacuumLowest_Pa = 0; ///< until the foot is off
    double assist_N = 0;        ///< highest during the press
    double assistAsked_N = 0;   ///< highest during the press
};

/// One motor: a start is a rise of its current from below to above a tenth of its running current.
struct MotorSummary {
    PartId part;
    int starts = 0;
    double running_s = 0;
    double highest_A = 0;
};

/// One contact.
struct ContactSummary {
    PartId part;
    std::string contact; ///< empty for the first of a part
    int closings = 0;
    double closed_s = 0;
    int mostClosingsInOneSecond = 0; ///< how fast it chatters, if it does
};

/// What a drive comes to, in SI units.
struct DriveSummary {
    std::vector<VacuumSummary> vacuum;
    std::vector<PressSummary> presses;
    std::vector<MotorSummary> motors;
    std::vector<ContactSummary> contacts;
};

DriveSummary driveSummary(const Circuit& circuit, const Recording& recording);

} // namespace pumpwright

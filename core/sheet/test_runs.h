#pragma once

#include "core/sheet/workings.h"
#include "core/simulate/drive.h"

namespace pumpwright {

/// The circuit simulated as it is commissioned: vehicle standing, nothing charging, at the drive plan's
/// ambient temperature. All hand switches are off first and are switched on at `kSwitchOn_s`.
struct TestRuns {
    static constexpr double kSwitchOn_s = 5;
    static constexpr double kRest_s = 300;
    static constexpr double kPressForce_N = 100;
    static constexpr int kMostPresses = 12;

    Recording pumpDown;          ///< from no vacuum
    bool pedalHeld = false;      ///< in it: the pump runs only while the pedal is pressed
    double reached_Pa = 0;       ///< vacuum in the booster at its end; where the other runs begin
    Recording rest;              ///< all switches off
    Recording presses;           ///< switches on, a press at each of `press_s`
    Recording unplugged;         ///< the same without the wires of the first pump
    std::vector<double> press_s; ///< when the presses of these two begin
};

TestRuns testRunsOf(const Circuit& circuit, const Workings& workings);

/// The vacuum that counts: at the first booster, or at the first pump where there is none. Null where the
/// recording has neither.
const Channel* vacuumThatCounts(const Recording& recording, const Circuit& circuit, const Workings& workings);

/// [A] above which a pump's motor counts as running: a tenth of its running current.
double runningThreshold_A(const Part& pump);

} // namespace pumpwright

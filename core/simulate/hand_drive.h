#pragma once

#include "core/simulate/drive_run.h"

namespace pumpwright {

/// A drive without a plan: somebody moves the switches and the pedal while it goes on. It is the same run as
/// any other; what was done becomes a plan, and that plan over again gives the same drive.
class HandDrive {
public:
    /// Of the circuit's plan only what holds before anything is done: temperature, vacuum, altitude and
    /// whether the engine runs at the start. `options` must outlive the drive.
    HandDrive(const Circuit& circuit, const DriveOptions& options);

    /// Brings the drive to this time [s]; false where it ended before, as run().message() says.
    bool advanceTo(double time_s) { return m_run.advanceTo(time_s); }

    // What is done now. False where the drive ended by it. Doing again what is done already is nothing.
    bool pressPedal(double force_N); ///< on the pedal pad, until it is released
    bool releasePedal();
    bool moveSwitch(const PartId& part, bool on);
    bool setCharging(bool charging);

    bool isPedalPressed() const { return m_pressed; }
    bool isCharging() const { return m_charging; }
    const DriveRun& run() const { return m_run; }

    /// What was done so far, as the plan of a drive that lasts until now.
    DrivePlan plan() const;

private:
    static Circuit atRest(const Circuit& circuit);
    bool follow() { return m_run.followPlan(m_plan); }

    DrivePlan m_plan;
    bool m_pressed = false;
    bool m_charging = false;
    DriveRun m_run;
};

} // namespace pumpwright

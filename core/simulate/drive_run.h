#pragma once

#include "core/simulate/bookkeeper.h"
#include "core/simulate/drive.h"
#include "core/simulate/drive_system.h"
#include "core/simulate/event_finder.h"
#include "core/simulate/radau.h"
#include "core/simulate/recorder.h"

#include <span>
#include <string>
#include <vector>

namespace pumpwright {

/// One run of a circuit, brought forward bit by bit: over a whole plan at once, or step for step with a
/// clock while somebody operates the switches.
class DriveRun {
public:
    /// `options` must outlive the run.
    DriveRun(const Circuit& circuit, const DriveOptions& options);

    /// Brings the run to this time [s] of the drive. False where it ended before: result() says why. Steps
    /// end there, so that many short advances cost more than one long one.
    bool advanceTo(double time_s);
    /// From now on what happens to the vehicle follows this plan, which must be like the one before up to
    /// now. False where the run ended by it.
    bool followPlan(const DrivePlan& plan);

    /// How far it came [s].
    double time_s() const { return m_time_s; }
    DriveStatus status() const { return m_result.status; }
    const std::string& message() const { return m_result.message; }

    /// What was recorded from `from_s` up to now, as a recording of its own.
    Recording recordingSince(double from_s) const { return m_recorder.since(from_s, m_time_s); }
    /// Ends the run; nothing may be asked of it any more.
    DriveResult finish();

private:
    bool begin();
    bool stand();
    bool advance(double latest_s);
    bool makeStep(double latest_s);
    bool tryStep(double latest_s);
    bool skipTooFine();
    bool repeatStep(double to_s);
    bool settle(double within_s);
    bool restart();
    bool happenAll(std::span<const EventFinder::Due> due);
    void record(double from_s, double to_s);
    void recordNow(bool jump);
    void report();
    bool stop(const std::string& why, const std::string& id);

    const DriveOptions& m_options;
    DrivePlan m_plan;
    bool m_begun = false;
    DriveSystem m_system;
    RadauStepper m_stepper;
    EventFinder m_events;
    Recorder m_recorder;
    Bookkeeper m_books;
    double m_time_s = 0; ///< below zero while the vehicle stands before the drive
    std::vector<double> m_x;
    std::vector<double> m_values;
    std::vector<double> m_between;
    std::vector<double> m_before; ///< f, before the events of an instant and after them
    std::vector<double> m_after;
    double m_lastStep_s;
    long m_eventCount = 0;
    double m_crowdBegin_s = 0;
    int m_crowd = 0;
    DriveResult m_result;
};

} // namespace pumpwright

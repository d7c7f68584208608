#pragma once

#include "core/simulate/drive.h"
#include "core/study/failed_circuit.h"
#include "core/study/study_run.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// What a breakdown leads to, worst first.
enum class Consequence {
    SilentLoss,       ///< a press lacks assist that had it, and nothing warned before it
    WireOverheats,    ///< assist stays, but a wire gets hotter than its insulation stands
    LossAfterWarning, ///< a press lacks assist; a lamp or buzzer warned before it
    Noticed,          ///< assist stays; the driver sees or hears something
    Unnoticed,        ///< assist stays and nobody notices: it waits for the next failure
};

std::string_view consequenceName(Consequence consequence); ///< "assist lost without warning"

/// One failure, or two at once, driven over the plan and held against the sound drive.
struct BreakdownOutcome {
    std::vector<Breakdown> broken; ///< one, or two of a pair
    Consequence consequence = Consequence::Unnoticed;
    int presses = 0;                     ///< that the drive came to
    int lacking = 0;                     ///< of them without full assist that have it in the sound drive
    double worstShare = 1;               ///< of the assist asked for, at the worst of them
    std::optional<double> lostAt_s;      ///< the first of them
    std::optional<double> warnedAt_s;    ///< a lamp or buzzer begins to differ from the sound drive
    std::vector<std::string> noticed;    ///< by the driver, in plain words: "P1 lights from 31 s"
    std::vector<PartId> warned;          ///< lamps and buzzers that are on where they are off when sound
    std::vector<PartId> chatters;        ///< parts whose contact chatters, and does not when sound
    std::vector<PartId> openedFuses;     ///< that stay whole in the sound drive
    std::vector<WireId> overheatedWires; ///< that do not overheat in the sound drive
    std::vector<PartId> stopped;         ///< loads that run or light in the sound drive, and never do here
    std::vector<PartId> runsOn;          ///< motors that do not stop any more
    DriveStatus status = DriveStatus::Finished;
    std::string message; ///< why the drive could not be finished

    /// A fuse opened and no wire came to harm.
    bool fuseSavedWires() const { return !openedFuses.empty() && overheatedWires.empty(); }
};

struct BreakdownOptions : StudyOptions {
    bool pairs = false; ///< every two failures of different parts, wires or hoses at once
    /// Called with each outcome as it comes, in no order of consequence.
    std::function<void(const BreakdownOutcome&)> partial;
};

struct BreakdownStudy {
    std::vector<BreakdownOutcome> outcomes; ///< worst first
    std::size_t total = 0;                  ///< how many there would have been
    bool isComplete() const { return outcomes.size() == total; }
};

/// Lets everything fail that breakdownsOf() names, one after the other. The same on any number of threads.
BreakdownStudy runBreakdowns(const Circuit& circuit, const BreakdownOptions& options = {});

} // namespace pumpwright

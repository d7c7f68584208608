#include "core/study/breakdowns.h"

#include "core/study/breakdown_outcome_p.h"
#include "core/units/text.h"

#include <algorithm>
#include <tuple>

namespace pumpwright {
namespace {

using Pair = std::vector<Breakdown>;

std::vector<Pair> jobsOf(const Circuit& circuit, bool pairs) {
    const std::vector<Breakdown> single = breakdownsOf(circuit);
    std::vector<Pair> jobs;
    for (std::size_t i = 0; i < single.size(); ++i) {
        if (!pairs) {
            jobs.push_back({single[i]});
            continue;
        }
        for (std::size_t j = i + 1; j < single.size(); ++j) {
            const bool same = single[i].subject == single[j].subject && single[i].id == single[j].id;
            if (!same) {
                jobs.push_back({single[i], single[j]});
            }
        }
    }
    return jobs;
}

Circuit brokenCircuit(Circuit circuit, const Pair& broken) {
    for (const Breakdown& breakdown : broken) {
        applyEdit(circuit, breakdownEdit(circuit, breakdown));
    }
    return circuit;
}

/// Worse ones first: by what comes of it, then by how little assist is left and how early it is lost.
bool worse(const BreakdownOutcome& a, const BreakdownOutcome& b) {
    constexpr double kNever = 1e300;
    return std::tuple(a.consequence, a.worstShare, a.lostAt_s.value_or(kNever)) <
           std::tuple(b.consequence, b.worstShare, b.lostAt_s.value_or(kNever));
}

} // namespace

std::string_view consequenceName(Consequence consequence) {
    switch (consequence) {
    case Consequence::SilentLoss:
        return words("assist lost without warning");
    case Consequence::WireOverheats:
        return words("wire overheats");
    case Consequence::LossAfterWarning:
        return words("assist lost after a warning");
    case Consequence::Noticed:
        return words("noticed, assist stays");
    case Consequence::Unnoticed:
        break;
    }
    return words("not noticed, assist stays");
}

BreakdownStudy runBreakdowns(const Circuit& circuit, const BreakdownOptions& options) {
    const std::vector<Pair> jobs = jobsOf(circuit, options.pairs);
    BreakdownStudy study;
    study.total = jobs.size();
    DriveOptions soundOptions;
    soundOptions.cancel = options.cancel;
    const SoundDrive sound{circuit, simulateDrive(circuit, soundOptions)};
    if (sound.drive.status == DriveStatus::Cancelled) {
        return study;
    }
    OrderedRun<BreakdownOutcome>::run(
        jobs.size(), options,
        [&](std::size_t index, const std::atomic<bool>& stop) {
            const Circuit broken = brokenCircuit(circuit, jobs[index]);
            DriveOptions driveOptions;
            driveOptions.cancel = &stop;
            driveOptions.balances = false;
            const DriveResult drive = simulateDrive(broken, driveOptions);
            BreakdownOutcome outcome = breakdownOutcome(sound, broken, drive);
            outcome.broken = jobs[index];
            return outcome;
        },
        [&](std::size_t, BreakdownOutcome outcome) {
            if (options.partial) {
                options.partial(outcome);
            }
            study.outcomes.push_back(std::move(outcome));
            return true;
        });
    std::ranges::stable_sort(study.outcomes, worse);
    return study;
}

} // namespace pumpwright

#include "core/checks/controls.h"
#include "core/checks/running_state.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// [s] over which a pump's duty is stated.
constexpr double kDutyWindow_s = 600;

struct Duty {
    double running_s = 0;
    double from_s = 0;
};

double overlap_s(const TimeSpan& run, double from_s, double to_s) {
    return std::max(0.0, std::min(run.to_s, to_s) - std::max(run.from_s, from_s));
}

/// The ten minutes with the longest running time: they begin with a run or end with one. A shorter drive
/// shows what it shows; what comes after it is taken as rest.
Duty busiest(const std::vector<TimeSpan>& runs) {
    Duty most;
    for (const TimeSpan& run : runs) {
        for (const double from_s : {run.from_s, run.to_s - kDutyWindow_s}) {
            double sum_s = 0;
            for (const TimeSpan& other : runs) {
                sum_s += overlap_s(other, from_s, from_s + kDutyWindow_s);
            }
            if (sum_s > most.running_s) {
                most = {sum_s, std::max(0.0, from_s)};
            }
        }
    }
    return most;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const std::size_t number : pumpPaths(survey)) {
        const LoadPath& pump = survey.loadPaths()[number];
        const Duty duty = busiest(runningSpans(survey, pump.part, pump.load));
        const double rated = survey.features(pump.part).pump->duty_share;
        if (rated <= 0 || duty.running_s <= rated * kDutyWindow_s) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {pump.part};
        finding.value = duty.running_s / kDutyWindow_s;
        finding.limit = rated;
        finding.kind = QuantityKind::Share;
        finding.at_s = duty.from_s;
        finding.what = say("{} runs for {} of the {} from {} on, a duty of {}; it is rated for {}.",
                           nameOf(survey.circuit(), pump.part), amount(duty.running_s, QuantityKind::Time),
                           amount(kDutyWindow_s, QuantityKind::Time), amount(duty.from_s, QuantityKind::Time),
                           amount(finding.value, finding.kind), amount(rated, finding.kind));
        finding.why =
            say("A pump beyond its duty gets hotter than its windings stand, and then the assist is gone.");
        finding.remedies = {{say("Look for leaks; a tight system is pumped down once and kept."), {}},
                            {say("Fit a pump with a larger flow or for continuous duty."), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kPumpDuty{"pump-duty",
                            words("Pump beyond its duty"),
                            SignalWord::Warning,
                            words("the pump's rated duty in ten minutes"),
                            true,
                            check};

} // namespace pumpwright

#include "core/checks/controls.h"
#include "core/checks/running_state.h"
#include "core/checks/set_point.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kHour_s = 3600;
/// [s] A drive of at least this length is taken to go on as it is. Common practice, no published source.
constexpr double kTypical_s = 600;

struct Starts {
    double perHour = 0;
    double from_s = 0;
};

/// The most starts in any hour; of a shorter drive that is long enough to tell, as many as it would come to.
Starts busiest(const std::vector<TimeSpan>& runs, double duration_s) {
    Starts most;
    std::size_t last = 0;
    for (std::size_t first = 0; first < runs.size(); ++first) {
        while (last < runs.size() && runs[last].from_s < runs[first].from_s + kHour_s) {
            ++last;
        }
        const auto count = static_cast<double>(last - first);
        most = count > most.perHour ? Starts{count, runs[first].from_s} : most;
    }
    if (duration_s >= kTypical_s && duration_s < kHour_s) {
        most.perHour *= kHour_s / duration_s;
    }
    return most;
}

std::vector<Remedy> remedies(const Survey& survey, const LoadPath& pump) {
    std::vector<Remedy> remedies;
    for (const PartId& part : controllingParts(survey, pump)) {
        if (auto remedy = widerDifferential(survey, part)) {
            remedies.push_back(std::move(*remedy));
        }
    }
    remedies.push_back(
        {say("Fit a reservoir, so that a press takes less of the vacuum; look for leaks."), {}});
    return remedies;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const Recording* recording = survey.recording();
    if (recording == nullptr) {
        return findings;
    }
    for (const std::size_t number : pumpPaths(survey)) {
        const LoadPath& pump = survey.loadPaths()[number];
        const double duration_s = recording->duration_s;
        const Starts starts = busiest(runningSpans(survey, pump.part, pump.load), duration_s);
        const double rated = survey.features(pump.part).pump->startsPerHour;
        if (rated <= 0 || starts.perHour <= rated) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {pump.part};
        finding.value = starts.perHour;
        finding.limit = rated;
        finding.at_s = starts.from_s;
        finding.what = say("{} starts {} times in an hour of this drive; it is rated for {}.",
                           nameOf(survey.circuit(), pump.part), whole(starts.perHour), whole(rated));
        finding.why = say("Each start is an inrush: brushes, contacts and windings wear with every one.");
        finding.remedies = remedies(survey, pump);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kPumpStarts{"pump-starts",
                              words("Pump starts too often"),
                              SignalWord::Caution,
                              words("the pump's rated starts in an hour"),
                              true,
                              check};

} // namespace pumpwright

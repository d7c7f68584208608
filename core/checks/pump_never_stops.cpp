#include "core/checks/carried_current.h"
#include "core/checks/running_state.h"
#include "core/checks/set_point.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// [s] A pump reaches full vacuum within a minute [Australian heavy-vehicle inspection criteria, vacuum
/// brakes].
constexpr double kLongestRun_s = 60;

/// Vacuum switches that stay closed during all of a run: what the pump does not reach.
std::vector<SetPoint> unreachedSetPoints(const Survey& survey, const TimeSpan& run) {
    std::vector<SetPoint> unreached;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort != BranchSort::Contact) {
            continue;
        }
        const auto setPoint = setPointOf(survey, branch.part);
        const Channel* state = contactChannel(survey, branch, probe::kContact);
        if (setPoint && state != nullptr && state->extremes(run.from_s, run.to_s).lowest > 0.5) {
            unreached.push_back(*setPoint);
        }
    }
    return unreached;
}

/// The longest run of a pump in the drive; pumps are the motors that parts have.
TimeSpan longestRun(const Survey& survey, const LoadPath& path) {
    TimeSpan longest;
    if (path.load.sort != LoadSort::Motor) {
        return longest;
    }
    for (const TimeSpan& span : runningSpans(survey, path.part, path.load)) {
        longest = span.length_s() > longest.length_s() ? span : longest;
    }
    return longest;
}

Finding findingFor(const Rule& rule, const Survey& survey, const PartId& pump, const TimeSpan& run) {
    const std::string name = nameOf(survey.circuit(), pump);
    Finding finding = newFinding(rule);
    finding.parts = {pump};
    finding.at_s = run.from_s;
    finding.value = run.length_s();
    finding.limit = kLongestRun_s;
    finding.kind = QuantityKind::Time;
    finding.what = say("{} runs for {} without a stop.", name, amount(run.length_s(), QuantityKind::Time));
    finding.why = say("A pump without a pause overheats and wears out, and then the assist is gone.");
    for (const SetPoint& setPoint : unreachedSetPoints(survey, run)) {
        finding.parts.push_back(setPoint.part);
        finding.what =
            say("{} {} opens at {}; the vacuum gets to {} only.", finding.what,
                nameOf(survey.circuit(), setPoint.part), amount(setPoint.opens_Pa, QuantityKind::GaugeVacuum),
                amount(setPoint.reached_Pa, QuantityKind::GaugeVacuum));
        if (auto remedy = lowerSetPoint(survey, setPoint)) {
            finding.remedies.push_back(std::move(*remedy));
        }
    }
    finding.remedies.push_back(
        {say("Look for leaks; fit a pump with a better ultimate vacuum or a larger flow."), {}});
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        const TimeSpan run = longestRun(survey, path);
        if (run.length_s() > kLongestRun_s) {
            findings.push_back(findingFor(rule, survey, path.part, run));
        }
    }
    return findings;
}

} // namespace

extern const Rule kPumpNeverStops{
    "pump-never-stops",
    words("Pump never reaches the set point"),
    SignalWord::Warning,
    words("Australian heavy-vehicle inspection criteria: full vacuum within 60 s"),
    true,
    check};

} // namespace pumpwright

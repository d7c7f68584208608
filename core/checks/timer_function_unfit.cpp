#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// What is wrong with a timer that commands a pump, empty if nothing is.
Text fault(const Timing& timing) {
    switch (timing.function) {
    case TimerFunction::SingleShot:
        return say("makes a single shot: the pump stops after the set time, however low the vacuum still is");
    case TimerFunction::DelayOnMake:
        return say("delays on make: the pump starts late, and not at all for a shorter signal");
    case TimerFunction::DelayOnRelease:
        return timing.retriggerable
                   ? Text()
                   : say("ignores a new signal during its delay: the run-on may end too early");
    }
    return {};
}

Remedy remedyFor(const Survey& survey, const PartId& id, const Timing& timing) {
    const std::string name = nameOf(survey.circuit(), id);
    if (timing.function == TimerFunction::DelayOnRelease) {
        return {say("Let a new signal start the time of {} anew.", name),
                choiceEdit(survey.circuit(), id, "retriggerable", "yes", say("Let {} start anew", name))};
    }
    return {say("Set {} to delay on release.", name),
            choiceEdit(survey.circuit(), id, "function", "delay-on-release",
                       say("Set {} to delay on release", name))};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::set<PartId> timers;
    for (const std::size_t number : pumpPaths(survey)) {
        for (const std::size_t contact : allControlsOf(survey, survey.loadPaths()[number])) {
            const PartId& part = survey.branches()[contact].part;
            if (survey.features(part).timing && !fault(*survey.features(part).timing).isEmpty()) {
                timers.insert(part);
            }
        }
    }
    std::vector<Finding> findings;
    for (const PartId& id : timers) {
        const Timing& timing = *survey.features(id).timing;
        Finding finding = newFinding(rule);
        finding.word =
            timing.function == TimerFunction::DelayOnRelease ? SignalWord::Caution : SignalWord::Warning;
        finding.parts = {id};
        finding.value = timing.delay_s;
        finding.limit = 0;
        finding.kind = QuantityKind::Time;
        finding.what = say("{} commands the pump and {}.", nameOf(survey.circuit(), id), fault(timing));
        finding.why =
            say("The run-on of a pump must start at once and begin anew with the last end of the signal.");
        finding.remedies = {remedyFor(survey, id, timing)};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kTimerFunctionUnfit{"timer-function-unfit",
                                      words("Timer cannot do what the pump needs"),
                                      SignalWord::Warning,
                                      words("IEC 60050-445-01-04, off-delay with control signal; "
                                            "retriggerable: common practice, no published source"),
                                      false,
                                      check};

} // namespace pumpwright

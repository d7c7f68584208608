#include "core/checks/press_assist.h"
#include "core/checks/set_point.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

struct Presses {
    int count = 0;
    int lacking = 0;
    PressAssist worst;
};

Presses judgeAll(const Survey& survey, const PartId& booster) {
    Presses presses;
    for (const PressAssist& press : pressAssists(survey.circuit().plan, *survey.recording(), booster)) {
        ++presses.count;
        if (!press.isFull()) {
            presses.worst =
                presses.lacking == 0 || press.share() < presses.worst.share() ? press : presses.worst;
            ++presses.lacking;
        }
    }
    return presses;
}

std::vector<Remedy> remedies() {
    return {
        {say("Let a vacuum switch start the pump, so that the vacuum is there before the first press."), {}},
        {say("Raise the set point of the vacuum switch, or fit a larger reservoir or pump."), {}},
        {say("Warn the driver of low vacuum with a lamp and a buzzer on a switch and fuse of their own."),
         {}}};
}

Finding findingFor(const Rule& rule, const Survey& survey, const PartId& booster, const Presses& presses) {
    const PressAssist& worst = presses.worst;
    Finding finding = newFinding(rule);
    finding.word = worst.share() < kDangerShare ? SignalWord::Danger : SignalWord::Warning;
    finding.parts = {booster};
    finding.value = std::max(0.0, worst.share());
    finding.limit = kFullAssistShare;
    finding.kind = QuantityKind::Share;
    finding.at_s = worst.at_s;
    finding.what =
        say("{} of {} of the drive {} full assist from {}; the worst, at {}, gets {} of the {} that it asks "
            "for ({}).",
            presses.lacking, pressesText(presses.count), presses.lacking == 1 ? say("lacks") : say("lack"),
            nameOf(survey.circuit(), booster), amount(worst.at_s, QuantityKind::Time),
            amount(worst.given_N, QuantityKind::Force), amount(worst.asked_N, QuantityKind::Force),
            amount(finding.value, finding.kind));
    finding.why = say("Without assist the pedal needs several times the force, and the vehicle stops later.");
    finding.remedies = remedies();
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    if (survey.recording() == nullptr) {
        return findings;
    }
    for (const auto& [id, part] : survey.circuit().parts) {
        const Presses presses = judgeAll(survey, id);
        if (presses.lacking > 0) {
            findings.push_back(findingFor(rule, survey, id, presses));
        }
    }
    return findings;
}

} // namespace

extern const Rule kPressWithoutAssist{"press-without-assist",
                                      words("Press without assist"),
                                      SignalWord::Danger,
                                      words("common practice, no published source"),
                                      true,
                                      check};

} // namespace pumpwright

#include "core/checks/booster_reserve.h"
#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/press_assist.h"
#include "core/checks/standing_state.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// Hand switches without which the pump does not run.
std::vector<PartId> keysOf(const Survey& survey, const LoadPath& pump) {
    std::vector<PartId> keys;
    for (const std::size_t contact : allControlsOf(survey, pump)) {
        const Branch& branch = survey.branches()[contact];
        if (branch.by == Operator::Hand) {
            keys.push_back(branch.part);
        }
    }
    return keys;
}

/// Presses of the plan after one of these switches has been turned off and before it is on again.
int pressesWithKeyOff(const DrivePlan& plan, const std::vector<PartId>& keys) {
    int presses = 0;
    for (const Press& press : plan.presses) {
        const auto turnedOff = [&](const PartId& key) {
            bool off = false;
            for (const SwitchMove& move : plan.switchMoves) {
                off = move.part == key && move.at_s <= press.at_s ? !move.on : off;
            }
            return off;
        };
        presses += std::any_of(keys.begin(), keys.end(), turnedOff) ? 1 : 0;
    }
    return presses;
}

/// Presses with assist that are in store when the pump stops; none without a booster or vacuum switch.
int presentReserve(const Survey& survey) {
    const double force_N = usualPedalForce_N(survey.circuit().plan);
    int reserve = 0;
    for (const BoosterReserve& one : boosterReserves(survey)) {
        if (one.kept_Pa) {
            reserve = std::max(reserve, reservePresses(one.booster, *one.kept_Pa, force_N, kDangerShare));
        }
    }
    return reserve;
}

Finding findingFor(const Rule& rule, const Survey& survey, const LoadPath& pump,
                   const std::vector<PartId>& keys, int reserve) {
    const int presses = pressesWithKeyOff(survey.circuit().plan, keys);
    const std::string name = nameOf(survey.circuit(), pump.part);
    const Text key = listOf(namesOf(survey.circuit(), keys));
    Finding finding = newFinding(rule);
    finding.word = presses > reserve ? SignalWord::Warning : SignalWord::Notice;
    finding.parts = {pump.part};
    finding.parts.insert(finding.parts.end(), keys.begin(), keys.end());
    finding.value = reserve;
    finding.limit = std::max(presses, survey.circuit().limits.reservePresses);
    const Text stored = reserve == 1 ? say("1 press with assist is in store")
                                     : say("{} presses with assist are in store", reserve);
    finding.what =
        presses > 0 ? say("With {} off while the vehicle rolls, {} is dead; {}, and the drive plan makes {}.",
                          key, name, stored, presses)
                    : say("With {} off while the vehicle rolls, {} is dead; {}.", key, name, stored);
    finding.why =
        say("A key that is turned off too early, or an ignition switch that fails, takes the assist along.");
    finding.remedies = {
        {say("Tell the driver to keep {} on until the vehicle stands; write it on the sheet.", key), {}},
        {say("Fit a larger reservoir, so that the presses after that have their vacuum."), {}}};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const std::vector<std::size_t> pumps = pumpPaths(survey);
    if (pumps.empty()) {
        return findings;
    }
    const StandingState off = standingState(survey, {.pedalDown = true, .vacuumLow = true});
    const StandingState on = standingState(survey, {.handOn = true, .pedalDown = true, .vacuumLow = true});
    const int reserve = presentReserve(survey);
    for (const std::size_t number : pumps) {
        const LoadPath& pump = survey.loadPaths()[number];
        const std::vector<PartId> keys = keysOf(survey, pump);
        if (on.fed[number] && !off.fed[number] && !keys.empty()) {
            findings.push_back(findingFor(rule, survey, pump, keys, reserve));
        }
    }
    return findings;
}

} // namespace

extern const Rule kPumpDeadKeyOff{"pump-dead-key-off",
                                  words("Pump dead with the key off while rolling"),
                                  SignalWord::Warning,
                                  words("common practice, no published source"),
                                  false,
                                  check};

} // namespace pumpwright

#include "core/checks/controls.h"
#include "core/checks/remedy_parts.h"
#include "core/checks/standing_state.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// The last wire before a coil or input that commands the pump, where a hand switch has little to carry.
std::optional<WireId> commandWire(const Survey& survey, const LoadPath& pump) {
    for (const std::size_t number : commandingPathsOf(survey, pump)) {
        const std::vector<LeadStep>& feed = survey.loadPaths()[number].feed;
        const auto last = std::find_if(feed.rbegin(), feed.rend(),
                                       [](const LeadStep& step) { return step.wire.has_value(); });
        if (last != feed.rend()) {
            return last->wire;
        }
    }
    return std::nullopt;
}

std::vector<Remedy> remedies(const Survey& survey, const LoadPath& pump) {
    std::vector<Remedy> remedies;
    if (const auto wire = commandWire(survey, pump)) {
        const std::string name = nameOf(survey.circuit(), *wire);
        remedies.push_back({say("Lead {} over a contact of the ignition switch.", name),
                            handSwitchEdit(survey.circuit(), *wire, "Ignition",
                                           say("Put an ignition contact into {}", name))});
    }
    remedies.push_back({say("Let a relay on the ignition switch feed the pump's circuit."), {}});
    return remedies;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const std::vector<std::size_t> pumps = pumpPaths(survey);
    std::vector<Finding> findings;
    if (pumps.empty()) {
        return findings;
    }
    const StandingState parked = standingState(survey, {.vacuumLow = true});
    for (const std::size_t number : pumps) {
        const LoadPath& pump = survey.loadPaths()[number];
        if (!parked.fed[number]) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), pump.part);
        Finding finding = newFinding(rule);
        finding.parts = {pump.part};
        finding.value = pump.load.running_A;
        finding.limit = 0;
        finding.kind = QuantityKind::Current;
        finding.what = say("{} is fed with every hand switch off: it draws {} whenever the vacuum is low.",
                           name, amount(finding.value, finding.kind));
        finding.why =
            say("In a parked car the vacuum leaks away: the pump runs unwatched until the battery is empty.");
        finding.remedies = remedies(survey, pump);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kPumpLiveKeyOff{"pump-live-key-off",
                                  words("Pump fed with the key off"),
                                  SignalWord::Caution,
                                  words("common practice, no published source"),
                                  false,
                                  check};

} // namespace pumpwright

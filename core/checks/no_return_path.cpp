#include "core/checks/current_loop.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace pumpwright {
namespace {

/// Both ends lead somewhere; where one does not, the rule for open terminals speaks.
bool isWired(const Survey& survey, const Branch& branch) {
    return survey.nets().nets[branch.fromNet].terminals.size() > 1 &&
           survey.nets().nets[branch.toNet].terminals.size() > 1;
}

bool isAskedFor(const Survey& survey, const Branch& branch) {
    return !survey.features(branch.part).mayStandAlone && branch.sort != BranchSort::Source &&
           isWired(survey, branch);
}

struct DeadWays {
    std::vector<std::string> names; ///< "86–85"
    bool blocked = true;            ///< all of them by something that conducts one way only
};

std::map<PartId, DeadWays> deadWays(const Survey& survey) {
    const std::vector<LoopState> states = loopStates(survey);
    std::map<PartId, DeadWays> dead;
    for (std::size_t i = 0; i < states.size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (states[i] != LoopState::Loop && isAskedFor(survey, branch)) {
            DeadWays& ways = dead[branch.part];
            ways.names.push_back(branch.from + "–" + branch.to);
            ways.blocked = ways.blocked && states[i] == LoopState::Blocked;
        }
    }
    return dead;
}

bool hasSource(const Survey& survey) {
    return std::any_of(survey.branches().begin(), survey.branches().end(),
                       [](const Branch& branch) { return branch.sort == BranchSort::Source; });
}

Finding findingFor(const Rule& rule, const Survey& survey, const PartId& id, const DeadWays& ways) {
    const std::string name = nameOf(survey.circuit(), id);
    Finding finding = newFinding(rule);
    finding.parts = {id};
    finding.value = static_cast<double>(ways.names.size());
    finding.limit = 0;
    finding.why = say("Current flows only where it can come back to the source: this part does nothing.");
    if (ways.blocked) {
        finding.what = say("A diode, semiconductor or capacitor bars the current through {} ({}).", name,
                           listOf(ways.names));
        finding.remedies = {
            {say("Turn the part that stands the wrong way round, or bridge the capacitor."), {}}};
    } else if (!hasSource(survey)) {
        finding.what = say("Nothing feeds {} ({}): the circuit has no supply.", name, listOf(ways.names));
        finding.remedies = {{say("Place a supply and wire it."), {}}};
    } else {
        finding.what =
            say("No current can flow from a supply through {} ({}) and back.", name, listOf(ways.names));
        finding.remedies = {{say("Wire {} between a feed and ground.", name), {}}};
    }
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const auto& [id, ways] : deadWays(survey)) {
        findings.push_back(findingFor(rule, survey, id, ways));
    }
    return findings;
}

} // namespace

extern const Rule kNoReturnPath{"no-return-path",
                                words("No return path"),
                                SignalWord::Warning,
                                words("common practice, no published source"),
                                false,
                                check};

} // namespace pumpwright

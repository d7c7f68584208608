#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace pumpwright {
namespace {

using TerminalUse = LeadGraph::TerminalUse;

/// A ground point leads to the body even where it is the only one.
bool isLive(const Survey& survey, const TerminalUse& use) {
    return use.leadsOn || survey.features(use.end->part).ground;
}

/// How many terminals of each net lead on. A splice has none: the part at the wire's other end is judged.
std::vector<std::size_t> liveEnds(const Survey& survey, const std::vector<TerminalUse>& uses) {
    std::vector<std::size_t> count(survey.nets().nets.size(), 0);
    for (const TerminalUse& use : uses) {
        count[use.net] += isLive(survey, use) ? 1U : 0U;
    }
    return count;
}

/// Open terminals, by part.
std::map<PartId, std::vector<std::string>> openTerminals(const Survey& survey) {
    const std::vector<TerminalUse> uses = survey.leads().terminalUses();
    const std::vector<std::size_t> live = liveEnds(survey, uses);
    std::map<PartId, std::vector<std::string>> open;
    for (const TerminalUse& use : uses) {
        const bool alone = !use.wired || (live[use.net] < 2 && isLive(survey, use));
        if (!alone) {
            continue;
        }
        const Features& features = survey.features(use.end->part);
        const auto& optional = features.optionalTerminals;
        if (!features.mayStandAlone &&
            std::find(optional.begin(), optional.end(), use.end->terminal) == optional.end()) {
            open[use.end->part].push_back(use.end->terminal);
        }
    }
    return open;
}

std::vector<WireId> wiresAt(const Circuit& circuit, const PartId& id,
                            const std::vector<std::string>& terminals) {
    std::vector<WireId> wires;
    for (const auto& [wireId, wire] : circuit.wires) {
        for (const std::string& terminal : terminals) {
            if (wire.from == End{id, terminal} || wire.to == End{id, terminal}) {
                wires.push_back(wireId);
            }
        }
    }
    return wires;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const auto& [id, open] : openTerminals(survey)) {
        const std::string name = nameOf(survey.circuit(), id);
        Finding finding = newFinding(rule);
        finding.parts = {id};
        finding.wires = wiresAt(survey.circuit(), id, open);
        finding.what = open.size() == 1
                           ? say("{} has nothing connected to terminal {}.", name, open.front())
                           : say("{} has nothing connected to terminals {}.", name, listOf(open));
        finding.value = static_cast<double>(open.size());
        finding.limit = 0;
        finding.why = say("A part with an open terminal does not work, or works only by chance.");
        finding.remedies = {
            {say("Wire {} of {} to where it belongs.", listOf(open), name), {}},
            {say("Delete {} if it is not needed.", name), removalOfPart(survey.circuit(), id)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kOpenTerminal{"open-terminal",
                                words("Open terminal"),
                                SignalWord::Caution,
                                words("common practice, no published source"),
                                false,
                                check};

} // namespace pumpwright

#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace pumpwright {
namespace {

using Ends = std::set<End>;

/// Terminals at which something can happen: a way through a part, or the vehicle's body. A splice has none.
Ends liveEnds(const Survey& survey) {
    Ends ends;
    for (const Branch& branch : survey.branches()) {
        ends.insert(branch.fromEnd());
        ends.insert(branch.toEnd());
    }
    for (const auto& [end, net] : survey.nets().netOf) {
        if (survey.features(end.part).ground) {
            ends.insert(end);
        }
    }
    return ends;
}

Ends wiredEnds(const Circuit& circuit) {
    Ends ends;
    for (const auto& [id, wire] : circuit.wires) {
        ends.insert(wire.from);
        ends.insert(wire.to);
    }
    return ends;
}

bool isOpen(const Survey& survey, const End& end, const Ends& live, const Ends& wired) {
    if (!wired.contains(end)) {
        return true;
    }
    if (!live.contains(end)) {
        return false; // a splice with a wire: the part at the wire's other end is judged
    }
    const Net& net = survey.nets().nets[survey.nets().netOf.at(end)];
    return std::none_of(net.terminals.begin(), net.terminals.end(),
                        [&](const Node& other) { return other != end && live.contains(other); });
}

std::vector<std::string> openTerminals(const Survey& survey, const PartId& id, const Ends& live,
                                       const Ends& wired) {
    const Features& features = survey.features(id);
    std::vector<std::string> open;
    for (const TerminalSpec& terminal : kindOf(survey.part(id)).terminals(survey.part(id))) {
        const auto& optional = features.optionalTerminals;
        if (std::find(optional.begin(), optional.end(), terminal.name) == optional.end() &&
            isOpen(survey, {id, terminal.name}, live, wired)) {
            open.push_back(terminal.name);
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
    const Ends live = liveEnds(survey);
    const Ends wired = wiredEnds(survey.circuit());
    std::vector<Finding> findings;
    for (const auto& [id, part] : survey.circuit().parts) {
        const std::vector<std::string> open = openTerminals(survey, id, live, wired);
        if (open.empty() || survey.features(id).mayStandAlone) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), id);
        Finding finding = newFinding(rule);
        finding.parts = {id};
        finding.wires = wiresAt(survey.circuit(), id, open);
        finding.what = fmt::format("{} has nothing connected to terminal{} {}.", name,
                                   open.size() == 1 ? "" : "s", listOf(open));
        finding.value = static_cast<double>(open.size());
        finding.limit = 0;
        finding.why = "A part with an open terminal does not work, or works only by chance.";
        finding.remedies = {
            {fmt::format("Wire {} of {} to where it belongs.", listOf(open), name), {}},
            {fmt::format("Delete {} if it is not needed.", name), removalOfPart(survey.circuit(), id)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kOpenTerminal{"open-terminal",
                                "Open terminal",
                                SignalWord::Caution,
                                "common practice, no published source",
                                false,
                                check};

} // namespace pumpwright

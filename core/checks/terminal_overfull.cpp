#include "core/checks/remedy_edit.h"
#include "core/checks/standard_size.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

using WiresAt = std::map<End, std::vector<WireId>>;

/// Both ends of a wire to itself count.
WiresAt wiresByEnd(const Circuit& circuit) {
    WiresAt wires;
    for (const auto& [id, wire] : circuit.wires) {
        wires[wire.from].push_back(id);
        wires[wire.to].push_back(id);
    }
    return wires;
}

/// The smallest gauge with at least the sum of these wires' areas: it carries what they carry together.
std::optional<double> joinedArea_m2(const Circuit& circuit, const std::vector<WireId>& wires) {
    double sum_m2 = 0;
    for (const WireId& id : wires) {
        sum_m2 += circuit.wires.at(id).area_m2;
    }
    const auto areas = wireAreas_m2();
    const auto found =
        std::find_if(areas.begin(), areas.end(), [&](double area_m2) { return area_m2 > 0.999 * sum_m2; });
    return found == areas.end() ? std::nullopt : std::optional(*found);
}

/// How many wires a splice takes.
std::size_t spliceTakes() {
    const Part splice = newPart(spliceKind(), "", {});
    return static_cast<std::size_t>(spliceKind().terminals(splice).front().takes);
}

std::vector<Remedy> remedies(const Survey& survey, const End& end, std::vector<WireId> wires,
                             const TerminalSpec& terminal) {
    const Circuit& circuit = survey.circuit();
    std::vector<Remedy> remedies;
    // The thickest stay; the others meet in a splice, and one wire comes from there.
    std::stable_sort(wires.begin(), wires.end(), [&](const WireId& a, const WireId& b) {
        return circuit.wires.at(a).area_m2 < circuit.wires.at(b).area_m2;
    });
    wires.resize(wires.size() - static_cast<std::size_t>(terminal.takes - 1));
    std::sort(wires.begin(), wires.end());
    const bool distinct = std::adjacent_find(wires.begin(), wires.end()) == wires.end();
    const auto area_m2 = joinedArea_m2(circuit, wires);
    if (distinct && area_m2 && wires.size() < spliceTakes()) {
        const std::string name = nameOf(circuit, end);
        remedies.push_back(
            {say("Join {} in a splice, and lead one wire of {} from there to {}.",
                 listOf(namesOf(circuit, wires)), amount(*area_m2, QuantityKind::WireArea), name),
             spliceEdit(circuit, end, wires, *area_m2, say("Add a splice at {}", name))});
    }
    remedies.push_back(
        {say("Put some of the wires on another terminal of the same line than {}.", nameOf(circuit, end)),
         {}});
    return remedies;
}

Finding findingFor(const Rule& rule, const Survey& survey, const End& end, const std::vector<WireId>& wires,
                   const TerminalSpec& terminal) {
    Finding finding = newFinding(rule);
    finding.parts = {end.part};
    finding.wires = wires;
    finding.value = static_cast<double>(wires.size());
    finding.limit = terminal.takes;
    finding.what =
        say("{} wire ends are on {}, which takes {}: {}.", wires.size(), nameOf(survey.circuit(), end),
            terminal.takes, listOf(namesOf(survey.circuit(), wires)));
    finding.why =
        say("Too many wires in one crimp or under one screw work loose, and a loose joint gets hot.");
    finding.remedies = remedies(survey, end, wires, terminal);
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const WiresAt wires = wiresByEnd(survey.circuit());
    std::vector<Finding> findings;
    for (const auto& [id, part] : survey.circuit().parts) {
        for (const TerminalSpec& terminal : kindOf(part).terminals(part)) {
            const auto found = wires.find({id, terminal.name});
            if (found != wires.end() && found->second.size() > static_cast<std::size_t>(terminal.takes)) {
                findings.push_back(findingFor(rule, survey, found->first, found->second, terminal));
            }
        }
    }
    return findings;
}

} // namespace

extern const Rule kTerminalOverfull{"terminal-overfull",
                                    words("Terminal with more wires than it takes"),
                                    SignalWord::Caution,
                                    words("common practice, no published source"),
                                    false,
                                    check};

} // namespace pumpwright

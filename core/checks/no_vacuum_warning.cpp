#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/remedy_parts.h"
#include "core/checks/standard_size.h"
#include "core/checks/vacuum_lines.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// The pumps with their command: contacts by number of their branch, and the last fuse before each load.
struct PumpCircuit {
    std::set<PartId> parts;
    std::set<std::size_t> contacts;
    std::set<std::size_t> lastFuses;
};

std::optional<std::size_t> lastFuse(const Survey& survey, const LoadPath& path) {
    std::optional<std::size_t> last;
    for (const LeadStep& step : path.feed) {
        last = step.branch && survey.branches()[*step.branch].sort == BranchSort::Fuse ? step.branch : last;
    }
    return last;
}

PumpCircuit pumpCircuit(const Survey& survey) {
    PumpCircuit circuit;
    for (const std::size_t pump : pumpPaths(survey)) {
        circuit.contacts.merge(allControlsOf(survey, survey.loadPaths()[pump]));
        std::set<std::size_t> paths = commandingPathsOf(survey, survey.loadPaths()[pump]);
        paths.insert(pump);
        for (const std::size_t number : paths) {
            const LoadPath& path = survey.loadPaths()[number];
            circuit.parts.insert(path.part);
            if (const auto fuse = lastFuse(survey, path)) {
                circuit.lastFuses.insert(*fuse);
            }
        }
    }
    return circuit;
}

/// Whether a vacuum switch that the pump does not use has a part in feeding a load.
bool hasOwnSwitch(const Survey& survey, const LoadPath& path, const PumpCircuit& pumps) {
    const std::set<std::size_t> contacts = allControlsOf(survey, path);
    return std::any_of(contacts.begin(), contacts.end(), [&](std::size_t contact) {
        return !pumps.contacts.contains(contact) && survey.branches()[contact].by == Operator::Vacuum;
    });
}

/// Lamps and buzzers, as number of their path, that such a vacuum switch turns on. A lamp on the pump's own
/// switch or relay tells that the pump is called, not that it fails.
std::vector<std::size_t> warnings(const Survey& survey, const PumpCircuit& pumps) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < survey.loadPaths().size(); ++i) {
        const LoadPath& path = survey.loadPaths()[i];
        const bool tells = (path.load.sort == LoadSort::Lamp || path.load.sort == LoadSort::Electronic) &&
                           !pumps.parts.contains(path.part) && survey.features(path.part).contacts.empty();
        if (tells && path.source && hasOwnSwitch(survey, path, pumps)) {
            found.push_back(i);
        }
    }
    return found;
}

Finding missing(const Rule& rule, const Survey& survey, const std::vector<End>& boosters) {
    Finding finding = newFinding(rule);
    finding.parts = {boosters.front().part};
    finding.value = 0;
    finding.limit = 1;
    finding.what = say("No lamp or buzzer tells the driver that {} has too little vacuum.",
                       nameOf(survey.circuit(), boosters.front().part));
    finding.why = say("The loss of assist shows only when the pedal is hard: in the press that was needed.");
    const std::string text =
        "Add a lamp that a vacuum switch of its own lights at low vacuum, with its own fuse.";
    finding.remedies = {{text, warningLampEdit(survey)}};
    return finding;
}

Remedy ownFuse(const Survey& survey, const LoadPath& warning) {
    const std::string name = nameOf(survey.circuit(), warning.part);
    return {
        say("Feed {} from the battery over a fuse and a contact of the ignition switch of its own.", name),
        {}};
}

Finding sharedFuse(const Rule& rule, const Survey& survey, const LoadPath& warning, std::size_t fuse) {
    const PartId& fusePart = survey.branches()[fuse].part;
    Finding finding = newFinding(rule);
    finding.word = SignalWord::Caution;
    finding.parts = {fusePart, warning.part};
    finding.value = 2;
    finding.limit = 1;
    finding.what = say("{} feeds the pump or its control, and the warning {} as well.",
                       nameOf(survey.circuit(), fusePart), nameOf(survey.circuit(), warning.part));
    finding.why = say("The fuse that stops the pump silences the warning of it.");
    finding.remedies = {ownFuse(survey, warning)};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const std::vector<End> boosters = boosterPorts(survey);
    std::vector<Finding> findings;
    if (boosters.empty() || pumpPaths(survey).empty()) {
        return findings;
    }
    const PumpCircuit pumps = pumpCircuit(survey);
    const std::vector<std::size_t> found = warnings(survey, pumps);
    if (found.empty()) {
        return {missing(rule, survey, boosters)};
    }
    const auto alone = [&](std::size_t path) {
        const auto fuse = lastFuse(survey, survey.loadPaths()[path]);
        return !fuse || !pumps.lastFuses.contains(*fuse);
    };
    if (std::none_of(found.begin(), found.end(), alone)) {
        const LoadPath& warning = survey.loadPaths()[found.front()];
        findings.push_back(sharedFuse(rule, survey, warning, *lastFuse(survey, warning)));
    }
    return findings;
}

} // namespace

extern const Rule kNoVacuumWarning{
    "no-vacuum-warning",
    words("No warning of low vacuum"),
    SignalWord::Warning,
    words("common practice, no published source; the idea: California Vehicle Code 26521"),
    false,
    check};

} // namespace pumpwright

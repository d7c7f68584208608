#include "core/checks/remedy_edit.h"
#include "core/checks/vacuum_lines.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

std::set<std::size_t> linesOf(const std::map<End, std::size_t>& lines, const std::vector<End>& ports) {
    std::set<std::size_t> own;
    for (const End& port : ports) {
        own.insert(lines.at(port));
    }
    return own;
}

std::vector<Remedy> remedies(const Survey& survey, const End& sensor) {
    const std::string name = nameOf(survey.circuit(), sensor.part);
    const std::vector<End> boosters = boosterPorts(survey);
    std::vector<Remedy> remedies;
    if (!boosters.empty()) {
        const auto edit =
            movedHoseEdit(survey.circuit(), sensor, boosters.front(), say("Move {} to the booster", name));
        remedies.push_back({say("Connect {} between check valve and booster, with a tee.", name), edit});
    }
    remedies.push_back({say("Change the hoses so that the check valve lies between pump and switch."), {}});
    return remedies;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const std::map<End, std::size_t> lines = vacuumLines(survey);
    const std::set<std::size_t> pumps = linesOf(lines, pumpInlets(survey));
    const std::set<std::size_t> boosters = linesOf(lines, boosterPorts(survey));
    std::vector<Finding> findings;
    for (const End& sensor : sensingPorts(survey)) {
        if (!pumps.contains(lines.at(sensor)) || boosters.contains(lines.at(sensor))) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {sensor.part};
        finding.value = 0;
        finding.limit = 1;
        finding.what = say("{} senses the pump's side of the check valve, not the booster's.",
                           nameOf(survey.circuit(), sensor.part));
        finding.why = say("That side loses its vacuum as soon as the pump stops: the pump starts again and "
                          "again, and the switch knows nothing of the booster.");
        finding.remedies = remedies(survey, sensor);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSwitchOnPumpSide{"switch-on-pump-side",
                                    words("Vacuum switch on the wrong side of the check valve"),
                                    SignalWord::Warning,
                                    words("common practice, no published source"),
                                    false,
                                    check};

} // namespace pumpwright

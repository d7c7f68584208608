#include "core/checks/remedy_edit.h"
#include "core/checks/vacuum_lines.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    const std::map<End, std::size_t> lines = vacuumLines(survey);
    std::vector<Finding> findings;
    std::multimap<std::size_t, End> boosters;
    for (const End& booster : boosterPorts(survey)) {
        boosters.emplace(lines.at(booster), booster);
    }
    for (const End& inlet : pumpInlets(survey)) {
        const auto [first, last] = boosters.equal_range(lines.at(inlet));
        for (auto found = first; found != last; ++found) {
            const End& booster = found->second;
            const std::string pump = nameOf(survey.circuit(), inlet.part);
            Finding finding = newFinding(rule);
            finding.parts = {inlet.part, booster.part};
            finding.value = 0;
            finding.limit = 1;
            finding.what =
                say("No check valve lies between {} and {}.", pump, nameOf(survey.circuit(), booster.part));
            finding.why =
                say("When the pump stops, air leaks back through it and the assist is gone in seconds.");
            finding.remedies = {
                {say("Put a check valve into the hose at {}.", pump),
                 checkValveEdit(survey.circuit(), inlet, say("Add a check valve at {}", pump))}};
            findings.push_back(std::move(finding));
        }
    }
    return findings;
}

} // namespace

extern const Rule kNoCheckValve{"no-check-valve",
                                words("No check valve before the booster"),
                                SignalWord::Warning,
                                words("49 CFR 393.50(b), text of earlier years"),
                                false,
                                check};

} // namespace pumpwright

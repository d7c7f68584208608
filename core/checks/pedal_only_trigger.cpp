#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const std::size_t number : pumpPaths(survey)) {
        const LoadPath& pump = survey.loadPaths()[number];
        const std::set<std::size_t> contacts = allControlsOf(survey, pump);
        if (!anyMovedBy(survey, contacts, Operator::Pedal) ||
            anyMovedBy(survey, contacts, Operator::Vacuum)) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), pump.part);
        Finding finding = newFinding(rule);
        finding.parts = {pump.part};
        for (const std::size_t contact : contacts) {
            const Branch& branch = survey.branches()[contact];
            if (branch.by == Operator::Pedal) {
                finding.parts.push_back(branch.part);
            }
        }
        finding.value = 0;
        finding.limit = 1;
        finding.what = say("Only the pedal starts {}; no vacuum switch does.", name);
        finding.why =
            say("The pump begins when the assist is needed already, and fills up only while the foot "
                "is down.");
        finding.remedies = {{say("Let a vacuum switch at the booster start the pump as well."), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kPedalOnlyTrigger{"pedal-only-trigger",
                                    words("Only the pedal starts the pump"),
                                    SignalWord::Warning,
                                    words("common practice, no published source"),
                                    false,
                                    check};

} // namespace pumpwright

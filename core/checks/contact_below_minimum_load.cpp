#include "core/checks/carried_current.h"
#include "core/checks/net_spread.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (!isOperated(branch) || contactOf(survey, branch).semiconductor) {
            continue;
        }
        const double least_A = contactOf(survey, branch).rating.minimum_A;
        const double current_A = sustainedCurrent(survey, i).value_A;
        // A contact without a load is no contact with too small a one.
        if (current_A <= 0 || current_A >= least_A) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), branch.part);
        Finding finding = newFinding(rule);
        finding.parts = {branch.part};
        finding.value = current_A;
        finding.limit = least_A;
        finding.kind = QuantityKind::Current;
        finding.what =
            say("The contact {}–{} of {} switches {}; below {} it does not stay clean.", branch.from,
                branch.to, name, amount(current_A, finding.kind), amount(least_A, finding.kind));
        finding.why =
            say("A power contact needs the small arc to burn off its film; without it fails now and then.");
        finding.remedies = {{say("Choose a part with a contact for small loads as {}.", name), {}},
                            {say("Let a resistor beside the load draw what is missing."), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kContactBelowMinimumLoad{
    "contact-below-minimum-load",
    words("Load too small for the contact"),
    SignalWord::Notice,
    words("the contact's least current; 1 A for 40 to 70 A relays in their data sheets"),
    false,
    check};

} // namespace pumpwright

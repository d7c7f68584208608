#include "core/checks/carried_current.h"
#include "core/checks/relay_edit.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const SwitchedLoads loads(survey);
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Contact) {
            continue;
        }
        const Contact& contact = contactOf(survey, branch);
        const CarriedCurrent current = sustainedCurrent(survey, i);
        // A semiconductor's limit depends on heat sink and load: solid-state-relay-derating.
        if (contact.semiconductor || contact.rating.continuous_A <= 0 ||
            current.value_A <= contact.rating.continuous_A) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), branch.part);
        Finding finding = newFinding(rule);
        finding.parts = {branch.part};
        finding.value = current.value_A;
        finding.limit = contact.rating.continuous_A;
        finding.kind = QuantityKind::Current;
        finding.at_s = current.at_s;
        finding.what = fmt::format("The contact {}–{} of {} carries {} ({}); it is rated for {}.",
                                   branch.from, branch.to, name, amount(finding.value, finding.kind),
                                   whereFrom(current), amount(finding.limit, finding.kind));
        finding.why =
            "An overloaded contact heats up, softens its housing and in the end fails closed or open.";
        if (const auto relay = powerRelayRemedy(survey, loads, i, {current.value_A, 0, 0})) {
            finding.remedies.push_back(*relay);
        }
        finding.remedies.push_back({fmt::format("Choose a part with a contact for at least {} as {}.",
                                                amount(finding.value, finding.kind), name),
                                    {}});
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kContactContinuousCurrent{
    "contact-continuous-current",
    "Contact carries more than its rating",
    SignalWord::Warning,
    "the contact's rating; five seconds as continuous: common practice, no published source",
    false,
    check};

} // namespace pumpwright

#include "core/checks/carried_current.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

bool isInductive(const Survey& survey, std::size_t branch) {
    const auto& expected = survey.expectedCurrents().branches;
    const auto found = expected.find(branch);
    return found != expected.end() && found->second.inductive;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Contact || !contactOf(survey, branch).semiconductor) {
            continue;
        }
        const Contact& contact = contactOf(survey, branch);
        const bool inductive = isInductive(survey, i);
        const double share = inductive ? contact.inductiveShare : contact.resistiveShare;
        const CarriedCurrent current = sustainedCurrent(survey, i);
        if (contact.rating.continuous_A <= 0 || current.value_A <= share * contact.rating.continuous_A) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), branch.part);
        Finding finding = newFinding(rule);
        finding.parts = {branch.part};
        finding.value = current.value_A;
        finding.limit = share * contact.rating.continuous_A;
        finding.kind = QuantityKind::Current;
        finding.at_s = current.at_s;
        finding.what =
            fmt::format("{} carries {} ({}); sold as {}, it is good for {} with {} load.", name,
                        amount(finding.value, finding.kind), whereFrom(current),
                        amount(contact.rating.continuous_A, finding.kind),
                        amount(finding.limit, finding.kind), inductive ? "an inductive" : "a resistive");
        finding.why = "An overheated semiconductor mostly fails closed: the load runs on.";
        finding.remedies = {{fmt::format("Choose a solid-state relay of at least {} as {}.",
                                         amount(current.value_A / share, finding.kind), name),
                             {}},
                            {"Use a power relay with a mechanical contact instead.", {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSolidStateRelayDerating{"solid-state-relay-derating",
                                           "Solid-state relay beyond its derated current",
                                           SignalWord::Warning,
                                           "common practice, no published source",
                                           false,
                                           check};

} // namespace pumpwright

#include "core/checks/carried_current.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// A contact for inductive loads at 12 V needs this many times its current as a resistive rating
/// [FAA AC 43.13-1B, table 11-4].
constexpr double kInductiveFactor = 2;

struct BreakingLimit {
    double value_A = 0;
    bool inductive = false;
    bool derived = false; ///< from the resistive rating
};

BreakingLimit breakingLimit(const Survey& survey, std::size_t branch) {
    const ContactRating& rating = contactOf(survey, survey.branches()[branch]).rating;
    const auto& expected = survey.expectedCurrents().branches;
    const auto found = expected.find(branch);
    if (found == expected.end() || !found->second.inductive) {
        return {rating.breakResistive_A};
    }
    if (rating.breakInductive_A > 0) {
        return {rating.breakInductive_A, true};
    }
    return {rating.breakResistive_A / kInductiveFactor, true, true};
}

Finding findingFor(const Rule& rule, const Survey& survey, const Branch& branch,
                   const CarriedCurrent& current, const BreakingLimit& limit) {
    const std::string name = nameOf(survey.circuit(), branch.part);
    Finding finding = newFinding(rule);
    finding.parts = {branch.part};
    finding.value = current.value_A;
    finding.limit = limit.value_A;
    finding.kind = QuantityKind::Current;
    finding.at_s = current.at_s;
    finding.what =
        fmt::format("The contact {}–{} of {} opens under {} ({}); with {} load it may break {}.", branch.from,
                    branch.to, name, amount(finding.value, finding.kind), whereFrom(current),
                    limit.inductive ? "an inductive" : "a resistive", amount(finding.limit, finding.kind));
    if (limit.derived) {
        finding.source = "FAA AC 43.13-1B, table 11-4: half the resistive rating";
    }
    finding.why = "The arc at opening eats the contact; in the end it sticks or no longer closes.";
    finding.remedies = {
        {fmt::format("Let {} switch a relay whose contact may break {}.", name,
                     amount(finding.value, finding.kind)),
         {}},
        {"Fit a diode across the load, so that its current does not go through the arc.", {}}};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Contact || contactOf(survey, branch).semiconductor) {
            continue;
        }
        const BreakingLimit limit = breakingLimit(survey, i);
        const CarriedCurrent current = breakingCurrent(survey, i);
        if (limit.value_A > 0 && current.value_A > limit.value_A) {
            findings.push_back(findingFor(rule, survey, branch, current, limit));
        }
    }
    return findings;
}

} // namespace

extern const Rule kContactBreakingCurrent{"contact-breaking-current",
                                          "Contact breaks too high a current",
                                          SignalWord::Caution,
                                          "the contact's rating for breaking",
                                          false,
                                          check};

} // namespace pumpwright

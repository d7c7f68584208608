#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// Diodes and resistors of their own between the same two nets as the coil.
std::vector<PartId> outside(const Survey& survey, const Branch& coil) {
    std::vector<PartId> parts;
    for (const std::size_t number : survey.branchesAt(coil.fromNet)) {
        const Branch& other = survey.branches()[number];
        const bool across = (other.fromNet == coil.fromNet && other.toNet == coil.toNet) ||
                            (other.fromNet == coil.toNet && other.toNet == coil.fromNet);
        if (across && (other.sort == BranchSort::Rectifier || other.sort == BranchSort::Passive)) {
            parts.push_back(other.part);
        }
    }
    return parts;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort != BranchSort::Coil || branch.fromNet == branch.toNet) {
            continue;
        }
        const bool inside = survey.features(branch.part).coils[branch.index].suppression != Suppression::None;
        const std::vector<PartId> parts = outside(survey, branch);
        const std::size_t count = parts.size() + (inside ? 1 : 0);
        if (count < 2) {
            continue;
        }
        const PartId& spare = parts.back();
        const std::string name = nameOf(survey.circuit(), branch.part);
        Finding finding = newFinding(rule);
        finding.parts = parts;
        finding.parts.insert(finding.parts.begin(), branch.part);
        finding.value = static_cast<double>(count);
        finding.limit = 1;
        finding.what = say("The coil of {} has {} suppressions: {}{}.", name, count,
                           inside ? say("one built in, ") : Text(), listOf(namesOf(survey.circuit(), parts)));
        finding.why =
            say("The slower one decides the release; the other is money and one more thing to fail.");
        finding.remedies = {
            {say("Leave out {}.", nameOf(survey.circuit(), spare)), removalOfPart(survey.circuit(), spare)}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSuppressionTwice{"suppression-twice",
                                    words("Coil suppressed twice"),
                                    SignalWord::Notice,
                                    words("common practice, no published source"),
                                    false,
                                    check};

} // namespace pumpwright

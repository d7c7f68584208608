#include "core/checks/carried_current.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// [A] Solid-state relays as they are sold. Common practice, no published source.
constexpr std::array kSizes_A{10.0, 25.0, 40.0, 60.0, 80.0, 100.0, 150.0, 200.0};

bool isInductive(const Survey& survey, std::size_t branch) {
    const auto& expected = survey.expectedCurrents().branches;
    const auto found = expected.find(branch);
    return found != expected.end() && found->second.inductive;
}

Remedy largerRemedy(const Survey& survey, const PartId& id, double wanted_A) {
    const std::string name = nameOf(survey.circuit(), id);
    const auto size = std::lower_bound(kSizes_A.begin(), kSizes_A.end(), wanted_A);
    if (size == kSizes_A.end()) {
        return {say("Choose a solid-state relay of at least {} as {}.",
                    amount(wanted_A, QuantityKind::Current), name),
                {}};
    }
    const Text text = say("a solid-state relay of {} as {}", amount(*size, QuantityKind::Current), name);
    return {say("Choose {}.", text),
            valueEdit(survey.circuit(), id, "ratedCurrent_A", *size, say("Choose {}", text))};
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
            say("{} carries {} ({}); sold as {}, it is good for {} with {} load.", name,
                amount(finding.value, finding.kind), whereFrom(current),
                amount(contact.rating.continuous_A, finding.kind), amount(finding.limit, finding.kind),
                inductive ? say("an inductive") : say("a resistive"));
        finding.why = say("An overheated semiconductor mostly fails closed: the load runs on.");
        finding.remedies = {largerRemedy(survey, branch.part, current.value_A / share),
                            {say("Use a power relay with a mechanical contact instead."), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSolidStateRelayDerating{"solid-state-relay-derating",
                                           words("Solid-state relay beyond its derated current"),
                                           SignalWord::Warning,
                                           words("common practice, no published source"),
                                           false,
                                           check};

} // namespace pumpwright

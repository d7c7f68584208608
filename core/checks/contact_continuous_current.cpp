#include "core/checks/carried_current.h"
#include "core/checks/parallel_group.h"
#include "core/checks/relay_edit.h"
#include "core/checks/surroundings_of.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// Zero where nothing is stated. Makers of relays state what a contact carries at room temperature.
double limitOf_A(const Survey& survey, const Branch& branch) {
    const Contact& contact = contactOf(survey, branch);
    const double share =
        contact.by == Operator::Coil ? relayHeatShare(surroundings_K(survey, branch.part)) : 1;
    return share * contact.rating.continuous_A;
}

Finding findingFor(const Rule& rule, const Survey& survey, std::size_t number, const SwitchedLoads& loads,
                   const CarriedCurrent& current, double limit_A) {
    const Branch& branch = survey.branches()[number];
    const std::string name = nameOf(survey.circuit(), branch.part);
    const double rated_A = contactOf(survey, branch).rating.continuous_A;
    Finding finding = newFinding(rule);
    finding.parts = {branch.part};
    finding.value = current.value_A;
    finding.limit = limit_A;
    finding.kind = QuantityKind::Current;
    finding.at_s = current.at_s;
    finding.what =
        say("The contact {}–{} of {} carries {} ({}); it is rated for {}{}.", branch.from, branch.to, name,
            amount(finding.value, finding.kind), whereFrom(current), amount(rated_A, finding.kind),
            limit_A < rated_A ? say(", and good for {} at {}", amount(limit_A, finding.kind),
                                    amount(surroundings_K(survey, branch.part), QuantityKind::Temperature))
                              : Text());
    finding.why =
        say("An overloaded contact heats up, softens its housing and in the end fails closed or open.");
    if (const auto relay = powerRelayRemedy(survey, loads, number, {current.value_A, 0, 0})) {
        finding.remedies.push_back(*relay);
    }
    finding.remedies.push_back({say("Choose a part with a contact for at least {} as {}.",
                                    amount(finding.value, finding.kind), name),
                                {}});
    return finding;
}

/// What one contact has to carry, and may.
struct Carrying {
    CarriedCurrent current;
    double limit_A = 0;
};

Carrying alone(const Survey& survey, std::size_t number) {
    return {sustainedCurrent(survey, number), limitOf_A(survey, survey.branches()[number])};
}

/// Side by side, relays' contacts share what they carry; one that something else moves, as a bridging switch,
/// may be the only one that is closed. The nameplates' currents are booked on one of them.
Carrying inGroup(const Survey& survey, std::size_t number, const std::vector<std::size_t>& group) {
    Carrying own = alone(survey, number);
    double shared_A = 0;
    bool relaysOnly = true;
    for (const std::size_t member : group) {
        const Carrying other = alone(survey, member);
        own.current = other.current.value_A > own.current.value_A ? other.current : own.current;
        shared_A += other.limit_A;
        relaysOnly = relaysOnly && contactOf(survey, survey.branches()[member]).by == Operator::Coil;
    }
    own.limit_A = relaysOnly ? shared_A : own.limit_A;
    return own;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const SwitchedLoads loads(survey);
    const ParallelContacts parallel(survey);
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        // A semiconductor's limit depends on heat sink and load: solid-state-relay-derating.
        if (branch.sort != BranchSort::Contact || contactOf(survey, branch).semiconductor) {
            continue;
        }
        const std::vector<std::size_t>* group = parallel.groupOf(i);
        const Carrying carrying = group == nullptr ? alone(survey, i) : inGroup(survey, i, *group);
        if (carrying.limit_A > 0 && carrying.current.value_A > carrying.limit_A) {
            findings.push_back(findingFor(rule, survey, i, loads, carrying.current, carrying.limit_A));
        }
    }
    return findings;
}

} // namespace

extern const Rule kContactContinuousCurrent{
    "contact-continuous-current",
    words("Contact carries more than its rating"),
    SignalWord::Warning,
    words("the contact's rating; relays in heat: data sheet of a 70 A "
          "power relay; five seconds as continuous: common "
          "practice, no published source"),
    false,
    check};

} // namespace pumpwright

#include "core/checks/capacitor_charge.h"
#include "core/checks/carried_current.h"
#include "core/checks/parallel_group.h"
#include "core/checks/relay_edit.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// From this many times the making rating a contact welds soon rather than late. Common practice, no
/// published source.
constexpr double kWeldsSoon = 2;
/// A contact suits filament lamps of a fifth of its resistive rating at 12 V [FAA AC 43.13-1B, table 11-4],
/// whatever their cold inrush.
constexpr double kLampFactor = 5;

/// The making rating, or the inrush of as much lamp as the contact suits if that is more.
double limitOf_A(const Survey& survey, std::size_t contact, const SwitchedLoads& loads) {
    const ContactRating& rating = contactOf(survey, survey.branches()[contact]).rating;
    const LoadPath* heaviest = loads.heaviest(contact);
    if (rating.make_A <= 0 || heaviest == nullptr || heaviest->load.sort != LoadSort::Lamp) {
        return rating.make_A;
    }
    const double inrushShare = heaviest->load.inrush_A / heaviest->load.running_A;
    return std::max(rating.make_A, inrushShare * rating.breakResistive_A / kLampFactor);
}

/// " into a motor, DC-3", empty without a load.
Text into(const LoadPath* path) {
    if (path == nullptr) {
        return {};
    }
    const UtilisationCategory category = categoryOf(path->load);
    return say(" into {}, {}", said(category.load), category.name);
}

Finding findingFor(const Rule& rule, const Survey& survey, std::size_t contact, const SwitchedLoads& loads,
                   const CarriedCurrent& current, double rating_A) {
    const Branch& branch = survey.branches()[contact];
    const std::string name = nameOf(survey.circuit(), branch.part);
    Finding finding = newFinding(rule);
    finding.word = current.value_A > kWeldsSoon * rating_A ? SignalWord::Warning : SignalWord::Caution;
    finding.parts = {branch.part};
    finding.value = current.value_A;
    finding.limit = rating_A;
    finding.kind = QuantityKind::Current;
    finding.at_s = current.at_s;
    finding.what =
        say("The contact {}–{} of {} closes on an inrush of {}{} ({}); it may make {}.", branch.from,
            branch.to, name, amount(finding.value, finding.kind), into(loads.heaviest(contact)),
            whereFrom(current), amount(finding.limit, finding.kind));
    finding.why = say("A contact that bounces on too high an inrush welds, and the load runs on.");
    if (const auto relay = powerRelayRemedy(survey, loads, contact, {0, current.value_A, 0})) {
        finding.remedies.push_back(*relay);
    }
    finding.remedies.push_back(
        {say("Choose a part that may make at least {} as {}.", amount(finding.value, finding.kind), name),
         {}});
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const std::vector<CapacitorCharge> charges = capacitorCharges(survey);
    const SwitchedLoads loads(survey);
    const ParallelContacts parallel(survey);
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        // What contacts in parallel and capacitors ask for is told by rules of their own.
        if (branch.sort != BranchSort::Contact || parallel.contains(i) ||
            chargeBeyondRating(survey, charges, i) != nullptr) {
            continue;
        }
        const double rating_A = limitOf_A(survey, i, loads);
        const CarriedCurrent current = makingCurrent(survey, i);
        if (rating_A > 0 && current.value_A > rating_A) {
            findings.push_back(findingFor(rule, survey, i, loads, current, rating_A));
        }
    }
    return findings;
}

} // namespace

extern const Rule kContactMakingCurrent{
    "contact-making-current",
    words("Contact closes on too high an inrush"),
    SignalWord::Warning,
    words(
        "the contact's rating for making; lamps: FAA AC 43.13-1B, table 11-4; kinds of load: IEC 60947-4-1"),
    false,
    check};

} // namespace pumpwright

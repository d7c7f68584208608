#include "core/checks/carried_current.h"
#include "core/checks/parallel_group.h"
#include "core/checks/relay_edit.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// Where a diode takes the winding's current over, the contact needs its resistive rating only.
std::optional<Remedy> diodeRemedy(const Survey& survey, std::size_t contact, const SwitchedLoads& loads,
                                  const CarriedCurrent& current, const LoadPath& winding) {
    const auto inductive =
        std::count_if(loads.over(contact).begin(), loads.over(contact).end(),
                      [&](const LoadPath* path) { return breaksInductively(survey, *path); });
    const ContactRating& rating = contactOf(survey, survey.branches()[contact]).rating;
    if (inductive != 1 || current.value_A > rating.breakResistive_A) {
        return std::nullopt;
    }
    const std::string name = nameOf(survey.circuit(), winding.part);
    const End plus{winding.part, winding.load.from};
    return Remedy{say("Fit a diode across {}, cathode to {}, so that its current does not go through "
                      "the arc.",
                      name, nameOf(survey.circuit(), plus)),
                  diodeEdit(survey.circuit(), plus, {winding.part, winding.load.to}, winding.load.running_A,
                            say("Add a diode across {}", name))};
}

std::vector<Remedy> remedies(const Survey& survey, std::size_t contact, const SwitchedLoads& loads,
                             const CarriedCurrent& current, const BreakingLimit& limit) {
    std::vector<Remedy> all;
    if (limit.inductive != nullptr) {
        if (const auto diode = diodeRemedy(survey, contact, loads, current, *limit.inductive)) {
            all.push_back(*diode);
        }
    }
    if (const auto relay = powerRelayRemedy(survey, loads, contact, {0, 0, current.value_A})) {
        all.push_back(*relay);
    }
    all.push_back({say("Let {} switch a relay whose contact may break {}.",
                       nameOf(survey.circuit(), survey.branches()[contact].part),
                       amount(current.value_A, QuantityKind::Current)),
                   {}});
    return all;
}

/// " (a motor, DC-3)", empty without a load.
Text categoryNote(const LoadPath* path) {
    if (path == nullptr) {
        return {};
    }
    const UtilisationCategory category = categoryOf(path->load);
    return say(" ({}, {})", said(category.load), category.name);
}

Finding findingFor(const Rule& rule, const Survey& survey, std::size_t contact, const SwitchedLoads& loads,
                   const CarriedCurrent& current, const BreakingLimit& limit) {
    const Branch& branch = survey.branches()[contact];
    const LoadPath* load = limit.inductive != nullptr ? limit.inductive : loads.heaviest(contact);
    const std::string name = nameOf(survey.circuit(), branch.part);
    Finding finding = newFinding(rule);
    finding.parts = {branch.part};
    finding.value = current.value_A;
    finding.limit = limit.value_A;
    finding.kind = QuantityKind::Current;
    finding.at_s = current.at_s;
    finding.what = say("The contact {}–{} of {} opens under {} ({}); with {} load{} it may break {}.",
                       branch.from, branch.to, name, amount(finding.value, finding.kind), whereFrom(current),
                       limit.inductive != nullptr ? say("an inductive") : say("a resistive"),
                       categoryNote(load), amount(finding.limit, finding.kind));
    if (limit.derived) {
        finding.source = words("FAA AC 43.13-1B, table 11-4: half the resistive rating");
    }
    finding.why = say("The arc at opening eats the contact; in the end it sticks or no longer closes.");
    finding.remedies = remedies(survey, contact, loads, current, limit);
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const SwitchedLoads loads(survey);
    const ParallelContacts parallel(survey);
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Contact || contactOf(survey, branch).semiconductor ||
            parallel.contains(i)) {
            continue;
        }
        const BreakingLimit limit = breakingLimit(survey, loads, i);
        const CarriedCurrent current = breakingCurrent(survey, i);
        if (limit.value_A > 0 && current.value_A > limit.value_A) {
            findings.push_back(findingFor(rule, survey, i, loads, current, limit));
        }
    }
    return findings;
}

} // namespace

extern const Rule kContactBreakingCurrent{
    "contact-breaking-current",
    words("Contact breaks too high a current"),
    SignalWord::Caution,
    words("the contact's rating for breaking; kinds of load: IEC 60947-4-1 and IEC 60947-5-1"),
    false,
    check};

} // namespace pumpwright

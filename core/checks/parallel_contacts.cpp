#include "core/checks/carried_current.h"
#include "core/checks/parallel_group.h"
#include "core/checks/switched_load.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <set>

namespace pumpwright {
namespace {

/// What the weakest contact of a group is asked for alone.
struct Alone {
    CarriedCurrent current;
    double limit_A = 0;
    std::string_view act; ///< "makes"

    double excess() const { return limit_A > 0 ? current.value_A / limit_A : 0; }
};

CarriedCurrent largest(const std::vector<CarriedCurrent>& currents) {
    return *std::max_element(
        currents.begin(), currents.end(),
        [](const CarriedCurrent& a, const CarriedCurrent& b) { return a.value_A < b.value_A; });
}

/// The nameplates' currents are booked on one of the contacts; the drive shows what each took.
Alone making(const Survey& survey, const std::vector<std::size_t>& group) {
    Alone alone{{}, std::numeric_limits<double>::max(), words("makes")};
    std::vector<CarriedCurrent> currents;
    for (const std::size_t contact : group) {
        currents.push_back(makingCurrent(survey, contact));
        alone.limit_A = std::min(alone.limit_A, contactOf(survey, survey.branches()[contact]).rating.make_A);
    }
    alone.current = largest(currents);
    return alone;
}

/// What one of them may break of the loads that are booked on any of them.
Alone breaking(const Survey& survey, const SwitchedLoads& loads, const std::vector<std::size_t>& group) {
    Alone alone{{}, std::numeric_limits<double>::max(), words("breaks")};
    std::vector<CarriedCurrent> currents;
    const bool inductive = std::any_of(group.begin(), group.end(), [&](std::size_t contact) {
        return breakingLimit(survey, loads, contact).inductive != nullptr;
    });
    for (const std::size_t contact : group) {
        const ContactRating& rating = contactOf(survey, survey.branches()[contact]).rating;
        currents.push_back(breakingCurrent(survey, contact));
        alone.limit_A =
            std::min(alone.limit_A, inductive ? rating.breakInductive_A : rating.breakResistive_A);
    }
    alone.current = largest(currents);
    return alone;
}

std::vector<PartId> partsOf(const Survey& survey, const std::vector<std::size_t>& group) {
    std::set<PartId> parts;
    for (const std::size_t contact : group) {
        parts.insert(survey.branches()[contact].part);
    }
    return {parts.begin(), parts.end()};
}

Text contactNames(const Survey& survey, const std::vector<std::size_t>& group) {
    std::vector<Text> names;
    for (const std::size_t contact : group) {
        const Branch& branch = survey.branches()[contact];
        names.push_back(say("{} ({}–{})", nameOf(survey.circuit(), branch.part), branch.from, branch.to));
    }
    return listOf(names);
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const SwitchedLoads loads(survey);
    const ParallelContacts parallel(survey);
    for (const std::vector<std::size_t>& group : parallel.groups()) {
        const Alone makes = making(survey, group);
        const Alone breaks = breaking(survey, loads, group);
        const Alone& worse = makes.excess() >= breaks.excess() ? makes : breaks;
        if (worse.excess() <= 1) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = partsOf(survey, group);
        finding.value = worse.current.value_A;
        finding.limit = worse.limit_A;
        finding.kind = QuantityKind::Current;
        finding.at_s = worse.current.at_s;
        finding.what = say("{} lie side by side: whichever closes first and opens last {} {} alone ({}), "
                           "and one of them may no more than {}.",
                           contactNames(survey, group), said(worse.act), amount(finding.value, finding.kind),
                           whereFrom(worse.current), amount(finding.limit, finding.kind));
        finding.why =
            say("They share what they carry, not what they make and break: one welds, then the other.");
        finding.remedies = {
            {say("Choose parts of which each {} {} alone.", said(worse.act),
                 amount(finding.value, finding.kind)),
             {}},
            {say("Let the contacts switch the coil of one power relay, whose contact does all of it."), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kParallelContacts{"parallel-contacts",
                                    words("Contacts in parallel count as one"),
                                    SignalWord::Caution,
                                    words("the rating of one contact; common practice, no published source"),
                                    false,
                                    check};

} // namespace pumpwright

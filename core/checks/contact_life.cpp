#include "core/checks/carried_current.h"
#include "core/checks/contact_chatter.h"
#include "core/checks/net_spread.h"
#include "core/checks/set_point.h"
#include "core/checks/switched_load.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

// Common practice, no published source, all of them.
constexpr double kYears = 10;         ///< that a contact should last
constexpr double kMechanical = 1e7;   ///< operations without any load
constexpr double kLighterPower = 1.5; ///< life grows at least with this power of rating over current
constexpr double kHeavierPower = 2;   ///< and falls at most with this one

/// Operations that a contact lasts with what it breaks: rated operations · (rating/current)^n.
double life(const ContactRating& rating, double limit_A, double current_A) {
    if (current_A <= 0) {
        return kMechanical;
    }
    const double ratio = limit_A / current_A;
    const double lasts = rating.operations * std::pow(ratio, ratio > 1 ? kLighterPower : kHeavierPower);
    return std::min(lasts, kMechanical);
}

/// To two digits, as counts of this sort are known.
double about(double count) {
    const double digit = count > 0 ? std::pow(10, std::floor(std::log10(count)) - 1) : 1;
    return std::round(count / digit) * digit;
}

struct Wear {
    std::size_t contact;
    double inDrive;
    double perYear;
    double lasts;
    CarriedCurrent current;
    double limit_A;
};

std::optional<Wear> wearOf(const Survey& survey, const SwitchedLoads& loads, std::size_t contact) {
    const Branch& branch = survey.branches()[contact];
    const Channel* state = contactChannel(survey, branch, probe::kContact);
    const Recording* recording = survey.recording();
    const double duration_s = recording == nullptr ? 0 : recording->duration_s;
    if (state == nullptr || duration_s <= 0) {
        return std::nullopt;
    }
    const double inDrive = static_cast<double>(closings_s(*state).size());
    const double limit_A = breakingLimit(survey, loads, contact).value_A;
    const CarriedCurrent current = breakingCurrent(survey, contact);
    return Wear{contact,
                inDrive,
                inDrive * survey.circuit().limits.drivenPerYear_s / duration_s,
                life(contactOf(survey, branch).rating, limit_A, current.value_A),
                current,
                limit_A};
}

std::vector<Remedy> remedies(const Survey& survey, const Wear& wear) {
    std::vector<Remedy> all;
    for (const auto& [id, part] : survey.circuit().parts) {
        if (const auto wider = widerDifferential(survey, id)) {
            all.push_back(*wider);
        }
    }
    all.push_back(
        {say("Let a timer with delay on release hold the pump longer, so that it starts less often."), {}});
    all.push_back({say("Choose a part with a longer electrical life or a larger contact as {}.",
                       nameOf(survey.circuit(), survey.branches()[wear.contact].part)),
                   {}});
    return all;
}

Finding findingFor(const Rule& rule, const Survey& survey, const Wear& wear) {
    const Branch& branch = survey.branches()[wear.contact];
    const ContactRating& rating = contactOf(survey, branch).rating;
    Finding finding = newFinding(rule);
    finding.parts = {branch.part};
    finding.value = kYears * wear.perYear;
    finding.limit = wear.lasts;
    finding.what =
        say("The contact {}–{} of {} closes {} times in the drive, about {} times in a year of {}. Rated "
            "for {} operations at {}, it lasts about {} at {} ({}): {} years, of {}.",
            branch.from, branch.to, nameOf(survey.circuit(), branch.part), whole(wear.inDrive),
            whole(about(wear.perYear)), amount(survey.circuit().limits.drivenPerYear_s, QuantityKind::Time),
            whole(rating.operations), amount(wear.limit_A, QuantityKind::Current), whole(about(wear.lasts)),
            amount(wear.current.value_A, QuantityKind::Current), whereFrom(wear.current),
            fmt::format("{:.1f}", wear.lasts / wear.perYear), whole(kYears));
    finding.why = say("A worn contact welds or no longer closes: the pump runs on, or not at all.");
    finding.remedies = remedies(survey, wear);
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const SwitchedLoads loads(survey);
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (!isOperated(branch) || contactOf(survey, branch).semiconductor ||
            contactOf(survey, branch).rating.operations <= 0) {
            continue;
        }
        const auto wear = wearOf(survey, loads, i);
        if (wear && kYears * wear->perYear > wear->lasts) {
            findings.push_back(findingFor(rule, survey, *wear));
        }
    }
    return findings;
}

} // namespace

extern const Rule kContactLife{
    "contact-life",
    words("Contact worn out too soon"),
    SignalWord::Caution,
    words("the contact's rated operations; ten years, and how life goes with current: "
          "common practice, no published "
          "source"),
    true,
    check};

} // namespace pumpwright

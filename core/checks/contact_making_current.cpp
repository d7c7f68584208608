#include "core/checks/capacitor_charge.h"
#include "core/checks/carried_current.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// From this many times the making rating a contact welds soon rather than late. Common practice, no
/// published source.
constexpr double kWeldsSoon = 2;

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const std::vector<CapacitorCharge> charges = capacitorCharges(survey);
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Contact) {
            continue;
        }
        const double rating_A = contactOf(survey, branch).rating.make_A;
        const CarriedCurrent current = makingCurrent(survey, i);
        // The inrush of a capacitor has a rule of its own, whose remedy is another: capacitor-inrush.
        if (rating_A <= 0 || current.value_A <= rating_A ||
            chargeBeyondRating(survey, charges, i) != nullptr) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), branch.part);
        Finding finding = newFinding(rule);
        finding.word = current.value_A > kWeldsSoon * rating_A ? SignalWord::Warning : SignalWord::Caution;
        finding.parts = {branch.part};
        finding.value = current.value_A;
        finding.limit = rating_A;
        finding.kind = QuantityKind::Current;
        finding.at_s = current.at_s;
        finding.what = fmt::format("The contact {}–{} of {} closes on an inrush of {} ({}); it may make {}.",
                                   branch.from, branch.to, name, amount(finding.value, finding.kind),
                                   whereFrom(current), amount(finding.limit, finding.kind));
        finding.why = "A contact that bounces on too high an inrush welds, and the load runs on.";
        finding.remedies = {{fmt::format("Let {} switch a relay that may make at least {}.", name,
                                         amount(finding.value, finding.kind)),
                             {}},
                            {fmt::format("Choose a part that may make more as {}.", name), {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kContactMakingCurrent{"contact-making-current",
                                        "Contact closes on too high an inrush",
                                        SignalWord::Warning,
                                        "the contact's rating for making",
                                        false,
                                        check};

} // namespace pumpwright

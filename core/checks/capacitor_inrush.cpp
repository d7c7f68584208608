#include "core/checks/capacitor_charge.h"
#include "core/checks/carried_current.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// From this many times the making rating a contact welds soon rather than late. Common practice, no
/// published source.
constexpr double kWeldsSoon = 2;
/// The resistor leaves this share of the rating to the tolerances. Common practice, no published source.
constexpr double kRemedyShare = 0.8;
/// [Ω] as they are sold, of a power that a short pulse does not hurt. Common practice, no published source.
constexpr std::array kResistors_ohm{0.47, 1.0, 2.2, 4.7, 10.0, 22.0, 47.0, 100.0};

double ratingOf(const Survey& survey, std::size_t contact) {
    return contactOf(survey, survey.branches()[contact]).rating.make_A;
}

/// The contact on the way that is furthest beyond its rating.
std::optional<std::size_t> worstContact(const Survey& survey, const CapacitorCharge& charge) {
    std::optional<std::size_t> worst;
    for (const std::size_t contact : charge.contacts) {
        const double rating_A = ratingOf(survey, contact);
        if (rating_A > 0 && charge.inrush_A > rating_A && (!worst || rating_A < ratingOf(survey, *worst))) {
            worst = contact;
        }
    }
    return worst;
}

Remedy resistorRemedy(const Survey& survey, const CapacitorCharge& charge, double rating_A) {
    const Circuit& circuit = survey.circuit();
    const std::string name = nameOf(circuit, charge.capacitor);
    const double wanted_ohm = charge.supply_V / (kRemedyShare * rating_A) - charge.resistance_ohm;
    const auto size = std::lower_bound(kResistors_ohm.begin(), kResistors_ohm.end(), wanted_ohm);
    const auto last = std::find_if(charge.feed.rbegin(), charge.feed.rend(),
                                   [](const LeadStep& step) { return step.wire.has_value(); });
    if (size == kResistors_ohm.end() || last == charge.feed.rend()) {
        return {say("Put a resistor of {} before {}.", amount(wanted_ohm, QuantityKind::Resistance), name),
                {}};
    }
    Part resistor = partBeside(circuit, resistorKind(), circuit.parts.at(charge.capacitor).at);
    resistor.values["resistance_ohm"] = *size;
    return {say("Put a resistor of {} into {}, before {}.", amount(*size, QuantityKind::Resistance),
                nameOf(circuit, *last->wire), name),
            insertEdit(circuit, *last->wire, last->to, std::move(resistor), "2", "1",
                       say("Add a resistor before {}", name))};
}

Finding findingFor(const Rule& rule, const Survey& survey, const CapacitorCharge& charge,
                   std::size_t contact) {
    const Branch& branch = survey.branches()[contact];
    const double rating_A = ratingOf(survey, contact);
    Finding finding = newFinding(rule);
    finding.word = charge.inrush_A > kWeldsSoon * rating_A ? SignalWord::Warning : SignalWord::Caution;
    finding.parts = {branch.part, charge.capacitor};
    finding.value = charge.inrush_A;
    finding.limit = rating_A;
    finding.kind = QuantityKind::Current;
    finding.what =
        say("The contact {}–{} of {} charges {} with {}, over {} in all; it may make {}.", branch.from,
            branch.to, nameOf(survey.circuit(), branch.part), nameOf(survey.circuit(), charge.capacitor),
            amount(finding.value, finding.kind), amount(charge.resistance_ohm, QuantityKind::Resistance),
            amount(finding.limit, finding.kind));
    finding.why =
        say("An empty capacitor is a short for a moment: the small contact welds, and the load runs on.");
    finding.remedies = {resistorRemedy(survey, charge, rating_A)};
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const CapacitorCharge& charge : capacitorCharges(survey)) {
        if (const auto contact = worstContact(survey, charge)) {
            findings.push_back(findingFor(rule, survey, charge, *contact));
        }
    }
    return findings;
}

} // namespace

extern const Rule kCapacitorInrush{"capacitor-inrush",
                                   words("Contact charges a capacitor"),
                                   SignalWord::Warning,
                                   words("the contact's rating for making; I = V/R of the charge: physics"),
                                   false,
                                   check};

} // namespace pumpwright

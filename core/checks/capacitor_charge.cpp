#include "core/checks/capacitor_charge.h"

#include "core/checks/carried_current.h"
#include "core/checks/lead_values.h"
#include "core/checks/set_point.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// As for every current on making: what flows for this long can melt metal.
constexpr double kMelting_s = 50e-6;

bool conductsSomehow(const Branch& branch) {
    return conducts(branch) || branch.sort == BranchSort::Passive;
}

/// What contacts and resistors on a way add to wires and fuses.
double partsOn_ohm(const Survey& survey, const std::vector<LeadStep>& way) {
    double sum_ohm = 0;
    for (const LeadStep& step : way) {
        if (!step.branch) {
            continue;
        }
        const Part& part = survey.part(survey.branches()[*step.branch].part);
        const BranchSort sort = survey.branches()[*step.branch].sort;
        const auto own_ohm =
            nameplateValue(part, sort == BranchSort::Passive ? "resistance_ohm" : "contactResistance_ohm");
        sum_ohm += own_ohm.value_or(0);
    }
    return sum_ohm;
}

void addContacts(const Survey& survey, const std::vector<LeadStep>& way, CapacitorCharge& charge) {
    for (const LeadStep& step : way) {
        if (step.branch && survey.branches()[*step.branch].sort == BranchSort::Contact) {
            charge.contacts.push_back(*step.branch);
        }
    }
}

/// The charge over the ways that a source offers; resistors are a way only where there is no other.
std::optional<CapacitorCharge> chargeFrom(const Survey& survey, const Branch& source, const Branch& storage) {
    for (const auto& mayPass : {conducts, conductsSomehow}) {
        auto feed = survey.leads().way(source.fromEnd(), storage.fromEnd(), source.toNet, mayPass);
        const auto back = survey.leads().way(storage.toEnd(), source.toEnd(), source.fromNet, mayPass);
        if (!feed || !back) {
            continue;
        }
        const Source& facts = *survey.features(source.part).source;
        const Storage& capacitor = *survey.features(storage.part).storage;
        CapacitorCharge charge{storage.part, std::move(*feed), {}, facts.emf_V};
        addContacts(survey, charge.feed, charge);
        addContacts(survey, *back, charge);
        charge.resistance_ohm = facts.resistance_ohm + capacitor.esr_ohm;
        for (const std::vector<LeadStep>& way : {charge.feed, *back}) {
            charge.resistance_ohm += resistance_ohm(survey, way) + partsOn_ohm(survey, way);
        }
        charge.peak_A = charge.supply_V / charge.resistance_ohm;
        const double constant_s = charge.resistance_ohm * capacitor.capacitance_F;
        charge.inrush_A = charge.peak_A * constant_s / kMelting_s * -std::expm1(-kMelting_s / constant_s);
        return charge;
    }
    return std::nullopt;
}

} // namespace

std::vector<CapacitorCharge> capacitorCharges(const Survey& survey) {
    std::vector<CapacitorCharge> charges;
    for (const Branch& storage : survey.branches()) {
        if (storage.sort != BranchSort::Storage) {
            continue;
        }
        for (const Branch& source : survey.branches()) {
            auto charge =
                source.sort == BranchSort::Source ? chargeFrom(survey, source, storage) : std::nullopt;
            if (charge) {
                charges.push_back(std::move(*charge));
                break;
            }
        }
    }
    return charges;
}

const CapacitorCharge* chargeBeyondRating(const Survey& survey, const std::vector<CapacitorCharge>& charges,
                                          std::size_t contact) {
    const double rating_A = contactOf(survey, survey.branches()[contact]).rating.make_A;
    const auto found = std::find_if(charges.begin(), charges.end(), [&](const CapacitorCharge& charge) {
        const bool passes =
            std::find(charge.contacts.begin(), charge.contacts.end(), contact) != charge.contacts.end();
        return passes && rating_A > 0 && charge.inrush_A > rating_A;
    });
    return found == charges.end() ? nullptr : &*found;
}

} // namespace pumpwright

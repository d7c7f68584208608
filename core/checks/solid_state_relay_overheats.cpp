#include "core/checks/carried_current.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/surroundings_of.h"
#include "core/checks/wording.h"
#include "core/parts/on_resistance.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// [K] junctions are designed to 115 °C or less and fail from 125 °C on [guide to the heat of solid-state
/// relays].
constexpr double kJunction_K = 388.15;
/// [K] beyond which a junction has failed anyhow; where heat and resistance drive each other without end.
constexpr double kRunaway_K = 773.15;
/// [K/W] heat sinks, junction to surroundings, as they are sold. Common practice, no published source.
constexpr std::array kSinks_KperW{7.0, 5.0, 3.0, 2.0, 1.5, 1.0, 0.7, 0.5};

/// Of T = Ta + I²·R25·(1 + α·(T − T25))·Rth, which is linear in T.
double junction_K(const Contact& contact, double thermal_KperW, double current_A, double ambient_K) {
    const double cold_K = current_A * current_A * contact.onResistance_ohm * thermal_KperW;
    const double gain = cold_K * kOnCoefficient_perK;
    if (gain >= 1) {
        return kRunaway_K;
    }
    const double settled_K = (ambient_K + cold_K * (1 - kOnCoefficient_perK * kOnReference_K)) / (1 - gain);
    return std::min(settled_K, kRunaway_K);
}

std::vector<Remedy> remedies(const Survey& survey, const PartId& id, const Contact& contact, double current_A,
                             double ambient_K) {
    const std::string name = nameOf(survey.circuit(), id);
    std::vector<Remedy> all;
    const auto sink = std::find_if(kSinks_KperW.begin(), kSinks_KperW.end(), [&](double thermal_KperW) {
        return thermal_KperW < contact.thermalResistance_KperW &&
               junction_K(contact, thermal_KperW, current_A, ambient_K) <= kJunction_K;
    });
    if (sink != kSinks_KperW.end()) {
        const Text text = say("Fit {} on a heat sink of {}, junction to surroundings", name,
                              amount(*sink, QuantityKind::ThermalResistance));
        all.push_back({say("{}.", text), valueEdit(survey.circuit(), id, "thermalResistance_KperW", *sink,
                                                   say("Fit {} on a heat sink", name))});
    }
    all.push_back({say("Choose a solid-state relay with less on-resistance as {}, or fit it where it is "
                       "cooler.",
                       name),
                   {}});
    return all;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (std::size_t i = 0; i < survey.branches().size(); ++i) {
        const Branch& branch = survey.branches()[i];
        if (branch.sort != BranchSort::Contact || !contactOf(survey, branch).semiconductor) {
            continue;
        }
        const Contact& contact = contactOf(survey, branch);
        const CarriedCurrent current = sustainedCurrent(survey, i);
        const double ambient_K = surroundings_K(survey, branch.part);
        const double hot_K = junction_K(contact, contact.thermalResistance_KperW, current.value_A, ambient_K);
        if (current.value_A <= 0 || hot_K <= kJunction_K) {
            continue;
        }
        Finding finding = newFinding(rule);
        finding.parts = {branch.part};
        finding.value = hot_K;
        finding.limit = kJunction_K;
        finding.kind = QuantityKind::Temperature;
        finding.at_s = current.at_s;
        finding.what =
            say("{} carries {} ({}) over {} and gives the heat off over {}: its junction gets {}{} "
                "in surroundings "
                "of {}.",
                nameOf(survey.circuit(), branch.part), amount(current.value_A, QuantityKind::Current),
                whereFrom(current), amount(contact.onResistance_ohm, QuantityKind::Resistance),
                amount(contact.thermalResistance_KperW, QuantityKind::ThermalResistance),
                hot_K < kRunaway_K ? Text() : say("hotter and hotter, beyond "), amount(hot_K, finding.kind),
                amount(ambient_K, finding.kind));
        finding.why = say("An overheated semiconductor mostly fails closed: the load runs on.");
        finding.remedies = remedies(survey, branch.part, contact, current.value_A, ambient_K);
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kSolidStateRelayOverheats{
    "solid-state-relay-overheats",
    words("Solid-state relay gets too hot"),
    SignalWord::Warning,
    words("guide to the heat of solid-state relays: junctions to 115 °C"),
    false,
    check};

} // namespace pumpwright

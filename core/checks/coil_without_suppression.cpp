#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/current_loop.h"
#include "core/checks/drive_reading.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/suppression.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

/// [V] Every edition of ISO 7637-2 has 12 V equipment stand supply transients of this size (pulse 1).
constexpr double kSpikeLimit_V = 100;
/// [V] Lowest voltage at which an air gap breaks down (Paschen minimum), value from memory of textbooks.
constexpr double kGapBreakdown_V = 327;

struct Spike {
    double value_V = 0;
    std::optional<double> at_s; ///< when in the drive; empty: by the closed form
};

/// What the recorded coil voltage shows against its working direction, if the coil was switched off at all.
std::optional<Spike> spikeInDrive(const Survey& survey, const PartId& part) {
    if (survey.recording() == nullptr) {
        return std::nullopt;
    }
    const Channel* voltage = survey.recording()->part(part, probe::kCoilVoltage);
    const Channel* energised = survey.recording()->part(part, probe::kEnergised);
    if (voltage == nullptr || energised == nullptr || fallings(*energised).empty()) {
        return std::nullopt;
    }
    const double sign = voltage->mean(voltage->times_s.front(), voltage->times_s.back()) < 0 ? -1 : 1;
    Spike spike{0, voltage->times_s.front()};
    for (std::size_t i = 0; i < voltage->values.size(); ++i) {
        const double against_V = -sign * static_cast<double>(voltage->values[i]);
        if (against_V > spike.value_V) {
            spike = {against_V, voltage->times_s[i]};
        }
    }
    return spike;
}

/// What opens a coil's circuit; of several contacts the one that stands least.
struct Opening {
    const Branch* branch = nullptr;
    double stands_V = kGapBreakdown_V;
    bool semiconductor = false;
};

Opening openingOf(const Survey& survey, const LoadPath& path) {
    Opening weakest;
    for (const std::size_t number : controlsOf(survey, path)) {
        const Branch& branch = survey.branches()[number];
        const Contact& contact = contactOf(survey, branch);
        if (weakest.branch == nullptr || contact.withstand_V < weakest.stands_V) {
            weakest = {&branch, contact.withstand_V, contact.semiconductor};
        }
    }
    return weakest;
}

/// I0·√(L/C), the energy of the coil in its stray capacitance; an opening gap lets it rise to what it stands,
/// a semiconductor is asked for all of it.
Spike closedFormSpike(const Coil& coil, double supplyVoltage_V, const Opening& opening) {
    const double current_A = supplyVoltage_V / std::max(coil.resistance_ohm, 1e-3);
    const double free_V = coil.strayCapacitance_F <= 0
                              ? std::numeric_limits<double>::max()
                              : current_A * std::sqrt(coil.inductance_H / coil.strayCapacitance_F);
    return {opening.semiconductor ? free_V : std::min(free_V, opening.stands_V), std::nullopt};
}

/// An output's own breakdown keeps the spike in the drive low; what it has to take is the closed form's.
Spike spikeOf(const Survey& survey, const LoadPath& path, const Coil& coil, const Opening& opening) {
    const auto recorded = opening.semiconductor ? std::nullopt : spikeInDrive(survey, path.part);
    return recorded.value_or(closedFormSpike(coil, survey.supplyVoltage_V(), opening));
}

bool offersBuiltInDiode(const Part& part) {
    for (const ChoiceSpec& choice : kindOf(part).choices()) {
        if (choice.key == "suppression") {
            return std::any_of(choice.options.begin(), choice.options.end(),
                               [](const ChoiceSpec::Option& option) { return option.id == "diode"; });
        }
    }
    return false;
}

std::vector<Remedy> remedies(const Survey& survey, const Branch& branch) {
    const Coil& coil = survey.features(branch.part).coils[branch.index];
    const std::string name = nameOf(survey.circuit(), branch.part);
    const PlusSide side = plusSide(survey, branch.fromNet, branch.toNet);
    if (side == PlusSide::Either || side == PlusSide::None) {
        return {{say("Fit a resistor of about 680 Ω across {}'s coil: its current may have either direction.",
                     name),
                 {}}};
    }
    const bool plusIsFrom = side == PlusSide::First;
    std::vector<Remedy> remedies;
    if (offersBuiltInDiode(survey.part(branch.part)) && plusIsFrom == coil.plusGoesToMinus) {
        remedies.push_back({say("Use a relay with a built-in diode as {}.", name),
                            choiceEdit(survey.circuit(), branch.part, "suppression", "diode",
                                       say("Build a diode into {}", name))});
    }
    const End plus = plusIsFrom ? branch.fromEnd() : branch.toEnd();
    const End minus = plusIsFrom ? branch.toEnd() : branch.fromEnd();
    remedies.push_back({say("Fit a diode across the coil, cathode to {}.", nameOf(survey.circuit(), plus)),
                        diodeEdit(survey.circuit(), plus, minus, 0, say("Add a diode across {}", name))});
    return remedies;
}

/// "contact 1–2 of B1", "output 1–2 of K2".
Text openingName(const Survey& survey, const Opening& opening) {
    const std::string name = nameOf(survey.circuit(), opening.branch->part);
    return opening.semiconductor
               ? say("the output {}–{} of {}", opening.branch->from, opening.branch->to, name)
               : say("the contact {}–{} of {}", opening.branch->from, opening.branch->to, name);
}

Text originOf(const Spike& spike, const Opening& opening) {
    if (spike.at_s) {
        return inDriveAt(*spike.at_s);
    }
    return opening.semiconductor ? say("by I·√(L/C)")
                                 : say("by I·√(L/C), as far as the opening gap stands it");
}

Finding findingFor(const Rule& rule, const Survey& survey, const Branch& branch, const Spike& spike,
                   const Opening& opening) {
    const std::string name = nameOf(survey.circuit(), branch.part);
    const Text from = originOf(spike, opening);
    Finding finding = newFinding(rule);
    finding.parts = {branch.part};
    finding.value = spike.value_V;
    finding.kind = QuantityKind::Voltage;
    finding.at_s = spike.at_s;
    finding.what =
        opening.branch == nullptr
            ? say("{} is switched off without suppression: its coil makes a spike of {} ({}).", name,
                  amount(spike.value_V, finding.kind), from)
            : say("{} is switched off without suppression: its coil makes a spike of {} ({}); with the "
                  "supply that makes {} across {}, which stands {}.",
                  name, amount(spike.value_V, finding.kind), from,
                  amount(spike.value_V + survey.supplyVoltage_V(), finding.kind),
                  openingName(survey, opening), amount(opening.stands_V, finding.kind));
    finding.why =
        opening.semiconductor
            ? say("The output breaks down at every switch-off; in the end it fails closed.")
            : say("The spike burns the contact that switches the coil and can destroy electronics nearby.");
    finding.remedies = remedies(survey, branch);
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        const Branch& branch = survey.branches()[path.branch];
        if (branch.sort != BranchSort::Coil || !path.source || isSuppressed(survey, branch)) {
            continue;
        }
        const Opening opening = openingOf(survey, path);
        const Spike spike = spikeOf(survey, path, survey.features(path.part).coils[branch.index], opening);
        const double limit_V =
            opening.semiconductor ? opening.stands_V - survey.supplyVoltage_V() : kSpikeLimit_V;
        if (spike.value_V > limit_V) {
            findings.push_back(findingFor(rule, survey, branch, spike, opening));
            findings.back().limit = limit_V;
        }
    }
    return findings;
}

} // namespace

extern const Rule kCoilWithoutSuppression{
    "coil-without-suppression",
    words("Coil without suppression"),
    SignalWord::Caution,
    words(
        "Caltrans equipment electrical standards 8.1; spike: ISO 7637-2, pulse 1, or what the output stands"),
    false,
    check};

} // namespace pumpwright

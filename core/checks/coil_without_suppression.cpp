#include "core/checks/current_loop.h"
#include "core/checks/drive_reading.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"
#include "core/parts/part_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

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

/// I0·√(L/C), the energy of the coil in its stray capacitance, as far as the opening gap stands it.
Spike closedFormSpike(const Coil& coil, double supplyVoltage_V) {
    const double current_A = supplyVoltage_V / std::max(coil.resistance_ohm, 1e-3);
    if (coil.strayCapacitance_F <= 0) {
        return {kGapBreakdown_V, std::nullopt};
    }
    const double free_V = current_A * std::sqrt(coil.inductance_H / coil.strayCapacitance_F);
    return {std::min(free_V, kGapBreakdown_V), std::nullopt};
}

bool takesUpCurrent(const Branch& branch) {
    return branch.sort == BranchSort::Rectifier || branch.sort == BranchSort::Storage ||
           branch.sort == BranchSort::Passive;
}

std::size_t otherNet(const Branch& branch, std::size_t net) {
    return branch.fromNet == net ? branch.toNet : branch.fromNet;
}

/// Whether something stands between two nets that takes up a coil's current: one part, or two in a row (a
/// diode with a zener).
bool isBridged(const Survey& survey, std::size_t net, std::size_t goal, int parts) {
    const auto& near = survey.branchesAt(net);
    return std::any_of(near.begin(), near.end(), [&](std::size_t number) {
        const Branch& branch = survey.branches()[number];
        const std::size_t other = otherNet(branch, net);
        return takesUpCurrent(branch) &&
               (other == goal || (parts > 1 && other != net && isBridged(survey, other, goal, parts - 1)));
    });
}

bool isSuppressed(const Survey& survey, const Branch& coil) {
    const auto& near = survey.branchesAt(coil.fromNet);
    const bool byAnyCoil = std::any_of(near.begin(), near.end(), [&](std::size_t number) {
        const Branch& other = survey.branches()[number];
        return other.sort == BranchSort::Coil && otherNet(other, coil.fromNet) == coil.toNet &&
               survey.features(other.part).coils[other.index].suppression != Suppression::None;
    });
    return byAnyCoil || isBridged(survey, coil.fromNet, coil.toNet, 2);
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
        return {{"Fit a resistor of about 680 Ω across " + name +
                     "'s coil: its current may have either direction.",
                 {}}};
    }
    const bool plusIsFrom = side == PlusSide::First;
    std::vector<Remedy> remedies;
    if (offersBuiltInDiode(survey.part(branch.part)) && plusIsFrom == coil.plusGoesToMinus) {
        remedies.push_back({"Use a relay with a built-in diode as " + name + ".",
                            choiceEdit(survey.circuit(), branch.part, "suppression", "diode",
                                       "Build a diode into " + name)});
    }
    const End plus = plusIsFrom ? branch.fromEnd() : branch.toEnd();
    const End minus = plusIsFrom ? branch.toEnd() : branch.fromEnd();
    remedies.push_back(
        {fmt::format("Fit a diode across the coil, cathode to {}.", nameOf(survey.circuit(), plus)),
         diodeEdit(survey.circuit(), plus, minus, "Add a diode across " + name)});
    return remedies;
}

bool isFed(const Survey& survey, const Branch& coil) {
    const auto& paths = survey.loadPaths();
    return std::any_of(paths.begin(), paths.end(), [&](const LoadPath& path) {
        return path.source && path.part == coil.part && path.load.sort == LoadSort::Coil;
    });
}

Finding findingFor(const Rule& rule, const Survey& survey, const Branch& branch, const Spike& spike) {
    const std::string from = spike.at_s ? "in the drive at " + amount(*spike.at_s, QuantityKind::Time)
                                        : std::string("by I·√(L/C), as far as the opening gap stands it");
    Finding finding = newFinding(rule);
    finding.parts = {branch.part};
    finding.value = spike.value_V;
    finding.limit = kSpikeLimit_V;
    finding.kind = QuantityKind::Voltage;
    finding.at_s = spike.at_s;
    finding.what =
        fmt::format("{} is switched off without suppression: its coil makes a spike of {} ({}).",
                    nameOf(survey.circuit(), branch.part), amount(spike.value_V, finding.kind), from);
    finding.why = "The spike burns the contact that switches the coil and can destroy electronics nearby.";
    finding.remedies = remedies(survey, branch);
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const Branch& branch : survey.branches()) {
        if (branch.sort != BranchSort::Coil || !isFed(survey, branch)) {
            continue;
        }
        const Coil& coil = survey.features(branch.part).coils[branch.index];
        if (coil.suppression != Suppression::None || isSuppressed(survey, branch)) {
            continue;
        }
        const Spike spike =
            spikeInDrive(survey, branch.part).value_or(closedFormSpike(coil, survey.supplyVoltage_V()));
        if (spike.value_V > kSpikeLimit_V) {
            findings.push_back(findingFor(rule, survey, branch, spike));
        }
    }
    return findings;
}

} // namespace

extern const Rule kCoilWithoutSuppression{
    "coil-without-suppression",
    "Coil without suppression",
    SignalWord::Caution,
    "Caltrans equipment electrical standards 8.1; spike: ISO 7637-2, pulse 1",
    false,
    check};

} // namespace pumpwright

#include "core/checks/current_loop.h"
#include "core/checks/remedy_edit.h"
#include "core/checks/survey.h"
#include "core/checks/wording.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// A diode that conducts when the winding beside it is fed.
struct Reversed {
    PartId diode;
    std::string anode;   ///< terminal that wrongly lies on the plus side
    std::string cathode; ///< and the other one
    bool builtIn;
};

Finding findingFor(const Rule& rule, const Survey& survey, const Reversed& reversed) {
    const std::string name = nameOf(survey.circuit(), reversed.diode);
    Finding finding = newFinding(rule);
    finding.parts = {reversed.diode};
    finding.value = survey.supplyVoltage_V();
    finding.limit = 0;
    finding.kind = QuantityKind::Voltage;
    if (reversed.builtIn) {
        finding.what =
            say("The diode inside {} stands the wrong way round: plus is on {}, and belongs on {}.", name,
                reversed.anode, reversed.cathode);
        finding.remedies = {{say("Exchange the wires on {} and {}.", reversed.anode, reversed.cathode),
                             swapEdit(survey.circuit(), reversed.diode, reversed.anode, reversed.cathode,
                                      say("Exchange the coil wires of {}", name))}};
    } else {
        finding.what = say("{} across the winding stands the wrong way round: its anode is on plus.", name);
        finding.remedies = {
            {say("Turn {} round.", name), swapEdit(survey.circuit(), reversed.diode, reversed.anode,
                                                   reversed.cathode, say("Turn {} round", name))}};
    }
    finding.why =
        say("It shorts the supply as soon as the winding is switched on: the diode or the switch burns.");
    return finding;
}

/// A diode as a part of its own, across a coil or motor.
std::optional<Reversed> reversedPart(const Survey& survey, const Branch& branch) {
    if (branch.sort != BranchSort::Rectifier || !liesAcrossWinding(survey, branch) ||
        plusSide(survey, branch.fromNet, branch.toNet) != PlusSide::First) {
        return std::nullopt;
    }
    return Reversed{branch.part, branch.from, branch.to, false};
}

/// A coil whose built-in diode or zener asks for plus on one terminal.
std::optional<Reversed> reversedInside(const Survey& survey, const Branch& branch) {
    if (branch.sort != BranchSort::Coil) {
        return std::nullopt;
    }
    const Coil& coil = survey.features(branch.part).coils[branch.index];
    if (coil.suppression != Suppression::Diode && coil.suppression != Suppression::Zener) {
        return std::nullopt;
    }
    const PlusSide side = plusSide(survey, branch.fromNet, branch.toNet);
    const PlusSide wrong = coil.plusGoesToMinus ? PlusSide::Second : PlusSide::First;
    if (side != wrong) {
        return std::nullopt;
    }
    return side == PlusSide::First ? Reversed{branch.part, branch.from, branch.to, true}
                                   : Reversed{branch.part, branch.to, branch.from, true};
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const Branch& branch : survey.branches()) {
        for (const auto& reversed : {reversedPart(survey, branch), reversedInside(survey, branch)}) {
            if (reversed) {
                findings.push_back(findingFor(rule, survey, *reversed));
            }
        }
    }
    return findings;
}

} // namespace

extern const Rule kSuppressionDiodeReversed{"suppression-diode-reversed",
                                            words("Suppression diode the wrong way round"),
                                            SignalWord::Warning,
                                            words("common practice, no published source"),
                                            false,
                                            check};

} // namespace pumpwright

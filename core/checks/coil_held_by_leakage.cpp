#include "core/checks/edit_draft.h"
#include "core/checks/residual_current.h"
#include "core/checks/wording.h"
#include "core/parts/kinds.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// What is left across a coil stays below 90 % of its drop-out voltage [Caltrans equipment electrical
/// standards 8.4].
constexpr double kMargin = 0.90;

// Common practice, no published source, all of them.
constexpr double kLead_m = 0.1;
constexpr double kRemedyShare = 0.8; ///< of the limit
constexpr std::array kResistors_ohm{1000.0, 470.0, 220.0, 100.0, 47.0, 22.0};
constexpr double kMostPower_W = 5; ///< that a resistor in a car may turn into heat for hours

double ownCurrent_A(const Residual& residual, const Coil& coil) {
    return residual.voltage_V(1 / coil.resistance_ohm) / coil.resistance_ohm;
}

std::optional<Remedy> bleedRemedy(const Survey& survey, const LoadPath& path, const Coil& coil,
                                  const Residual& residual, double limit_A) {
    const auto size = std::find_if(kResistors_ohm.begin(), kResistors_ohm.end(), [&](double one_ohm) {
        Residual beside = residual;
        beside.shunt_S += 1 / one_ohm;
        return ownCurrent_A(beside, coil) <= kRemedyShare * limit_A;
    });
    if (size == kResistors_ohm.end() || residual.supply_V * residual.supply_V / *size > kMostPower_W) {
        return std::nullopt;
    }
    const std::string name = nameOf(survey.circuit(), path.part);
    EditDraft draft(survey.circuit(), say("Draw the leakage at {} off", name));
    const PartId resistor = draft.add(resistorKind(), path.part);
    draft.setValue(resistor, "resistance_ohm", *size);
    draft.setValue(resistor, "ratedPower_W", kMostPower_W);
    draft.addWire({path.part, path.load.from}, {resistor, "1"}, 0.75e-6, kLead_m);
    draft.addWire({resistor, "2"}, {path.part, path.load.to}, 0.75e-6, kLead_m);
    return Remedy{say("Fit a resistor of {} and {} beside the coil of {}.",
                      amount(*size, QuantityKind::Resistance), amount(kMostPower_W, QuantityKind::Power),
                      name),
                  std::move(draft).edit()};
}

Finding findingFor(const Rule& rule, const Survey& survey, const LoadPath& path, const Coil& coil,
                   const Residual& residual) {
    const double limit_A = kMargin * coil.dropOut_A;
    const std::vector<std::string> over = namesOf(survey.circuit(), residual.over);
    Finding finding = newFinding(rule);
    finding.parts = residual.over;
    finding.parts.insert(finding.parts.begin(), path.part);
    finding.value = ownCurrent_A(residual, coil);
    finding.limit = limit_A;
    finding.kind = QuantityKind::Current;
    finding.what = say("Switched off, the coil of {} still gets {} over {}; it lets go for certain "
                       "below {}, 90 % of its drop-out current.",
                       nameOf(survey.circuit(), path.part), amount(finding.value, finding.kind), listOf(over),
                       amount(finding.limit, finding.kind));
    finding.why = say("A relay that has once pulled in stays in: the pump does not stop.");
    if (const auto bleed = bleedRemedy(survey, path, coil, residual, limit_A)) {
        finding.remedies.push_back(*bleed);
    }
    finding.remedies.push_back(
        {say("Take {} off what switches the coil, or put a relay between.", listOf(over)), {}});
    return finding;
}

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    for (const LoadPath& path : survey.loadPaths()) {
        const Branch& branch = survey.branches()[path.branch];
        if (branch.sort != BranchSort::Coil) {
            continue;
        }
        const Coil& coil = survey.features(path.part).coils[branch.index];
        const Residual residual = residualOf(survey, path);
        if (!residual.over.empty() && ownCurrent_A(residual, coil) > kMargin * coil.dropOut_A) {
            findings.push_back(findingFor(rule, survey, path, coil, residual));
        }
    }
    return findings;
}

} // namespace

extern const Rule kCoilHeldByLeakage{"coil-held-by-leakage",
                                     words("Relay may not drop out"),
                                     SignalWord::Warning,
                                     words("Caltrans equipment electrical standards 8.4"),
                                     false,
                                     check};

} // namespace pumpwright

#include "core/checks/lead_values.h"
#include "core/checks/wording.h"
#include "core/parts/conductor.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

/// [K] that a coil's own heat adds once it has been in for long. Common practice, no published source.
constexpr double kOwnHeat_K = 30;
/// Energising voltage at least 110 % of the least that pulls it in [Caltrans equipment electrical standards
/// 8.3].
constexpr double kMargin = 1.10;

std::vector<Finding> check(const Rule& rule, const Survey& survey) {
    std::vector<Finding> findings;
    const ProjectLimits& limits = survey.circuit().limits;
    const double warm = copperWarmShare(limits.ambient_K + kOwnHeat_K);
    for (const LoadPath& path : survey.loadPaths()) {
        const Branch& branch = survey.branches()[path.branch];
        if (branch.sort != BranchSort::Coil || !path.source) {
            continue;
        }
        const Coil& coil = survey.features(path.part).coils[branch.index];
        const double coil_ohm = coil.resistance_ohm * warm;
        const double lead_ohm = resistance_ohm(survey, path.feed) + resistance_ohm(survey, path.back);
        const double gets_V = limits.lowestSupply_V * coil_ohm / (coil_ohm + lead_ohm);
        const double needs_V = kMargin * coil.pullIn_A * coil_ohm;
        if (gets_V >= needs_V) {
            continue;
        }
        const std::string name = nameOf(survey.circuit(), path.part);
        Finding finding = newFinding(rule);
        finding.parts = {path.part};
        finding.value = gets_V;
        finding.limit = needs_V;
        finding.kind = QuantityKind::Voltage;
        finding.what = fmt::format(
            "With {} of supply the coil of {} gets {}; hot, at {}, it needs {}.",
            amount(limits.lowestSupply_V, finding.kind), name, amount(gets_V, finding.kind),
            amount(limits.ambient_K + kOwnHeat_K, QuantityKind::Temperature), amount(needs_V, finding.kind));
        finding.why = "A hot relay that has dropped out does not pull in again while the supply is low.";
        finding.remedies = {{"Choose a relay that pulls in at less as " + name + ".", {}},
                            {"Fit " + name + " where it is cooler, or lay larger wires to its coil.", {}}};
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace

extern const Rule kCoilPullInMargin{"coil-pull-in-margin",
                                    "Relay may not pull in when hot",
                                    SignalWord::Warning,
                                    "Caltrans equipment electrical standards 8.3; lowest supply set in the "
                                    "project's limits",
                                    false,
                                    check};

} // namespace pumpwright

#include "core/checks/residual_current.h"

#include "core/checks/carried_current.h"
#include "core/checks/controls.h"
#include "core/checks/set_point.h"
#include "core/checks/suppression.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// [S] of a branch that carries current without being a contact; a cold filament has its inrush's.
double conductanceOf_S(const Survey& survey, const Branch& branch, double supply_V) {
    const Features& features = survey.features(branch.part);
    switch (branch.sort) {
    case BranchSort::Coil:
        return 1 / features.coils[branch.index].resistance_ohm;
    case BranchSort::Load: {
        const Load& load = features.loads[branch.index];
        return (load.sort == LoadSort::Lamp ? load.inrush_A : load.running_A) / supply_V;
    }
    case BranchSort::Passive: {
        const auto resistance_ohm = nameplateValue(survey.part(branch.part), "resistance_ohm");
        return resistance_ohm ? 1 / *resistance_ohm : 0;
    }
    case BranchSort::Source:
    case BranchSort::Fuse:
    case BranchSort::Plug:
    case BranchSort::Contact:
    case BranchSort::Rectifier:
    case BranchSort::Storage:
        break;
    }
    return 0;
}

bool isElectronic(const Survey& survey, const Branch& branch) {
    return branch.sort == BranchSort::Load &&
           survey.features(branch.part).loads[branch.index].sort == LoadSort::Electronic;
}

/// A branch at one of the load's terminals that is not on a rail itself.
void addBridge(const Survey& survey, const Branch& other, std::size_t net, const std::vector<bool>& rail,
               Residual& residual) {
    if (other.sort == BranchSort::Contact && contactOf(survey, other).semiconductor) {
        residual.leakage_A += contactOf(survey, other).leakage_A;
        residual.over.push_back(other.part);
        return;
    }
    const std::size_t far = other.fromNet == net ? other.toNet : other.fromNet;
    const double own_S = rail[far] ? conductanceOf_S(survey, other, residual.supply_V) : 0;
    if (own_S > 0) {
        residual.bridge_S += own_S;
        residual.over.push_back(other.part);
    }
}

/// A branch beside the load.
void addShunt(const Survey& survey, const Branch& other, Residual& residual) {
    const double own_S = conductanceOf_S(survey, other, residual.supply_V);
    if (own_S > 0 && isElectronic(survey, other)) {
        residual.drawn_A += own_S * residual.supply_V;
    } else if (own_S > 0) {
        residual.shunt_S += own_S;
    }
}

} // namespace

double Residual::voltage_V(double own_S) const {
    const double into_A = std::max(0.0, leakage_A + supply_V * bridge_S - drawn_A);
    return std::min(supply_V, into_A / (own_S + shunt_S + bridge_S));
}

Residual residualOf(const Survey& survey, const LoadPath& path) {
    Residual residual;
    residual.supply_V = survey.supplyVoltage_V();
    if (!path.source || controlsOf(survey, path).empty()) {
        return residual;
    }
    const Branch& load = survey.branches()[path.branch];
    const auto [plus, minus] = netsOf(survey, path);
    const auto others = [&](std::size_t net, const auto& take) {
        for (const std::size_t number : survey.branchesAt(net)) {
            if (number != path.branch) {
                take(survey.branches()[number]);
            }
        }
    };
    // A rail has hundreds of branches, so what lies across the load is looked for at its other end.
    const bool fewAtPlus = survey.branchesAt(plus).size() <= survey.branchesAt(minus).size();
    others(fewAtPlus ? plus : minus, [&](const Branch& other) {
        if (liesAcross(load, other)) {
            addShunt(survey, other, residual);
        }
    });
    for (const auto& [net, rail] :
         {std::pair{plus, &survey.liveNets()}, std::pair{minus, &survey.groundedNets()}}) {
        if (!(*rail)[net]) {
            others(net, [&, at = net, to = rail](const Branch& other) {
                if (!liesAcross(load, other)) {
                    addBridge(survey, other, at, *to, residual);
                }
            });
        }
    }
    return residual;
}

} // namespace pumpwright

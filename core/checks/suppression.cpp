#include "core/checks/suppression.h"

#include <algorithm>

namespace pumpwright {
namespace {

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

} // namespace

bool isSuppressed(const Survey& survey, const Branch& winding) {
    const auto& near = survey.branchesAt(winding.fromNet);
    const bool byAnyCoil = std::any_of(near.begin(), near.end(), [&](std::size_t number) {
        const Branch& other = survey.branches()[number];
        return other.sort == BranchSort::Coil && liesAcross(other, winding) &&
               survey.features(other.part).coils[other.index].suppression != Suppression::None;
    });
    return byAnyCoil || isBridged(survey, winding.fromNet, winding.toNet, 2);
}

std::optional<PartId> freewheelDiodeOf(const Survey& survey, const Branch& coil) {
    for (const std::size_t number : survey.branchesAt(coil.fromNet)) {
        const Branch& other = survey.branches()[number];
        const bool builtIn = other.sort == BranchSort::Coil &&
                             survey.features(other.part).coils[other.index].suppression == Suppression::Diode;
        if (liesAcross(other, coil) && (builtIn || other.sort == BranchSort::Rectifier)) {
            return other.part;
        }
    }
    return std::nullopt;
}

bool liesAcross(const Branch& one, const Branch& other) {
    return (one.fromNet == other.fromNet && one.toNet == other.toNet) ||
           (one.fromNet == other.toNet && one.toNet == other.fromNet);
}

} // namespace pumpwright

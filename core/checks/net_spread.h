#pragma once

#include "core/checks/branch.h"

#include <functional>
#include <vector>

namespace pumpwright {

class Survey;

using MayPass = std::function<bool(const Branch&)>;

/// Whether a branch is a contact that something moves; the pins of a connector are not.
inline bool isOperated(const Branch& branch) {
    return branch.sort == BranchSort::Contact && branch.by != Operator::None;
}
inline bool isOperated(const Survey&, const Branch& branch) {
    return isOperated(branch);
}

/// Nets that current reaches from one of these nets over branches that may pass, in their direction;
/// `backwards`, from which it reaches one of them. Sources are no way. Nets in `walls` are reached and not
/// left.
std::vector<bool> netsFrom(const Survey& survey, const std::vector<std::size_t>& starts, bool backwards,
                           const MayPass& mayPass, const std::vector<bool>& walls = {});

/// Nets that the plus of some source reaches without passing its minus, and nets that reach its minus.
std::vector<bool> netsOnPlus(const Survey& survey, const MayPass& mayPass);
std::vector<bool> netsOnMinus(const Survey& survey, const MayPass& mayPass);

} // namespace pumpwright

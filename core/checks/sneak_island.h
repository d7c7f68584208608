#pragma once

#include "core/checks/survey.h"

#include <optional>
#include <set>
#include <vector>

namespace pumpwright {

/// A piece of a circuit that hangs together without the poles of its sources: current on an unintended path
/// stays within one. A ground point that has lost the body joins what is wired to it into one piece.
struct SneakIsland {
    std::vector<std::size_t> branches; ///< numbers in the survey's branches, in order
    std::optional<PartId> lostGround;
    std::set<End> cutOff; ///< terminals that reach the body over that ground point alone
};

/// The islands in which something could flow where it should not: with a load that has neither end on a pole,
/// with two fuses, or with a lamp on the brake pedal beside another switch. A ground point is taken as lost,
/// one at a time, where two loads or more depend on it.
std::vector<SneakIsland> sneakIslands(const Survey& survey);

/// Whether a load is a lamp that only the brake pedal should light: the pedal's contact is the only one on
/// its way.
bool isBrakeLamp(const Survey& survey, const LoadPath& path);

/// A load or a coil, for these rules.
bool isConsumer(const Branch& branch);

} // namespace pumpwright

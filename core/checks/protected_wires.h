#pragma once

#include "core/checks/survey.h"

#include <vector>

namespace pumpwright {

/// The wires that only this fuse protects when they are shorted to ground: from its terminal away from the
/// source over contacts, plugs and diodes up to the loads or to the next fuse. Empty where both its terminals
/// have a feed that does not pass through it.
std::vector<WireId> protectedWires(const Survey& survey, const Branch& fuse);

} // namespace pumpwright

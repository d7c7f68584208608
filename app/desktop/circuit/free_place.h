#pragma once

#include "app/desktop/circuit/layout.h"

namespace pumpwright {

/// Where a part can be put with room for wires round it: the first place in reading order that is inside the
/// area, or below it where that is full.
GridPoint freePlace(const CircuitLayout& layout, const Part& prototype, const QRectF& area);

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"

namespace pumpwright {

/// A point of a part's own drawing, turned as the part is and still counted from its origin: mirrored left to
/// right first, then turned clockwise.
GridPoint turned(const Part& part, GridPoint local);

/// What a part takes up on the sheet, in grid steps; edges included.
struct Footprint {
    GridPoint least;
    GridPoint most;

    bool covers(GridPoint point) const;
};

/// From terminal to terminal and port to port, and no less than one step to every side of its origin, as
/// symbols are drawn.
Footprint footprintOf(const Part& part);

} // namespace pumpwright

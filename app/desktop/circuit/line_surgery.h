#pragma once

#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/layout.h"

#include <optional>

namespace pumpwright {

// Cutting into lines: tees, parts dropped onto a wire, and joining a wire again whose part is taken away.

/// Where a line is cut: on the grid, on a straight stretch of it.
struct CutPlace {
    GridPoint at;
    std::size_t stretch = 0; ///< that begins at this corner
    double share = 0.5;      ///< of the drawn length that lies before the place
    GridPoint direction;     ///< one step along the stretch
};

/// The place of a line's grid points that is nearest, its ends left out; none on a line of one step.
std::optional<CutPlace> cutPlace(const LinePicture& line, const QPointF& at);

/// Cuts a wire, puts a splice there and ends the branch on it. Both halves are as the wire was, and share its
/// length.
Addition branching(const Circuit& circuit, const WireId& id, const CutPlace& place, Wire branch);
/// The same for a hose, with a tee.
Addition branching(const Circuit& circuit, const HoseId& id, const CutPlace& place, Hose branch);

/// Whether a part like this can be put into a wire: it has two terminals, and current flows between them.
bool fitsIntoWire(const Part& prototype);
/// Places a part in a cut wire; the end of the part that lies nearer takes the wire's beginning.
Addition inserting(const Circuit& circuit, const Part& prototype, GridPoint at, const WireId& id,
                   const CutPlace& place);

/// Where the part only joins two wires, as a fuse, a switch or a splice does: an edit that takes it away and
/// makes one wire of the two. A load is never bridged.
std::optional<Edit> healingRemoval(const Circuit& circuit, const PartId& id);

} // namespace pumpwright

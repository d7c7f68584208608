#pragma once

#include "core/circuit/circuit.h"

namespace pumpwright {

/// The circuit without what only the drawing shows: moving a part asks for no new drive.
Circuit withoutDrawing(Circuit circuit);

/// Whether two circuits without their drawing have the same findings, drive and breakdowns.
bool haveSameResults(const Circuit& a, const Circuit& b);

} // namespace pumpwright

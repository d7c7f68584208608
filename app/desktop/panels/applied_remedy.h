#pragma once

#include "core/circuit/circuit.h"

namespace pumpwright {

/// A remedy on the circuit as it is drawn now. Moving parts asks for no new check, so a remedy may still hold
/// where its parts and the corners of its wires were.
Edit remedyAsDrawn(const Circuit& circuit, Edit remedy);

} // namespace pumpwright

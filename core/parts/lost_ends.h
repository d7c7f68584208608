#pragma once

#include "core/circuit/circuit.h"

namespace pumpwright {

/// The edit, and after it what takes away everything that it would leave without a place in the circuit:
/// wires and hoses with an end on a part, terminal or port that is not there any more (a changeover relay
/// made into one with a make contact has no 87a), and switch moves of parts that are gone. An edit that
/// leaves nothing so is not changed.
Edit editWithLostEnds(const Circuit& circuit, Edit edit);

} // namespace pumpwright

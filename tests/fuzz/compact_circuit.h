#pragma once

#include "tests/support/random_circuit.h"

namespace pumpwright {

/// A circuit of a battery and up to `mostParts` others, of any kind and joined anyhow, driven for up to two
/// seconds. Takes few bytes for much, so that a fuzzer soon has whole circuits: what it says nothing of has
/// its default.
Circuit compactCircuit(RandomCircuits& random, int mostParts);

} // namespace pumpwright

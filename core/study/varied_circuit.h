#pragma once

#include "core/circuit/circuit.h"

#include <cstdint>

namespace pumpwright {

/// The circuit as one of many cars has it: every value that has a tolerance is drawn anew within it, and kept
/// in the range that its parameter allows. The draw depends on seed, car, part id and parameter alone: not on
/// what other parts there are, nor on which thread draws.
Circuit variedCircuit(Circuit circuit, std::uint64_t seed, std::uint64_t car);

/// One draw: the nominal value times 1 plus a share. `first` and `second` are even over 0…1, ends excluded.
double drawnValue(double nominal, const Tolerance& tolerance, double first, double second);

} // namespace pumpwright

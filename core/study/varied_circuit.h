#pragma once

#include "core/study/adjustable.h"

#include <cstdint>
#include <vector>

namespace pumpwright {

/// A value with a tolerance.
struct VariedValue {
    Adjustable what;
    double nominal = 0;
    Tolerance tolerance;
};

/// All of them, in the order of their part ids.
std::vector<VariedValue> variedValues(const Circuit& circuit);

/// The value as one of many cars has it, drawn within its tolerance and kept in the range that its parameter
/// allows.
double drawnValue(const VariedValue& value, std::uint64_t seed, std::uint64_t car);

/// The circuit as one of many cars has it: every value that has a tolerance is drawn anew within it, and kept
/// in the range that its parameter allows. The draw depends on seed, car, part id and parameter alone: not on
/// what other parts there are, nor on which thread draws.
Circuit variedCircuit(const Circuit& circuit, std::uint64_t seed, std::uint64_t car);
/// The same, where variedValues() of the circuit is known already.
Circuit variedCircuit(Circuit circuit, const std::vector<VariedValue>& values, std::uint64_t seed,
                      std::uint64_t car);

/// One draw: the nominal value times 1 plus a share. `first` and `second` are even over 0…1, ends excluded.
double drawnValue(double nominal, const Tolerance& tolerance, double first, double second);

} // namespace pumpwright

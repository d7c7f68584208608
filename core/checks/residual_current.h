#pragma once

#include "core/checks/survey.h"

#include <vector>

namespace pumpwright {

/// What still reaches a load while everything that switches it is off: the leakage of semiconductors at its
/// terminals, and currents over loads and resistors that bridge what is open.
struct Residual {
    double leakage_A = 0; ///< of semiconductors that are off
    double bridge_S = 0;  ///< of loads and resistors between a live net and the load's
    double shunt_S = 0;   ///< of what lies beside the load and takes its share
    double drawn_A = 0;   ///< by electronics beside the load, whatever the voltage
    double supply_V = 0;
    std::vector<PartId> over; ///< the parts that let it through, in order

    /// [V] across the load, with its own conductance [S].
    double voltage_V(double own_S) const;
};

/// Nothing for a load that nothing switches.
Residual residualOf(const Survey& survey, const LoadPath& path);

} // namespace pumpwright

#pragma once

#include "core/simulate/sparse_matrix.h"

#include <span>

namespace pumpwright {

/// A system M·dx/dt = f(x, t) of index 1 at most; M is constant and may be singular. SI throughout.
class DifferentialSystem {
public:
    virtual ~DifferentialSystem() = default;
    virtual int size() const = 0;
    /// f at one instant.
    virtual void rightSide(double time_s, std::span<const double> x, std::span<double> f) const = 0;
    /// f, and df/dx added to `slopes`, which holds zeros.
    virtual void rightSideAndSlopes(double time_s, std::span<const double> x, std::span<double> f,
                                    SparseMatrix& slopes) const = 0;
    /// M added to `masses`, which holds zeros.
    virtual void masses(SparseMatrix& masses) const = 0;
    /// For each unknown the size below which its errors do not matter.
    virtual std::span<const double> tolerances() const = 0;
};

} // namespace pumpwright

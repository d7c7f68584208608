#pragma once

#include <cstddef>

namespace pumpwright {

/// A share estimated from a count, with the interval in which the true share lies with a confidence of 95 %.
struct Proportion {
    double share = 0; ///< count / of; 0 for none of none
    double low = 0;
    double high = 1;
};

/// The exact interval after Clopper and Pearson (Biometrika 26, 1934, 404–413): never too narrow.
/// `count` is 0 to `of`.
Proportion proportion(std::size_t count, std::size_t of);

/// Regularised incomplete beta function I_x(a, b) for a, b > 0 and 0 ≤ x ≤ 1, to about 1e-12
/// [Nist-Dlmf 8.17(v)].
double incompleteBeta(double a, double b, double x);

} // namespace pumpwright

#pragma once

#include <cstddef>
#include <functional>
#include <limits>
#include <optional>
#include <vector>

namespace pumpwright {

/// A value to be fitted: where the search begins, and what it may be. Bounds are both finite or both
/// infinite; where `low` is above zero the search goes by ratios.
struct FitStart {
    double value = 0;
    double low = -std::numeric_limits<double>::infinity();
    double high = std::numeric_limits<double>::infinity();
};

struct LeastSquaresOptions {
    int mostRounds = 400;
    double tolerance = 1e-12; ///< of the sum of squares and of the values, relative
    /// Share of a value by which it is moved for the slopes. Larger where the residuals carry noise of their
    /// own, as those of a simulation do.
    double moveShare = 6e-6;
};

struct LeastSquares {
    enum class Status { Converged, RoundsUsedUp, Cancelled };
    Status status = Status::Converged;
    std::vector<double> values;
    std::vector<bool> isAtBound;
    double squares = 0; ///< sum of the squared residuals
    /// One standard deviation; nothing for a value that the residuals do not depend on, or that stands at a
    /// bound.
    std::vector<std::optional<double>> standardErrors;
    /// Of the values' errors, −1…1; 0 with a value that has no standard error.
    std::vector<std::vector<double>> correlations;
};

/// The residuals at each of some points, or nothing where the search is to end. Called many times.
using Residuals = std::function<std::optional<std::vector<std::vector<double>>>(
    const std::vector<std::vector<double>>& points)>;

/// Finds values within their bounds for which the sum of the squared residuals is least, by the method of
/// Levenberg and Marquardt. The starts should not stand at a bound: there nothing moves. At least as many
/// residuals as values.
LeastSquares leastSquares(const std::vector<FitStart>& starts, const Residuals& residuals,
                          const LeastSquaresOptions& options = {});

} // namespace pumpwright

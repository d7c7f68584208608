#include "core/study/least_squares.h"

#include <Eigen/Dense>
#include <unsupported/Eigen/NonLinearOptimization>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// A bounded value as a smooth function of one without bounds: half a wave of the sine leads from bound to
/// bound.
class Bounded {
public:
    explicit Bounded(const FitStart& start)
        : m_start(start), m_isFree(!std::isfinite(start.low)), m_byRatio(!m_isFree && start.low > 0),
          m_low(scaled(start.low)), m_high(scaled(start.high)) {}

    double value(double free) const {
        if (m_isFree) {
            return free;
        }
        const double place = m_low + (m_high - m_low) * (1 + std::sin(free)) / 2;
        return std::clamp(m_byRatio ? std::exp(place) : place, m_start.low, m_start.high);
    }
    double slope(double free) const {
        if (m_isFree) {
            return 1;
        }
        return (m_high - m_low) * std::cos(free) / 2 * (m_byRatio ? value(free) : 1);
    }
    double start() const {
        if (m_isFree) {
            return m_start.value;
        }
        const double place = 2 * (scaled(m_start.value) - m_low) / (m_high - m_low) - 1;
        // A turn further the sine is the same, and the search, which measures its first step by where it
        // starts, does not start near zero.
        return std::asin(std::clamp(place, -1.0, 1.0)) + 2 * std::numbers::pi;
    }
    bool isAtBound(double value) const {
        constexpr double kNear = 1e-4; // of the way between the bounds
        const double place = (scaled(value) - m_low) / (m_high - m_low);
        return !m_isFree && (place < kNear || place > 1 - kNear);
    }
    /// Two values about this one for a difference quotient, within the bounds.
    std::pair<double, double> about(double value, double share) const {
        const double move = share * (value != 0 ? std::abs(value) : m_isFree ? 1 : m_start.high);
        return {std::max(value - move, m_start.low), std::min(value + move, m_start.high)};
    }

private:
    double scaled(double value) const { return m_byRatio ? std::log(value) : value; }

    FitStart m_start;
    bool m_isFree;
    bool m_byRatio;
    double m_low;
    double m_high;
};

constexpr int kEnd = -1; ///< tells the library to end

/// What the library minimises; knows values without bounds only.
class Problem {
public:
    Problem(const std::vector<FitStart>& starts, const Residuals& residuals, double moveShare)
        : m_residuals(residuals), m_moveShare(moveShare) {
        for (const FitStart& start : starts) {
            m_values.emplace_back(start);
        }
        if (const auto first = m_residuals({valuesAt(freeStart())})) {
            m_count = static_cast<int>(first->front().size());
        }
    }

    int inputs() const { return static_cast<int>(m_values.size()); }
    int values() const { return m_count; } ///< 0 where the search was ended at once

    int operator()(const VectorXd& free, VectorXd& residuals) const {
        const auto found = m_residuals({valuesAt(free)});
        if (!found) {
            return kEnd;
        }
        residuals = Eigen::Map<const VectorXd>(found->front().data(), m_count);
        return 0;
    }

    int df(const VectorXd& free, MatrixXd& jacobian) const {
        if (!slopes(valuesAt(free), jacobian)) {
            return kEnd;
        }
        for (int i = 0; i < inputs(); ++i) {
            jacobian.col(i) *= m_values[static_cast<std::size_t>(i)].slope(free[i]);
        }
        return 0;
    }

    /// By central differences, all points at once, so that they can be worked out side by side.
    bool slopes(const std::vector<double>& values, MatrixXd& jacobian) const {
        std::vector<std::vector<double>> points;
        for (std::size_t i = 0; i < values.size(); ++i) {
            const auto [below, above] = m_values[i].about(values[i], m_moveShare);
            for (const double moved : {below, above}) {
                points.push_back(values);
                points.back()[i] = moved;
            }
        }
        const auto found = m_residuals(points);
        if (!found) {
            return false;
        }
        jacobian.resize(m_count, inputs());
        for (std::size_t i = 0; i < values.size(); ++i) {
            const Eigen::Map<const VectorXd> below((*found)[2 * i].data(), m_count);
            const Eigen::Map<const VectorXd> above((*found)[2 * i + 1].data(), m_count);
            jacobian.col(static_cast<int>(i)) = (above - below) / (points[2 * i + 1][i] - points[2 * i][i]);
        }
        return true;
    }

    VectorXd freeStart() const {
        VectorXd free(inputs());
        for (int i = 0; i < inputs(); ++i) {
            free[i] = m_values[static_cast<std::size_t>(i)].start();
        }
        return free;
    }
    std::vector<double> valuesAt(const VectorXd& free) const {
        std::vector<double> values;
        for (int i = 0; i < inputs(); ++i) {
            values.push_back(m_values[static_cast<std::size_t>(i)].value(free[i]));
        }
        return values;
    }
    bool isAtBound(std::size_t i, double value) const { return m_values[i].isAtBound(value); }

private:
    const Residuals& m_residuals;
    double m_moveShare;
    int m_count = 0;
    std::vector<Bounded> m_values;
};

/// Values that have an error: those at a bound, and those on which nothing depends, have none.
std::vector<int> determined(const std::vector<bool>& isAtBound, const MatrixXd& jacobian) {
    std::vector<int> columns;
    for (std::size_t i = 0; i < isAtBound.size(); ++i) {
        const auto column = static_cast<int>(i);
        if (!isAtBound[i] && jacobian.col(column).squaredNorm() > 0) {
            columns.push_back(column);
        }
    }
    return columns;
}

/// Errors from s²·(JᵀJ)⁻¹, with columns of equal length so that units do not matter.
void addErrors(const MatrixXd& jacobian, LeastSquares& result) {
    constexpr double kLeastSingular = 1e-10;
    const std::vector<int> columns = determined(result.isAtBound, jacobian);
    MatrixXd scaled(jacobian.rows(), static_cast<int>(columns.size()));
    VectorXd lengths(static_cast<int>(columns.size()));
    for (int i = 0; i < lengths.size(); ++i) {
        lengths[i] = jacobian.col(columns[static_cast<std::size_t>(i)]).norm();
        scaled.col(i) = jacobian.col(columns[static_cast<std::size_t>(i)]) / lengths[i];
    }
    const Eigen::JacobiSVD<MatrixXd> svd(scaled, Eigen::ComputeThinU | Eigen::ComputeThinV);
    const VectorXd singular = svd.singularValues().cwiseMax(kLeastSingular);
    const MatrixXd roots = svd.matrixV() * singular.cwiseInverse().asDiagonal();
    const MatrixXd covariance = roots * roots.transpose();
    const auto freedom = static_cast<double>(std::max<Eigen::Index>(1, scaled.rows() - scaled.cols()));
    for (int i = 0; i < lengths.size(); ++i) {
        const auto one = static_cast<std::size_t>(columns[static_cast<std::size_t>(i)]);
        result.standardErrors[one] = std::sqrt(result.squares / freedom * covariance(i, i)) / lengths[i];
        for (int j = 0; j < lengths.size(); ++j) {
            const auto other = static_cast<std::size_t>(columns[static_cast<std::size_t>(j)]);
            result.correlations[one][other] =
                covariance(i, j) / std::sqrt(covariance(i, i) * covariance(j, j));
        }
    }
}

LeastSquares search(const std::vector<FitStart>& starts, const Residuals& residuals,
                    const LeastSquaresOptions& options) {
    const std::size_t count = starts.size();
    LeastSquares result;
    result.standardErrors.resize(count);
    result.correlations.assign(count, std::vector<double>(count, 0));
    Problem problem(starts, residuals, options.moveShare);
    VectorXd free = problem.freeStart();
    Eigen::LevenbergMarquardt<Problem> method(problem);
    // Bounds of the first step, as a share of where the search starts: about half a radian of the sine.
    constexpr double kBoundedStep = 0.1;
    const bool isBounded =
        std::ranges::any_of(starts, [](const auto& one) { return std::isfinite(one.low); });
    method.parameters.factor = isBounded ? kBoundedStep : 1;
    method.parameters.ftol = options.tolerance;
    method.parameters.xtol = options.tolerance;
    method.parameters.maxfev = options.mostRounds;
    using Eigen::LevenbergMarquardtSpace::Status;
    const Status end = problem.values() > 0 ? method.minimize(free) : Status::UserAsked;
    result.values = problem.valuesAt(free);
    for (std::size_t i = 0; i < count; ++i) {
        result.isAtBound.push_back(problem.isAtBound(i, result.values[i]));
    }
    MatrixXd jacobian;
    if (end == Status::UserAsked || !problem.slopes(result.values, jacobian)) {
        result.status = LeastSquares::Status::Cancelled;
        return result;
    }
    if (end == Status::TooManyFunctionEvaluation) {
        result.status = LeastSquares::Status::RoundsUsedUp;
    }
    result.squares = method.fnorm * method.fnorm;
    addErrors(jacobian, result);
    return result;
}

/// Which values change anything where the search begins; nothing where it was ended.
std::optional<std::vector<std::size_t>> movers(const std::vector<FitStart>& starts,
                                               const Residuals& residuals, double moveShare) {
    const Problem problem(starts, residuals, moveShare);
    MatrixXd jacobian;
    if (problem.values() == 0 || !problem.slopes(problem.valuesAt(problem.freeStart()), jacobian)) {
        return std::nullopt;
    }
    std::vector<std::size_t> moving;
    for (std::size_t i = 0; i < starts.size(); ++i) {
        if (jacobian.col(static_cast<int>(i)).squaredNorm() > 0) {
            moving.push_back(i);
        }
    }
    return moving;
}

/// What was found for some of the values, with the others as they began.
LeastSquares spreadOut(const LeastSquares& found, const std::vector<std::size_t>& moving,
                       const std::vector<FitStart>& starts) {
    LeastSquares all = found;
    all.values.clear();
    for (const FitStart& start : starts) {
        all.values.push_back(start.value);
    }
    all.isAtBound.assign(starts.size(), false);
    all.standardErrors.assign(starts.size(), std::nullopt);
    all.correlations.assign(starts.size(), std::vector<double>(starts.size(), 0));
    for (std::size_t i = 0; i < moving.size() && i < found.values.size(); ++i) {
        all.values[moving[i]] = found.values[i];
        all.isAtBound[moving[i]] = found.isAtBound[i];
        all.standardErrors[moving[i]] = found.standardErrors[i];
        for (std::size_t j = 0; j < moving.size(); ++j) {
            all.correlations[moving[i]][moving[j]] = found.correlations[i][j];
        }
    }
    return all;
}

} // namespace

LeastSquares leastSquares(const std::vector<FitStart>& starts, const Residuals& residuals,
                          const LeastSquaresOptions& options) {
    LeastSquares ended;
    ended.status = LeastSquares::Status::Cancelled;
    const auto moving = movers(starts, residuals, options.moveShare);
    if (!moving) {
        return spreadOut(ended, {}, starts);
    }
    std::vector<FitStart> some;
    for (const std::size_t i : *moving) {
        some.push_back(starts[i]);
    }
    if (some.empty()) {
        ended.status = LeastSquares::Status::Converged;
        return spreadOut(ended, {}, starts);
    }
    const Residuals ofSome = [&](const std::vector<std::vector<double>>& points) {
        std::vector<std::vector<double>> all;
        for (const std::vector<double>& point : points) {
            all.emplace_back();
            for (const FitStart& start : starts) {
                all.back().push_back(start.value);
            }
            for (std::size_t i = 0; i < point.size(); ++i) {
                all.back()[(*moving)[i]] = point[i];
            }
        }
        return residuals(all);
    };
    return spreadOut(search(some, ofSome, options), *moving, starts);
}

} // namespace pumpwright

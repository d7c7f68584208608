#include "core/simulate/static_lu.h"

#include <Eigen/OrderingMethods>
#include <Eigen/SparseCore>

#include <algorithm>
#include <cmath>
#include <set>

namespace pumpwright {
namespace {

std::vector<int> lowFillOrder(const SparseMatrix& matrix) {
    std::vector<Eigen::Triplet<double>> triplets;
    for (const SparseMatrix::Place& place : matrix.places()) {
        triplets.emplace_back(place.row, place.column, 1.0);
    }
    for (int i = 0; i < matrix.size(); ++i) {
        triplets.emplace_back(i, i, 1.0);
    }
    Eigen::SparseMatrix<double> pattern(matrix.size(), matrix.size());
    pattern.setFromTriplets(triplets.begin(), triplets.end());
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, int> permutation;
    Eigen::AMDOrdering<int>()(pattern, permutation);
    const auto& indices = permutation.indices();
    return {indices.data(), indices.data() + indices.size()};
}

/// Columns of each row of L and U, by eliminating on sets of neighbours.
std::vector<std::set<int>> filledRows(const SparseMatrix& matrix, const std::vector<int>& place) {
    std::vector<std::set<int>> rows(static_cast<std::size_t>(matrix.size()));
    for (int i = 0; i < matrix.size(); ++i) {
        rows[static_cast<std::size_t>(i)].insert(i);
    }
    for (const SparseMatrix::Place& entry : matrix.places()) {
        const int row = place[static_cast<std::size_t>(entry.row)];
        const int column = place[static_cast<std::size_t>(entry.column)];
        rows[static_cast<std::size_t>(row)].insert(column);
        rows[static_cast<std::size_t>(column)].insert(row);
    }
    for (int pivot = 0; pivot < matrix.size(); ++pivot) {
        const auto& neighbours = rows[static_cast<std::size_t>(pivot)];
        const std::vector<int> later(neighbours.upper_bound(pivot), neighbours.end());
        for (const int row : later) {
            rows[static_cast<std::size_t>(row)].insert(later.begin(), later.end());
        }
    }
    return rows;
}

std::size_t positionOf(const EliminationPlan& plan, int row, int column) {
    const auto begin =
        plan.column.begin() + static_cast<std::ptrdiff_t>(plan.rowStart[static_cast<std::size_t>(row)]);
    const auto end =
        plan.column.begin() + static_cast<std::ptrdiff_t>(plan.rowStart[static_cast<std::size_t>(row) + 1]);
    return static_cast<std::size_t>(std::lower_bound(begin, end, column) - plan.column.begin());
}

/// Row by row, for each earlier pivot of the row: where the pivot's row is subtracted.
void planUpdates(EliminationPlan& plan) {
    for (int row = 0; row < plan.size; ++row) {
        const auto i = static_cast<std::size_t>(row);
        for (std::size_t at = plan.rowStart[i]; at < plan.diagonal[i]; ++at) {
            const auto k = static_cast<std::size_t>(plan.column[at]);
            for (std::size_t upper = plan.diagonal[k] + 1; upper < plan.rowStart[k + 1]; ++upper) {
                plan.updates.push_back(positionOf(plan, row, plan.column[upper]));
            }
        }
    }
}

// std::complex multiplies with a detour for infinities that costs most of a factorisation; these are finite.
double product(double a, double b) {
    return a * b;
}
std::complex<double> product(const std::complex<double>& a, const std::complex<double>& b) {
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

double reciprocal(double a) {
    return 1 / a;
}
std::complex<double> reciprocal(const std::complex<double>& a) {
    const double norm = a.real() * a.real() + a.imag() * a.imag();
    return {a.real() / norm, -a.imag() / norm};
}

double magnitude(double a) {
    return std::abs(a);
}
double magnitude(const std::complex<double>& a) {
    return std::abs(a.real()) + std::abs(a.imag());
}

constexpr double kSmallestPivot = 1e-250;

} // namespace

EliminationPlan planElimination(const SparseMatrix& matrix) {
    EliminationPlan plan;
    plan.size = matrix.size();
    plan.entries = matrix.places().size();
    plan.order = lowFillOrder(matrix);
    std::vector<int> place(plan.order.size());
    for (std::size_t i = 0; i < plan.order.size(); ++i) {
        place[static_cast<std::size_t>(plan.order[i])] = static_cast<int>(i);
    }
    plan.rowStart.push_back(0);
    for (const auto& row : filledRows(matrix, place)) {
        plan.column.insert(plan.column.end(), row.begin(), row.end());
        plan.rowStart.push_back(plan.column.size());
    }
    for (int i = 0; i < plan.size; ++i) {
        plan.diagonal.push_back(positionOf(plan, i, i));
    }
    for (const SparseMatrix::Place& entry : matrix.places()) {
        plan.target.push_back(positionOf(plan, place[static_cast<std::size_t>(entry.row)],
                                         place[static_cast<std::size_t>(entry.column)]));
    }
    planUpdates(plan);
    return plan;
}

template <class Scalar>
bool StaticLu<Scalar>::factorise(const EliminationPlan& plan, std::span<const Scalar> values) {
    m_plan = &plan;
    const auto size = static_cast<std::size_t>(plan.size);
    m_factors.assign(plan.column.size(), Scalar{});
    m_reciprocals.resize(size);
    for (std::size_t slot = 0; slot < values.size(); ++slot) {
        m_factors[plan.target[slot]] += values[slot];
    }
    std::size_t update = 0;
    for (std::size_t i = 0; i < size; ++i) {
        for (std::size_t at = plan.rowStart[i]; at < plan.diagonal[i]; ++at) {
            const auto k = static_cast<std::size_t>(plan.column[at]);
            const Scalar multiplier = product(m_factors[at], m_reciprocals[k]);
            m_factors[at] = multiplier;
            for (std::size_t upper = plan.diagonal[k] + 1; upper < plan.rowStart[k + 1]; ++upper) {
                m_factors[plan.updates[update++]] -= product(multiplier, m_factors[upper]);
            }
        }
        const Scalar pivot = m_factors[plan.diagonal[i]];
        if (!(magnitude(pivot) > kSmallestPivot)) {
            return false;
        }
        m_reciprocals[i] = reciprocal(pivot);
    }
    return true;
}

template <class Scalar>
void StaticLu<Scalar>::solve(std::span<Scalar> right) const {
    const EliminationPlan& plan = *m_plan;
    const auto size = static_cast<std::size_t>(plan.size);
    m_ordered.resize(size);
    for (std::size_t i = 0; i < size; ++i) {
        Scalar sum = right[static_cast<std::size_t>(plan.order[i])];
        for (std::size_t at = plan.rowStart[i]; at < plan.diagonal[i]; ++at) {
            sum -= product(m_factors[at], m_ordered[static_cast<std::size_t>(plan.column[at])]);
        }
        m_ordered[i] = sum;
    }
    for (std::size_t i = size; i-- > 0;) {
        Scalar sum = m_ordered[i];
        for (std::size_t at = plan.diagonal[i] + 1; at < plan.rowStart[i + 1]; ++at) {
            sum -= product(m_factors[at], m_ordered[static_cast<std::size_t>(plan.column[at])]);
        }
        m_ordered[i] = product(sum, m_reciprocals[i]);
    }
    for (std::size_t i = 0; i < size; ++i) {
        right[static_cast<std::size_t>(plan.order[i])] = m_ordered[i];
    }
}

template class StaticLu<double>;
template class StaticLu<std::complex<double>>;

} // namespace pumpwright

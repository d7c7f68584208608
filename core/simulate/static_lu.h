#pragma once

#include "core/simulate/sparse_matrix.h"

#include <complex>
#include <span>
#include <vector>

namespace pumpwright {

/// Where the entries of L and U of a sparse matrix lie when its pivots are taken from the diagonal in an
/// order that keeps fill-in low. Found once for a pattern, used by every factorisation.
struct EliminationPlan {
    int size = 0;
    std::size_t entries = 0;           ///< of the matrix that the plan was made for
    std::vector<int> order;            ///< order[i]: the unknown that is eliminated as number i
    std::vector<std::size_t> rowStart; ///< rows of L and U together, in the order of elimination
    std::vector<int> column;           ///< rising within a row
    std::vector<std::size_t> diagonal; ///< position of each row's pivot
    std::vector<std::size_t> target;   ///< position for each slot of the matrix
    std::vector<std::size_t> updates;  ///< positions that an elimination subtracts from, in its order
};

EliminationPlan planElimination(const SparseMatrix& matrix);

/// LU factors of a sparse matrix without exchange of rows. The equations of circuits and volumes have their
/// large entries on the diagonal, which makes that safe; factorise() says so where it is not.
template <class Scalar>
class StaticLu {
public:
    /// Factorises the matrix with these values by slot. False where a pivot vanishes.
    bool factorise(const EliminationPlan& plan, std::span<const Scalar> values);
    /// Solves in place.
    void solve(std::span<Scalar> right) const;

private:
    const EliminationPlan* m_plan = nullptr;
    std::vector<Scalar> m_factors;
    std::vector<Scalar> m_reciprocals; ///< of the pivots
    mutable std::vector<Scalar> m_ordered;
};

extern template class StaticLu<double>;
extern template class StaticLu<std::complex<double>>;

} // namespace pumpwright

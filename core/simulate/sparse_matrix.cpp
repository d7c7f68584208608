#include "core/simulate/sparse_matrix.h"

#include <algorithm>

namespace pumpwright {

void SparseMatrix::setZero() {
    std::fill(m_values.begin(), m_values.end(), 0.0);
}

std::size_t SparseMatrix::slot(int row, int column) {
    auto& entries = m_rows[static_cast<std::size_t>(row)];
    for (const Entry& entry : entries) {
        if (entry.column == column) {
            return entry.slot;
        }
    }
    const std::size_t slot = m_values.size();
    entries.push_back({column, slot});
    m_places.push_back({row, column});
    m_values.push_back(0);
    return slot;
}

} // namespace pumpwright

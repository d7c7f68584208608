#include "core/simulate/sparse_matrix.h"

#include <algorithm>

namespace pumpwright {

void SparseMatrix::setZero() {
    std::fill(m_values.begin(), m_values.end(), 0.0);
    m_next = 0;
}

std::size_t SparseMatrix::searchedSlot(int row, int column) {
    auto& entries = m_rows[static_cast<std::size_t>(row)];
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [column](const Entry& entry) { return entry.column == column; });
    std::size_t slot = m_values.size();
    if (found != entries.end()) {
        slot = found->slot;
    } else {
        entries.push_back({column, slot});
        m_places.push_back({row, column});
        m_values.push_back(0);
    }
    m_trail.resize(std::max(m_trail.size(), m_next + 1));
    m_trail[m_next++] = {row, column, slot};
    return slot;
}

} // namespace pumpwright

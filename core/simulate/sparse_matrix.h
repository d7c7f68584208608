#pragma once

#include <span>
#include <utility>
#include <vector>

namespace pumpwright {

/// A square sparse matrix whose entries are summed up by place. A place that is new is added to the pattern;
/// entries keep their slot for good, so that other arrays can run parallel to values().
class SparseMatrix {
public:
    explicit SparseMatrix(int size) : m_rows(static_cast<std::size_t>(size)) {}

    int size() const { return static_cast<int>(m_rows.size()); }
    void setZero();
    void add(int row, int column, double value) { m_values[slot(row, column)] += value; }
    /// The slot of a place, made where there is none. Quick where places come in the same order each time
    /// after setZero().
    std::size_t slot(int row, int column) {
        if (m_next < m_trail.size() && m_trail[m_next].row == row && m_trail[m_next].column == column) {
            return m_trail[m_next++].slot;
        }
        return searchedSlot(row, column);
    }

    struct Place {
        int row;
        int column;
    };
    std::span<const Place> places() const { return m_places; }
    std::span<const double> values() const { return m_values; }

private:
    struct Entry {
        int column;
        std::size_t slot;
    };
    /// One call of slot().
    struct Visit {
        int row;
        int column;
        std::size_t slot;
    };

    std::size_t searchedSlot(int row, int column);

    std::vector<std::vector<Entry>> m_rows;
    std::vector<Place> m_places;
    std::vector<double> m_values;
    std::vector<Visit> m_trail; ///< of the last time
    std::size_t m_next = 0;     ///< the visit that is expected
};

} // namespace pumpwright

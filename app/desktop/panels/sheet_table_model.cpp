#include "app/desktop/panels/sheet_table_model.h"

#include "app/desktop/shown_text.h"

namespace pumpwright {

int SheetTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int SheetTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.columns.size());
}

QVariant SheetTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    const auto column = static_cast<std::size_t>(index.column());
    if (role == Qt::DisplayRole) {
        return shown(m_table.rows[static_cast<std::size_t>(index.row())][column]);
    }
    return role == Qt::TextAlignmentRole && m_table.numeric[column]
               ? QVariant(static_cast<int>(Qt::AlignRight | Qt::AlignVCenter))
               : QVariant();
}

QVariant SheetTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    const bool named = orientation == Qt::Horizontal && role == Qt::DisplayRole;
    return named ? QVariant(shown(m_table.columns[static_cast<std::size_t>(section)])) : QVariant();
}

} // namespace pumpwright

#include "app/desktop/studies/sheet_table_model.h"

#include "app/desktop/panels/quantity_text.h"

namespace pumpwright {

void SheetTableModel::setTable(const SheetTable& table) {
    beginResetModel();
    m_table = table;
    endResetModel();
}

int SheetTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.rows.size());
}

int SheetTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_table.columns.size());
}

QString SheetTableModel::cell(const QModelIndex& index) const {
    return shown(
        m_table.rows[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())]);
}

QVariant SheetTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return cell(index);
    case Qt::ToolTipRole:
        return cell(index).toHtmlEscaped();
    case Qt::TextAlignmentRole: {
        const bool numeric = m_table.numeric[static_cast<std::size_t>(index.column())];
        return static_cast<int>((numeric ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    default:
        return {};
    }
}

QVariant SheetTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole || orientation != Qt::Horizontal || section >= columnCount()) {
        return {};
    }
    return shown(m_table.columns[static_cast<std::size_t>(section)]);
}

} // namespace pumpwright

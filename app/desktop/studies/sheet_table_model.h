#pragma once

#include "core/sheet/wiring_sheet.h"

#include <QAbstractTableModel>

namespace pumpwright {

/// A table of texts from core, to be read.
class SheetTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    using QAbstractTableModel::QAbstractTableModel;

    void setTable(const SheetTable& table);
    const SheetTable& table() const { return m_table; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    QString cell(const QModelIndex& index) const;

    SheetTable m_table;
};

} // namespace pumpwright

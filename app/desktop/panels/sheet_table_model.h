#pragma once

#include "core/sheet/wiring_sheet.h"

#include <QAbstractTableModel>

namespace pumpwright {

/// One table of core, to be shown in a view.
class SheetTableModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    explicit SheetTableModel(SheetTable table, QObject* parent = nullptr)
        : QAbstractTableModel(parent), m_table(std::move(table)) {}

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    SheetTable m_table;
};

} // namespace pumpwright

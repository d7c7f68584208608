#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/recording.h"

#include <QAbstractTableModel>

namespace pumpwright {

/// What happened in the drive, in order of time: "7.07 s  B1 vacuum switch opens".
class EventModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Time, Part, What, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void setEvents(const Circuit& circuit, const std::vector<DriveEvent>& events);
    double timeAt_s(int row) const { return m_rows[static_cast<std::size_t>(row)].time_s; }
    /// The latest event that has happened at this time; -1 before the first.
    int rowAt(double time_s) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        double time_s;
        QString time;
        QString part;
        QString what;
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> m_rows;
};

} // namespace pumpwright

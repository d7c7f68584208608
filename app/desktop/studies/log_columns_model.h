#pragma once

#include "core/files/bench_log_csv.h"

#include <QAbstractTableModel>

namespace pumpwright {

/// The columns of a bench log, what each of them is, and its unit; the last two are chosen in place.
class LogColumnsModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Is, Unit, First, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    void setLog(CsvNumbers table, const LogReading& reading, std::vector<LogTarget> targets);
    /// As the columns are chosen now; without a time offset.
    LogReading reading() const;
    const CsvNumbers& table() const { return m_table; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

Q_SIGNALS:
    void readingChanged();

private:
    struct Row {
        std::string target; ///< of a LogTarget, "time", or empty for what is not used
        std::string unit;
    };
    QString cell(const QModelIndex& index) const;
    QVariantList targetChoices() const;
    QVariantList unitChoices(const Row& row) const;

    CsvNumbers m_table;
    std::vector<LogTarget> m_targets;
    std::vector<Row> m_rows;
};

} // namespace pumpwright

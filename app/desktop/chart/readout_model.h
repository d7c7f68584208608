#pragma once

#include "app/desktop/chart/chart_lanes.h"
#include "app/desktop/chart/chart_palette.h"
#include "app/desktop/panels/quantity_text.h"

#include <QAbstractTableModel>
#include <QPen>

#include <optional>

namespace pumpwright {

/// The value of every line of the chart at the cursor; the chart's legend at the same time.
class ReadoutModel final : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Name, Value, Difference, ColumnCount };

    using QAbstractTableModel::QAbstractTableModel;

    /// Set points follow the lines of their lane.
    void setLanes(const std::vector<ChartLane>& lanes, const ChartPalette& palette);
    void setUnits(const ShownUnits& units);
    void setTime(double time_s);
    /// Where differences are taken from; without a mark their column is empty.
    void setMark(std::optional<double> time_s);
    /// Where there is little room the second unit is left out.
    void setBothUnits(bool both);
    /// The widest name, to give its column room.
    QString longestName() const;
    /// All rows in one line, for a screen reader: "A1 booster 61.2 kPa, …"
    QString summary() const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        QString name;
        const Channel* channel; ///< null: a set point
        double level;           ///< of a set point
        ChartLane::Sort sort;
        QuantityKind kind;
        QPen pen;
    };
    QString valueText(const Row& row) const;
    QString differenceText(const Row& row) const;
    QString quantity(double si, QuantityKind kind) const;
    void announceValues();

    std::vector<Row> m_rows;
    ShownUnits m_units;
    double m_time_s = 0;
    std::optional<double> m_mark_s;
    bool m_bothUnits = true;
};

} // namespace pumpwright

#pragma once

#include "core/sheet/wiring_sheet.h"

#include <QList>
#include <QPointF>
#include <QStringList>

#include <optional>

class QPainter;

namespace pumpwright {

/// Column widths and row heights of one table, for a given width of page.
class TableLayout {
public:
    TableLayout(const SheetTable& table, double width);

    qsizetype rowCount() const { return m_rows.size(); }
    double width() const;
    double titleHeight() const;
    double headHeight() const { return m_headHeight; }
    double rowsHeight() const;
    double rowHeight(qsizetype row) const { return m_rowHeights[row]; }

    /// Tables grouped by their first cell have no column for it: it stands over the rows that share it.
    bool isGrouped() const { return !m_groups.isEmpty(); }
    bool startsGroup(qsizetype row) const;
    double groupHeight(qsizetype row) const;
    void paintGroup(QPainter& painter, QPointF at, qsizetype row) const;

    /// `continued` for the head of a further page.
    void paintTitle(QPainter& painter, QPointF at, bool continued) const;
    void paintHead(QPainter& painter, QPointF at) const;
    void paintRow(QPainter& painter, QPointF at, qsizetype row) const;

private:
    void takeGroups();
    void fitColumns(double width);
    double textWidthIn(qsizetype column) const;
    bool isTotal(qsizetype row) const { return m_endsWithTotal && row == m_rows.size() - 1; }
    double heightOf(const QStringList& cells, bool bold) const;
    void paintBoxToFillIn(QPainter& painter, QPointF at, double height) const;
    void paintCells(QPainter& painter, QPointF at, const QStringList& cells, bool bold) const;

    QString m_title;
    QStringList m_head;
    QStringList m_groups; ///< over each row; empty where the table is not grouped
    QList<bool> m_numeric;
    QList<QStringList> m_rows;
    QList<double> m_widths; ///< with padding
    QList<double> m_rowHeights;
    double m_headHeight = 0;
    double m_slack =
        0; ///< of each width: what a column got beyond its need; at the right of numbers it stays free
    bool m_endsWithTotal;
    std::optional<std::size_t> m_toFillIn;
};

} // namespace pumpwright

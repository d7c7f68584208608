#pragma once

#include "app/desktop/circuit/layout.h"

class QPainter;

namespace pumpwright {

/// How a schematic is printed: on one page where it can be read there, its text enlarged up to a point; else
/// also divided into parts, each for a page of its own, with match marks where they join.
class SchematicParts {
public:
    /// `overview` is where the whole circuit is drawn, `space` is what each part gets.
    SchematicParts(const Circuit& circuit, const QRectF& overview, const QRectF& space);

    /// The whole circuit; where it is divided, without texts and with the outlines of the parts.
    void paintOverview(QPainter& painter, const Circuit& circuit) const;

    /// 0 where the smallest text can be read on the overview.
    int count() const { return m_columns * m_rows; }
    void paint(QPainter& painter, const Circuit& circuit, int part) const;

private:
    QRectF window() const; ///< where the drawing shows on a page, under the heading
    QString partName(int column, int row) const;
    void paintMark(QPainter& painter, const QRectF& edge, int column, int row) const;
    void paintMarks(QPainter& painter, int column, int row) const;

    void fitOverview(const CircuitLayout& plain, const Circuit& circuit, const QRectF& space);
    void divide(const CircuitLayout& plain, const Circuit& circuit, const QRectF& overview);
    QPointF origin(int column, int row) const;
    void paintKey(QPainter& painter) const;

    QRectF m_overview;        ///< what the whole circuit takes up
    QRectF m_overviewHeading; ///< for a line above it
    double m_overviewTextScale = 1;
    CircuitLayout m_overviewLayout;
    QRectF m_space;
    QSizeF m_size;          ///< of the whole circuit in the scale of the parts
    CircuitLayout m_layout; ///< in the parts
    int m_columns = 0;
    int m_rows = 0;
};

} // namespace pumpwright

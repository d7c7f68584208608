#include "app/desktop/sheet/schematic_parts.h"

#include "app/desktop/circuit/circuit_painter.h"
#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kHeading = 50;
constexpr double kMarkBand = 34; ///< around the drawing, for the match marks
constexpr double kOverlap = 100; ///< shown on both sides of a cut
constexpr double kSmallestText = 7.0 * kUnitsPerInch / 72.0;

/// Larger text would run into lines and symbols.
constexpr double kLargestTextScale = 1.4;
/// A circuit of a few parts does not fill the page.
constexpr double kLargestScale = 1.5 * kUnitsPerMillimetre / 4; // 1:1 is 4 scene units a millimetre

/// By how much text is enlarged on a schematic of this scale.
double textScaleAt(double scale) {
    return std::clamp(kSmallestText / (smallestTextHeight() * scale), 1.0, kLargestTextScale);
}

/// Smallest scale at which enlarged text can be read.
double readableScale() {
    return kSmallestText / (smallestTextHeight() * kLargestTextScale);
}

QRectF centred(const QSizeF& size, const QRectF& space) {
    return {space.center() - QPointF(size.width(), size.height()) / 2, size};
}

/// What a row of pages covers that overlap.
double covered(int pages, double window) {
    return pages * (window - kOverlap) + kOverlap;
}

/// The largest scale at which this many pages hold the whole circuit.
double scaleFor(int columns, int rows, const QSizeF& window, const QSizeF& bounds) {
    return std::min(covered(columns, window.width()) / bounds.width(),
                    covered(rows, window.height()) / bounds.height());
}

struct Grid {
    int columns = 1;
    int rows = 1;
    double scale = 0;
};

/// The fewest pages on which all can be read, laid so that the circuit comes out largest.
Grid smallestGrid(const QSizeF& window, const QSizeF& bounds) {
    constexpr int kMostPages = 400; // a circuit within the limits of the file needs fewer
    Grid best;
    for (int pages = 1; pages <= kMostPages && best.scale < readableScale(); ++pages) {
        for (int columns = 1; columns <= pages; ++columns) {
            const double scale =
                pages % columns == 0 ? scaleFor(columns, pages / columns, window, bounds) : 0;
            if (scale > best.scale) {
                best = {columns, pages / columns, scale};
            }
        }
    }
    return best;
}

} // namespace

SchematicParts::SchematicParts(const Circuit& circuit, const QRectF& overview, const QRectF& space)
    : m_overview(overview), m_space(space) {
    const CircuitLayout plain = layoutOf(circuit);
    if (plain.bounds().isEmpty()) {
        return;
    }
    fitOverview(plain, circuit, overview);
    if (m_overview.width() / m_overviewLayout.bounds().width() < readableScale()) {
        divide(plain, circuit, overview);
    }
}

/// Larger texts take more room, which asks for a smaller scale and so for larger texts: the second round
/// settles it.
void SchematicParts::fitOverview(const CircuitLayout& plain, const Circuit& circuit, const QRectF& space) {
    m_overviewLayout = plain;
    for (int round = 0; round < 3; ++round) {
        const QSizeF bounds = m_overviewLayout.bounds().size();
        const double fitted =
            std::min({space.width() / bounds.width(), space.height() / bounds.height(), kLargestScale});
        m_overview = centred(bounds * fitted, space);
        const double textScale = textScaleAt(fitted);
        if (textScale <= m_overviewTextScale) {
            return;
        }
        m_overviewTextScale = textScale;
        m_overviewLayout = withTextScale(plain, circuit, textScale);
    }
}

void SchematicParts::divide(const CircuitLayout& plain, const Circuit& circuit, const QRectF& overview) {
    m_layout = withTextScale(plain, circuit, kLargestTextScale);
    const QSizeF bounds = m_layout.bounds().size();
    const Grid grid = smallestGrid(window().size(), bounds);
    m_size = bounds * grid.scale;
    m_columns = grid.columns;
    m_rows = grid.rows;
    m_overviewLayout = m_layout;
    m_overviewTextScale = 0;
    m_overviewHeading = QRectF(overview.topLeft(), QSizeF(overview.width(), kHeading - 10));
    const QRectF below = count() == 1 ? overview.adjusted(0, kHeading, 0, 0) : overview;
    m_overview = centred(bounds.scaled(below.size(), Qt::KeepAspectRatio), below);
}

void SchematicParts::paintOverview(QPainter& painter, const Circuit& circuit) const {
    paintLaidOut(painter, circuit, m_overviewLayout, m_overview, PaintStyle::Print, m_overviewTextScale);
    if (count() > 1) {
        paintKey(painter);
    } else if (count() == 1) {
        painter.setPen(Qt::black);
        paintLine(painter, m_overviewHeading,
                  QStringLiteral("Overview; names and values are in the schematic on the next sheet"),
                  sheetFont(SheetText::Body));
    }
}

/// Which part of the schematic shows what.
void SchematicParts::paintKey(QPainter& painter) const {
    const QFont font = sheetFont(SheetText::Body);
    const double shrunk = m_overview.width() / m_size.width();
    const QRectF inner = window();
    for (int part = 0; part < count(); ++part) {
        const int column = part % m_columns;
        const int row = part / m_columns;
        const QRectF shows((inner.topLeft() - origin(column, row)) * shrunk + m_overview.topLeft(),
                           inner.size() * shrunk);
        const double cut = kOverlap / 2 * shrunk;
        QPen pen = sheetPen(SheetLine::Thin);
        pen.setStyle(Qt::DashLine);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        const QRectF outline = shows.adjusted(cut, cut, -cut, -cut).intersected(m_overview);
        painter.drawRect(outline);
        const QString name = partName(column, row);
        const QRectF label(outline.topLeft() + QPointF(6, 6), QSizeF(textWidth(name, font) + 12, 36));
        painter.fillRect(label, Qt::white);
        painter.setPen(Qt::black);
        paintLine(painter, label, name, font, Qt::AlignCenter);
    }
}

/// Where on its page the corner of the whole circuit would be.
QPointF SchematicParts::origin(int column, int row) const {
    const QRectF inner = window();
    const QSizeF whole(covered(m_columns, inner.width()), covered(m_rows, inner.height()));
    return inner.topLeft() - QPointF(column * (inner.width() - kOverlap), row * (inner.height() - kOverlap)) +
           QPointF(whole.width() - m_size.width(), whole.height() - m_size.height()) / 2;
}

QRectF SchematicParts::window() const {
    return m_space.adjusted(kMarkBand, kHeading + kMarkBand, -kMarkBand, -kMarkBand);
}

/// Parts are counted as one reads.
QString SchematicParts::partName(int column, int row) const {
    return QStringLiteral("part %1").arg(row * m_columns + column + 1);
}

void SchematicParts::paintMark(QPainter& painter, const QRectF& edge, int column, int row) const {
    const bool upright = edge.height() > edge.width();
    painter.save();
    painter.translate(edge.center());
    painter.rotate(upright ? -90 : 0);
    const double length = std::max(edge.width(), edge.height());
    const QRectF box(-length / 2, -kMarkBand / 2, length, kMarkBand);
    painter.setPen(sheetPen(SheetLine::Hair));
    painter.drawLine(QPointF(-length / 2, 0), QPointF(-190, 0));
    painter.drawLine(QPointF(190, 0), QPointF(length / 2, 0));
    painter.setPen(Qt::black);
    paintLine(painter, box, QStringLiteral("goes on in %1").arg(partName(column, row)),
              sheetFont(SheetText::Label), Qt::AlignCenter);
    painter.restore();
}

void SchematicParts::paintMarks(QPainter& painter, int column, int row) const {
    const QRectF inner = window();
    if (column > 0) {
        paintMark(painter, {m_space.left(), inner.top(), kMarkBand, inner.height()}, column - 1, row);
    }
    if (column + 1 < m_columns) {
        paintMark(painter, {inner.right(), inner.top(), kMarkBand, inner.height()}, column + 1, row);
    }
    if (row > 0) {
        paintMark(painter, {inner.left(), inner.top() - kMarkBand, inner.width(), kMarkBand}, column,
                  row - 1);
    }
    if (row + 1 < m_rows) {
        paintMark(painter, {inner.left(), inner.bottom(), inner.width(), kMarkBand}, column, row + 1);
    }
}

void SchematicParts::paint(QPainter& painter, const Circuit& circuit, int part) const {
    const int column = part % m_columns;
    const int row = part / m_columns;
    const QRectF inner = window();
    painter.setPen(Qt::black);
    paintLine(painter, {m_space.left(), m_space.top(), m_space.width(), kHeading - 10},
              count() == 1 ? QStringLiteral("Schematic")
                           : QStringLiteral("Schematic, %1 of %2").arg(partName(column, row)).arg(count()),
              sheetFont(SheetText::Heading));
    painter.save();
    painter.setClipRect(inner);
    paintLaidOut(painter, circuit, m_layout, QRectF(origin(column, row), m_size), PaintStyle::Print,
                 kLargestTextScale);
    painter.restore();
    painter.setPen(Qt::black);
    paintMarks(painter, column, row);
}

} // namespace pumpwright

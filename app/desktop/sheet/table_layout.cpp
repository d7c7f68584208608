#include "app/desktop/sheet/table_layout.h"

#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"
#include "app/desktop/shown_text.h"

#include <QPainter>

#include <algorithm>
#include <numeric>

namespace pumpwright {
namespace {

constexpr double kPaddingX = 16;
constexpr double kPaddingY = 6;
constexpr double kTitleGap = 12;
constexpr double kGroupGap = 14; ///< over the heading of a group
constexpr double kFillIn = 260;  ///< a hand's writing of a reading

QStringList texts(const std::vector<std::string>& cells) {
    QStringList list;
    for (const std::string& cell : cells) {
        list.append(shown(cell));
    }
    return list;
}

QFont cellFont(bool bold) {
    return sheetFont(bold ? SheetText::BodyBold : SheetText::Body);
}

struct ColumnWish {
    double natural = 0; ///< every cell on one line
    double head = 0;    ///< the head too
    double least = 0;   ///< no word broken
};

ColumnWish wishOf(const QString& head, const QList<QStringList>& rows, qsizetype column, bool lastIsBold) {
    constexpr double kLongestKept = 300; // a longer word may be broken
    const double headWord = longestWordWidth(head, cellFont(true));
    ColumnWish wish{headWord, textWidth(head, cellFont(true)), headWord};
    for (const QStringList& row : rows) {
        const bool bold = lastIsBold && &row == &rows.back();
        wish.natural = std::max(wish.natural, textWidth(row[column], cellFont(bold)));
        wish.least = std::max(wish.least, longestWordWidth(row[column], cellFont(false)));
    }
    constexpr double kPadding = 2 * kPaddingX + 1;
    wish.natural += kPadding;
    wish.head = std::max(wish.natural, wish.head + kPadding);
    wish.least = std::min(wish.least, kLongestKept) + kPadding;
    return wish;
}

/// Columns that ask for no more than an even share get what they ask for; the others share the rest in the
/// measure of what they ask for, none with less than its longest word.
QList<double> sharedWidths(const QList<ColumnWish>& wishes, double width) {
    QList<double> widths(wishes.size(), 0);
    QList<qsizetype> open(wishes.size());
    std::iota(open.begin(), open.end(), 0);
    double rest = width;
    bool settled = false;
    while (!settled && !open.isEmpty()) {
        settled = true;
        const double asked =
            std::accumulate(open.begin(), open.end(), 0.0,
                            [&](double sum, qsizetype column) { return sum + wishes[column].natural; });
        const double even = rest / static_cast<double>(open.size());
        const QList<qsizetype> now = open;
        for (const qsizetype column : now) {
            const double part = rest * wishes[column].natural / asked;
            const double wish =
                wishes[column].natural <= even ? wishes[column].natural : wishes[column].least;
            const bool fixed = wishes[column].natural <= even || part < wishes[column].least;
            widths[column] = fixed ? wish : part;
            if (fixed) {
                open.removeOne(column);
                rest -= wish;
                settled = false;
                break;
            }
        }
    }
    return widths;
}

} // namespace

TableLayout::TableLayout(const SheetTable& table, double width)
    : m_title(shown(table.title)), m_head(texts(table.columns)),
      m_numeric(table.numeric.begin(), table.numeric.end()), m_endsWithTotal(table.endsWithTotal),
      m_toFillIn(table.toFillIn) {
    for (const std::vector<std::string>& row : table.rows) {
        m_rows.append(texts(row));
    }
    if (table.groupedByFirst) {
        takeGroups();
    }
    fitColumns(width);
    m_headHeight = heightOf(m_head, true);
    for (qsizetype row = 0; row < m_rows.size(); ++row) {
        m_rowHeights.append(heightOf(m_rows[row], isTotal(row)));
    }
}

void TableLayout::takeGroups() {
    const QString label = m_head.takeFirst();
    m_numeric.removeFirst();
    for (QStringList& row : m_rows) {
        m_groups.append(QStringLiteral("%1: %2").arg(label, row.takeFirst()));
    }
}

bool TableLayout::startsGroup(qsizetype row) const {
    return isGrouped() && (row == 0 || m_groups[row] != m_groups[row - 1]);
}

double TableLayout::groupHeight(qsizetype row) const {
    return textHeight(m_groups[row], cellFont(true), width() - 2 * kPaddingX) + kGroupGap + 2 * kPaddingY;
}

void TableLayout::paintGroup(QPainter& painter, QPointF at, qsizetype row) const {
    const double height = groupHeight(row);
    const QRectF box(at.x() + kPaddingX, at.y() + kGroupGap + kPaddingY, width() - 2 * kPaddingX, height);
    painter.setPen(Qt::black);
    paintText(painter, box, m_groups[row], cellFont(true));
    painter.setPen(sheetPen(SheetLine::Thin));
    painter.drawLine(at + QPointF(0, height), at + QPointF(width(), height));
}

void TableLayout::fitColumns(double width) {
    QList<ColumnWish> wishes;
    double natural = 0;
    double withHeads = 0;
    for (qsizetype column = 0; column < m_head.size(); ++column) {
        wishes.append(wishOf(m_head[column], m_rows, column, m_endsWithTotal));
        if (m_toFillIn == static_cast<std::size_t>(column)) {
            wishes.back().least = kFillIn;
            wishes.back().natural = kFillIn;
            wishes.back().head = kFillIn;
        }
        natural += wishes.back().natural;
        withHeads += wishes.back().head;
    }
    if (withHeads <= width) { // there is room enough to leave heads unbroken
        natural = withHeads;
        for (ColumnWish& wish : wishes) {
            wish.natural = wish.head;
        }
    }
    if (natural > width) {
        m_widths = sharedWidths(wishes, width);
        return;
    }
    constexpr double kMostExtra = 60; // wider gaps make a row hard to follow
    m_slack = std::min(kMostExtra, (width - natural) / static_cast<double>(m_head.size()));
    for (const ColumnWish& wish : std::as_const(wishes)) {
        m_widths.append(wish.natural + m_slack);
    }
}

double TableLayout::width() const {
    return std::accumulate(m_widths.begin(), m_widths.end(), 0.0);
}

double TableLayout::rowsHeight() const {
    return std::accumulate(m_rowHeights.begin(), m_rowHeights.end(), 0.0);
}

double TableLayout::titleHeight() const {
    return textHeight(m_title, sheetFont(SheetText::Heading), 1e6) + kTitleGap;
}

double TableLayout::textWidthIn(qsizetype column) const {
    return m_widths[column] - 2 * kPaddingX - (m_numeric[column] ? m_slack : 0);
}

double TableLayout::heightOf(const QStringList& cells, bool bold) const {
    double height = 0;
    for (qsizetype column = 0; column < m_widths.size(); ++column) {
        height = std::max(height, textHeight(cells[column], cellFont(bold), textWidthIn(column)));
    }
    constexpr double kWriting = 60; // 6 mm to write in
    return std::max(height + 2 * kPaddingY, m_toFillIn && !bold ? kWriting : 0);
}

void TableLayout::paintTitle(QPainter& painter, QPointF at, bool continued) const {
    painter.setPen(Qt::black);
    const QString title = continued ? QStringLiteral("%1 (continued)").arg(m_title) : m_title;
    paintText(painter, {at.x(), at.y(), 1e6, titleHeight()}, title, sheetFont(SheetText::Heading));
}

void TableLayout::paintHead(QPainter& painter, QPointF at) const {
    paintCells(painter, at, m_head, true);
    painter.setPen(sheetPen(SheetLine::Middle));
    painter.drawLine(at + QPointF(0, m_headHeight), at + QPointF(width(), m_headHeight));
}

void TableLayout::paintRow(QPainter& painter, QPointF at, qsizetype row) const {
    paintCells(painter, at, m_rows[row], isTotal(row));
    paintBoxToFillIn(painter, at, m_rowHeights[row]);
    painter.setPen(sheetPen(SheetLine::Hair));
    painter.drawLine(at + QPointF(0, m_rowHeights[row]), at + QPointF(width(), m_rowHeights[row]));
}

void TableLayout::paintBoxToFillIn(QPainter& painter, QPointF at, double height) const {
    if (!m_toFillIn) {
        return;
    }
    const auto column = static_cast<qsizetype>(*m_toFillIn);
    const double left = std::accumulate(m_widths.begin(), m_widths.begin() + column, 0.0);
    painter.setPen(sheetPen(SheetLine::Thin));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(QRectF(at.x() + left, at.y(), m_widths[column], height)
                         .adjusted(kPaddingX / 2, 4, -kPaddingX / 2, -4));
}

void TableLayout::paintCells(QPainter& painter, QPointF at, const QStringList& cells, bool bold) const {
    painter.setPen(Qt::black);
    for (qsizetype column = 0; column < m_widths.size(); ++column) {
        const QRectF box(at.x() + kPaddingX, at.y() + kPaddingY, textWidthIn(column), 1e6);
        paintText(painter, box, cells[column], cellFont(bold),
                  m_numeric[column] ? Qt::AlignRight : Qt::AlignLeft);
        at.rx() += m_widths[column];
    }
}

} // namespace pumpwright

#include "app/desktop/sheet/sheet_text.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// Lays the lines out; the layout's height is returned.
double layLines(QTextLayout& layout, double width, Qt::Alignment alignment) {
    QTextOption option(alignment);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    double height = 0;
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, height});
        height += std::ceil(line.height());
    }
    layout.endLayout();
    return height;
}

/// QTextLayout knows no line breaks but the line separator.
QString withSeparators(QString text) {
    return text.replace(QLatin1Char('\n'), QChar::LineSeparator);
}

} // namespace

double textHeight(const QString& text, const QFont& font, double width) {
    QTextLayout layout(withSeparators(text), font);
    return layLines(layout, width, Qt::AlignLeft);
}

double textWidth(const QString& text, const QFont& font) {
    return std::ceil(QFontMetricsF(font).horizontalAdvance(text));
}

double longestWordWidth(const QString& text, const QFont& font) {
    double widest = 0;
    const QStringList words = text.split(QLatin1Char(' '));
    for (const QString& word : words) {
        widest = std::max(widest, textWidth(word, font));
    }
    return widest;
}

void paintText(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
               Qt::Alignment alignment) {
    QTextLayout layout(withSeparators(text), font);
    layLines(layout, box.width(), alignment);
    layout.draw(&painter, box.topLeft());
}

void paintLine(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
               Qt::Alignment alignment) {
    const QString shown = QFontMetricsF(font).elidedText(text, Qt::ElideRight, box.width());
    painter.setFont(font);
    painter.drawText(box, static_cast<int>(alignment) | Qt::TextSingleLine, shown);
}

} // namespace pumpwright

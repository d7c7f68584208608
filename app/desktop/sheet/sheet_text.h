#pragma once

#include <QFont>
#include <QRectF>
#include <QString>

class QPainter;

namespace pumpwright {

/// Plain text, broken into lines at words, and inside a word that is wider than the whole line.
double textHeight(const QString& text, const QFont& font, double width);
double textWidth(const QString& text, const QFont& font);
/// Width of the widest word: narrower columns break words.
double longestWordWidth(const QString& text, const QFont& font);

/// The same lines, from the top of the box.
void paintText(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
               Qt::Alignment alignment = Qt::AlignLeft);

/// One line, shortened with an ellipsis where it is wider than the box.
void paintLine(QPainter& painter, const QRectF& box, const QString& text, const QFont& font,
               Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter);

} // namespace pumpwright

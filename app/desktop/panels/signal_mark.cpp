#include "app/desktop/panels/signal_mark.h"

#include <QPainter>
#include <QPainterPath>
#include <QPalette>

#include <cmath>
#include <numbers>

namespace pumpwright {
namespace {

/// A regular polygon inside the square, its first corner `startDegrees` clockwise from the right.
QPolygonF polygon(const QRectF& square, int corners, double startDegrees) {
    QPolygonF shape;
    for (int corner = 0; corner < corners; ++corner) {
        const double angle = (startDegrees + 360.0 * corner / corners) * std::numbers::pi / 180;
        shape << square.center() + QPointF(std::cos(angle), std::sin(angle)) * (square.width() / 2);
    }
    return shape;
}

QPolygonF shapeOf(SignalWord word, const QRectF& square) {
    switch (word) {
    case SignalWord::Danger:
        return polygon(square, 8, 22.5);
    case SignalWord::Warning:
        return QPolygonF({{square.center().x(), square.top()}, square.bottomRight(), square.bottomLeft()});
    case SignalWord::Caution:
        return polygon(square, 4, 0);
    case SignalWord::Notice:
        break;
    }
    const double inset = square.width() * 0.08;
    return QPolygonF(square.adjusted(inset, inset, -inset, -inset)).mid(0, 4);
}

} // namespace

QColor signalColour(SignalWord word) {
    switch (word) {
    case SignalWord::Danger:
        return QColor(0xC8, 0x10, 0x2E);
    case SignalWord::Warning:
        return QColor(0xFF, 0x82, 0x00);
    case SignalWord::Caution:
        return QColor(0xFF, 0xD1, 0x00);
    case SignalWord::Notice:
        break;
    }
    return QColor(0x00, 0x57, 0xB8);
}

void paintSignalMark(QPainter& painter, const QRectF& square, SignalWord word, const QPalette& palette) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.color(QPalette::Text), 1));
    painter.setBrush(signalColour(word));
    painter.drawPolygon(shapeOf(word, square));
    const bool darkGround = word == SignalWord::Danger || word == SignalWord::Notice;
    painter.setPen(darkGround ? Qt::white : Qt::black);
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(std::max(8, static_cast<int>(square.height() * 0.62)));
    painter.setFont(font);
    const double down = word == SignalWord::Warning ? square.height() * 0.13 : 0;
    painter.drawText(square.translated(0, down), Qt::AlignCenter,
                     word == SignalWord::Notice ? QStringLiteral("i") : QStringLiteral("!"));
    painter.restore();
}

} // namespace pumpwright

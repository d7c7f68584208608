#include "app/desktop/sheet/socket_figure.h"

#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"
#include "app/desktop/shown_text.h"

#include <QPainter>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kLeast = 1200; ///< width of one socket with its texts
constexpr double kGap = 40;
constexpr double kTitle = 50;
constexpr double kPicture = 330;
constexpr double kPinWidth = 84;
constexpr double kPinHeight = 50;
constexpr double kInset = 60; ///< of the outermost pins' centres
constexpr double kTextLeft = kPicture + 40;

QString text(const std::string& utf8) {
    return shown(utf8);
}

QString pinText(const SocketPin& pin) {
    return QStringLiteral("%1  %2: %3").arg(text(pin.number), text(pin.meaning), text(pin.wires));
}

double cellWidth(double width) {
    const int count = socketsPerRow(width);
    return (width - kGap * (count - 1)) / count;
}

double textsHeight(const SocketView& view, double width) {
    const double room = width - kTextLeft;
    double height = textHeight(text(view.note), sheetFont(SheetText::Body), room);
    for (const SocketPin& pin : view.pins) {
        height += textHeight(pinText(pin), sheetFont(SheetText::Body), room) + 8;
    }
    return height;
}

void paintPicture(QPainter& painter, QPointF at, const SocketView& view) {
    const QRectF body(at, QSizeF(kPicture, kPicture));
    painter.setBrush(Qt::NoBrush);
    painter.setPen(sheetPen(SheetLine::Middle));
    painter.drawRoundedRect(body, 20, 20);
    const QRectF inner = body.adjusted(kInset, kInset, -kInset, -kInset);
    for (const SocketPin& pin : view.pins) {
        const QPointF centre(inner.left() + pin.x * inner.width(), inner.top() + pin.y * inner.height());
        const QRectF slot(centre - QPointF(kPinWidth, kPinHeight) / 2, QSizeF(kPinWidth, kPinHeight));
        painter.setPen(sheetPen(SheetLine::Thin));
        painter.drawRect(slot);
        painter.setPen(Qt::black);
        paintLine(painter, slot, text(pin.number), sheetFont(SheetText::BodyBold), Qt::AlignCenter);
    }
}

void paintSocket(QPainter& painter, const QRectF& box, const SocketView& view) {
    painter.setPen(Qt::black);
    paintLine(painter, {box.left(), box.top(), box.width(), kTitle - 8},
              QStringLiteral("Socket of %1").arg(text(view.title)), sheetFont(SheetText::Heading));
    paintPicture(painter, box.topLeft() + QPointF(0, kTitle), view);
    QRectF line(box.left() + kTextLeft, box.top() + kTitle, box.width() - kTextLeft, 0);
    const QFont font = sheetFont(SheetText::Body);
    painter.setPen(Qt::black);
    for (const SocketPin& pin : view.pins) {
        line.setHeight(textHeight(pinText(pin), font, line.width()));
        paintText(painter, line, pinText(pin), font);
        line.translate(0, line.height() + 8);
    }
    line.setHeight(textHeight(text(view.note), font, line.width()));
    paintText(painter, line, text(view.note), font);
}

} // namespace

int socketsPerRow(double width) {
    return std::max(1, static_cast<int>((width + kGap) / (kLeast + kGap)));
}

double socketRowHeight(const std::vector<SocketView>& row, double width) {
    double height = kPicture;
    for (const SocketView& view : row) {
        height = std::max(height, textsHeight(view, cellWidth(width)));
    }
    return kTitle + height;
}

void paintSocketRow(QPainter& painter, const QRectF& box, const std::vector<SocketView>& row) {
    const double width = cellWidth(box.width());
    for (std::size_t i = 0; i < row.size(); ++i) {
        const double left = box.left() + static_cast<double>(i) * (width + kGap);
        paintSocket(painter, {left, box.top(), width, box.height()}, row[i]);
    }
}

} // namespace pumpwright

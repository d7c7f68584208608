#include "app/desktop/sheet/caution_box.h"

#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"
#include "app/desktop/shown_text.h"

#include <QPainter>
#include <QPolygonF>

namespace pumpwright {
namespace {

constexpr double kPadding = 18;
constexpr double kHeadHeight = 52;
constexpr double kBullet = 28;

QString textOf(const std::string& caution) {
    return shown(caution);
}

/// General warning sign, drawn for black and white.
void paintTriangle(QPainter& painter, const QRectF& box) {
    painter.setPen(sheetPen(SheetLine::Middle));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(
        QPolygonF({QPointF(box.center().x(), box.top()), box.bottomRight(), box.bottomLeft()}));
    const double x = box.center().x();
    painter.drawLine(QPointF(x, box.top() + box.height() * 0.36),
                     QPointF(x, box.top() + box.height() * 0.70));
    painter.drawLine(QPointF(x, box.top() + box.height() * 0.78),
                     QPointF(x, box.top() + box.height() * 0.89));
}

} // namespace

double cautionBoxHeight(double width, const std::vector<std::string>& cautions) {
    double height = kHeadHeight + 2 * kPadding;
    for (const std::string& caution : cautions) {
        height += textHeight(textOf(caution), sheetFont(SheetText::Body), width - 2 * kPadding - kBullet);
    }
    return height;
}

void paintCautionBox(QPainter& painter, const QRectF& box, const std::vector<std::string>& cautions) {
    const QRectF inner = box.adjusted(kPadding, kPadding, -kPadding, -kPadding);
    paintTriangle(painter, {inner.left() + 4, inner.top(), 44, 40});
    painter.setPen(Qt::black);
    paintLine(painter, {inner.left() + 66, inner.top(), inner.width() - 66, 40}, QStringLiteral("Cautions"),
              sheetFont(SheetText::Heading));
    QPointF at = inner.topLeft() + QPointF(0, kHeadHeight);
    const QFont font = sheetFont(SheetText::Body);
    for (std::size_t i = 0; i < cautions.size(); ++i) {
        const QString text = textOf(cautions[i]);
        const double height = textHeight(text, font, inner.width() - kBullet);
        paintText(painter, {at.x(), at.y(), kBullet, height}, QStringLiteral("%1.").arg(i + 1), font);
        paintText(painter, {at.x() + kBullet, at.y(), inner.width() - kBullet, height}, text, font);
        at.ry() += height;
    }
    painter.setPen(sheetPen(SheetLine::Thick));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box);
}

} // namespace pumpwright

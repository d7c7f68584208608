#include "app/desktop/circuit/overlay_item.h"

#include <QPainter>

namespace pumpwright {

OverlayItem::OverlayItem(CircuitDrawing& drawing) : m_drawing(drawing) {
    setZValue(10);
}

void OverlayItem::sync(const Overlay& overlay) {
    if (m_overlay == overlay) {
        return;
    }
    prepareGeometryChange();
    m_overlay = overlay;
    m_ghost = overlay.ghost ? std::optional(pictureOf(*overlay.ghost)) : std::nullopt;
    m_bounds = m_ghost ? m_ghost->extent.translated(m_ghost->origin()) : QRectF();
    m_bounds |= scenePath(overlay.line).boundingRect();
    if (overlay.caught) {
        const QPointF at = scenePoint(*overlay.caught);
        m_bounds |= QRectF(at - QPointF(20, 40), QSizeF(320, 60));
    }
    m_bounds |= overlay.band.value_or(QRectF()).normalized();
    for (const GuideLine& guide : overlay.guides) {
        m_bounds |= scenePath({guide.from, guide.to}).boundingRect().adjusted(-1, -1, 1, 1);
    }
    m_bounds.adjust(-20, -20, 20, 20);
    update();
}

void OverlayItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    paintGuides(*painter);
    if (m_ghost) {
        paintGhost(*painter);
    }
    if (m_overlay.line.size() > 1) {
        paintLine(*painter);
    }
    if (m_overlay.caught) {
        paintCaught(*painter);
    }
    if (m_overlay.band) {
        paintBand(*painter);
    }
}

void OverlayItem::paintGhost(QPainter& painter) {
    painter.save();
    painter.setOpacity(0.6);
    painter.translate(m_ghost->origin());
    m_drawing.drawPart(painter, *m_ghost, {}, Emphasis::Hovered);
    painter.restore();
}

void OverlayItem::paintLine(QPainter& painter) const {
    QPen pen(m_drawing.palette().selection, 3, Qt::DashLine, Qt::FlatCap, Qt::RoundJoin);
    pen.setDashPattern({3, 2});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(scenePath(m_overlay.line));
}

void OverlayItem::paintCaught(QPainter& painter) const {
    const QPointF at = scenePoint(*m_overlay.caught);
    painter.setPen(QPen(m_drawing.palette().selection, 2.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(at, 8, 8);
    if (!m_overlay.caughtText.isEmpty()) {
        painter.setFont(textFont(TextRole::Value));
        const double width = QFontMetricsF(painter.font()).horizontalAdvance(m_overlay.caughtText) + 10;
        const QRectF box(at + QPointF(12, -30), QSizeF(width, 18));
        painter.setPen(QPen(m_drawing.palette().selection, 1));
        painter.setBrush(m_drawing.palette().paper);
        painter.drawRoundedRect(box, 3, 3);
        painter.setPen(m_drawing.palette().text);
        painter.drawText(box, Qt::AlignCenter, m_overlay.caughtText);
    }
}

void OverlayItem::paintGuides(QPainter& painter) const {
    QPen pen(m_drawing.palette().selection, 1, Qt::DashLine);
    pen.setCosmetic(true);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    for (const GuideLine& guide : m_overlay.guides) {
        painter.drawLine(scenePoint(guide.from), scenePoint(guide.to));
        painter.drawEllipse(scenePoint(guide.from), 5, 5);
    }
}

void OverlayItem::paintBand(QPainter& painter) const {
    QColor wash = m_drawing.palette().selection;
    painter.setPen(QPen(wash, 1.2, Qt::DashLine));
    wash.setAlphaF(0.08F);
    painter.setBrush(wash);
    painter.drawRect(m_overlay.band->normalized());
}

} // namespace pumpwright

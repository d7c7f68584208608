#include "app/desktop/circuit/part_item.h"

#include <QPainter>

namespace pumpwright {

PartItem::PartItem(CircuitDrawing& drawing) : m_drawing(drawing) {
    setZValue(2);
    setCacheMode(DeviceCoordinateCache); // symbols are costly to draw and seldom change
}

void PartItem::sync(const PartPicture& picture, const PartLook& look) {
    if (m_picture.part == picture.part && m_look == look) {
        return;
    }
    prepareGeometryChange();
    m_picture = picture;
    m_look = look;
    setPos(picture.origin());
    update();
}

QRectF PartItem::boundingRect() const {
    // Room for the frame of a selection, the mark of a finding and a reading below.
    return m_picture.extent.adjusted(-26, -20, 26, 24);
}

void PartItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    m_drawing.drawPart(*painter, m_picture, m_look.live, m_look.emphasis);
    m_drawing.drawEnds(*painter, m_picture, m_look.ends);
    if (m_look.mark) {
        m_drawing.drawMark(*painter, m_picture.markAt, *m_look.mark);
    }
}

} // namespace pumpwright

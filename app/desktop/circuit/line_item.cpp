#include "app/desktop/circuit/line_item.h"

#include <QPainter>

#include <algorithm>

namespace pumpwright {

class LineItem::Texts final : public QGraphicsItem {
public:
    explicit Texts(const LineItem& line) : m_line(line) { setZValue(3); }

    void sync() {
        prepareGeometryChange();
        update();
    }

    // Room for the current beside the arrow.
    QRectF boundingRect() const override { return m_line.boundingRect().adjusted(-60, -20, 60, 20); }

    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override {
        m_line.m_drawing.drawLabel(*painter, m_line.m_picture);
        m_line.m_drawing.drawCurrent(*painter, m_line.m_picture, m_line.m_look.live, m_line.m_look.emphasis);
        if (m_line.m_look.mark) {
            // Beside the arrow in the middle, as far as the stretch allows.
            const double room = std::clamp(m_line.m_picture.stretch / 2 - 12, 0.0, 40.0);
            const QPointF aside = room * m_line.m_picture.direction;
            m_line.m_drawing.drawMark(*painter, m_line.m_picture.middle + aside, *m_line.m_look.mark);
        }
    }

private:
    const LineItem& m_line;
};

LineItem::LineItem(CircuitDrawing& drawing) : m_drawing(drawing), m_texts(std::make_unique<Texts>(*this)) {}

LineItem::~LineItem() = default;

QGraphicsItem& LineItem::texts() {
    return *m_texts;
}

void LineItem::sync(const LinePicture& picture, const Wire& wire, const LineLook& look) {
    setZValue(1);
    syncPicture(picture, wire, look);
}

void LineItem::sync(const LinePicture& picture, const Hose&, const LineLook& look) {
    setZValue(0);
    syncPicture(picture, std::nullopt, look);
}

void LineItem::syncPicture(const LinePicture& picture, const std::optional<Wire>& wire,
                           const LineLook& look) {
    if (m_picture == picture && m_wire == wire && m_look == look) {
        return;
    }
    prepareGeometryChange();
    m_picture = picture;
    m_wire = wire;
    m_look = look;
    update();
    m_texts->sync();
}

QRectF LineItem::boundingRect() const {
    return m_picture.extent.adjusted(-2, -2, 2, 2);
}

void LineItem::paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) {
    if (m_wire) {
        m_drawing.drawWire(*painter, m_picture, *m_wire, m_look.live, m_look.emphasis);
    } else {
        m_drawing.drawHose(*painter, m_picture, m_look.emphasis);
    }
}

} // namespace pumpwright

#pragma once

#include "app/desktop/circuit/drawing.h"
#include "app/desktop/circuit/lining_up.h"

#include <QGraphicsItem>

#include <optional>

namespace pumpwright {

/// What a tool shows while a gesture is half done. Nothing of it is in the circuit.
struct Overlay {
    std::optional<Part> ghost;       ///< a part that a click would place
    std::vector<GridPoint> line;     ///< a wire or hose that is being drawn
    std::optional<GridPoint> caught; ///< the terminal that a click would take
    QString caughtText;              ///< its name, shown beside it
    std::optional<QRectF> band;      ///< rubber band, in scene units
    std::vector<GuideLine> guides;   ///< between terminals that have come in line
    friend bool operator==(const Overlay&, const Overlay&) = default;
};

/// Shows the overlay above everything.
class OverlayItem final : public QGraphicsItem {
public:
    explicit OverlayItem(CircuitDrawing& drawing);

    void sync(const Overlay& overlay);

    QRectF boundingRect() const override { return m_bounds; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    void paintGhost(QPainter& painter);
    void paintLine(QPainter& painter) const;
    void paintCaught(QPainter& painter) const;
    void paintBand(QPainter& painter) const;
    void paintGuides(QPainter& painter) const;

    CircuitDrawing& m_drawing;
    Overlay m_overlay;
    std::optional<PartPicture> m_ghost;
    QRectF m_bounds;
};

} // namespace pumpwright

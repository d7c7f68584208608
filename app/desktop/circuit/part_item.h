#pragma once

#include "app/desktop/circuit/drawing.h"
#include "core/checks/finding.h"

#include <QGraphicsItem>

#include <optional>

namespace pumpwright {

/// What a part looks like at the moment.
struct PartLook {
    PartLive live;
    Emphasis emphasis = Emphasis::None;
    std::optional<SignalWord> mark; ///< worst finding about the part
    std::vector<int> ends;          ///< lines that end at each connection point
    friend bool operator==(const PartLook&, const PartLook&) = default;
};

/// Shows one part.
class PartItem final : public QGraphicsItem {
public:
    explicit PartItem(CircuitDrawing& drawing);

    void sync(const PartPicture& picture, const PartLook& look);

    QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    CircuitDrawing& m_drawing;
    PartPicture m_picture;
    PartLook m_look;
};

} // namespace pumpwright

#pragma once

#include "app/desktop/circuit/drawing.h"
#include "core/checks/finding.h"

#include <QGraphicsItem>

#include <optional>

namespace pumpwright {

/// What a wire or hose looks like at the moment.
struct LineLook {
    WireLive live;
    Emphasis emphasis = Emphasis::None;
    std::optional<SignalWord> mark; ///< worst finding about the line
    friend bool operator==(const LineLook&, const LineLook&) = default;
};

/// Shows one wire or hose below the parts, and its label, current and mark above them.
class LineItem final : public QGraphicsItem {
public:
    explicit LineItem(CircuitDrawing& drawing);
    ~LineItem() override;

    void sync(const LinePicture& picture, const Wire& wire, const LineLook& look);
    void sync(const LinePicture& picture, const Hose& hose, const LineLook& look);

    /// The label is an item of its own, because it lies above the parts; the scene takes both.
    QGraphicsItem& texts();

    QRectF boundingRect() const override;
    void paint(QPainter* painter, const QStyleOptionGraphicsItem* option, QWidget* widget) override;

private:
    class Texts;
    void syncPicture(const LinePicture& picture, const std::optional<Wire>& wire, const LineLook& look);

    CircuitDrawing& m_drawing;
    std::unique_ptr<Texts> m_texts;
    LinePicture m_picture;
    LineLook m_look;
    std::optional<Wire> m_wire; ///< none for a hose
};

} // namespace pumpwright

#pragma once

#include "app/desktop/circuit/drawing.h"
#include "app/desktop/circuit/pixmap_store.h"
#include "app/desktop/document/selection.h"

#include <optional>

namespace pumpwright {

/// The worst finding about each object.
struct Marks {
    std::map<PartId, SignalWord> parts;
    std::map<WireId, SignalWord> wires;
    std::map<HoseId, SignalWord> hoses;
};

/// All that changes the look of objects while they stay where they are.
struct Looks {
    const LiveState& live;
    const Marks& marks;
    const SelectedObjects& selected;
    const SelectedObjects& hovered;
};

/// What the canvas shows: the objects of a layout and how each looks at the moment. Draws them all together,
/// because an item of the scene for each costs more than what it draws.
class ShownCircuit {
public:
    /// `layout` must stay as it is until the next call.
    void setObjects(const CircuitLayout& layout, const Circuit& circuit);
    /// Returns the areas whose look has changed, in scene coordinates.
    std::vector<QRectF> sync(const Looks& looks);
    /// Draws what touches `seen`, in scene coordinates.
    void paint(QPainter& painter, CircuitDrawing& drawing, const QRectF& seen);
    /// To be called when the colours have changed.
    void forgetPixmaps() { m_pixmaps.clear(); }

private:
    struct PartLook {
        PartLive live;
        Emphasis emphasis = Emphasis::None;
        std::optional<SignalWord> mark;
        friend bool operator==(const PartLook&, const PartLook&) = default;
    };
    struct ShownPart {
        PartId id;
        const PartPicture* picture;
        std::vector<int> ends; ///< lines that end at each connection point
        std::string key;       ///< of its symbol, but for its state
        QRectF area;
        PartLook look = {};
        std::string lookKey = {};
    };
    struct LineLook {
        WireLive live;
        Emphasis emphasis = Emphasis::None;
        std::optional<SignalWord> mark;
        friend bool operator==(const LineLook&, const LineLook&) = default;
    };
    template <class Id, class Line>
    struct ShownLine {
        Id id;
        const LinePicture* picture;
        Line line;
        QRectF area;
        LineLook look = {};
    };

    void paintWires(QPainter& painter, const CircuitDrawing& drawing, const QRectF& seen) const;
    void paintWiresFromAfar(QPainter& painter, const CircuitDrawing& drawing, const QRectF& seen) const;
    void paintPart(QPainter& painter, CircuitDrawing& drawing, const ShownPart& part);
    void paintAboveLine(QPainter& painter, const CircuitDrawing& drawing, const LinePicture& picture,
                        const LineLook& look);
    void paintMark(QPainter& painter, const CircuitDrawing& drawing, const QPointF& at, SignalWord word);

    std::vector<ShownPart> m_parts;
    std::vector<ShownLine<WireId, Wire>> m_wires;
    std::vector<ShownLine<HoseId, Hose>> m_hoses;
    PixmapStore m_pixmaps;
};

} // namespace pumpwright

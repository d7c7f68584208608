#pragma once

#include "app/desktop/circuit/layout.h"
#include "app/desktop/circuit/live_state.h"
#include "app/desktop/circuit/palette.h"
#include "app/desktop/circuit/symbols.h"
#include "core/checks/finding.h"

class QPainter;

namespace pumpwright {

/// How prominent something is because of pointer and selection.
enum class Emphasis { None, Hovered, Selected };

/// One of the strokes that make up a wire, from below to above.
struct WireStroke {
    enum class Layer { Halo, Live, Edge, Core, Stripe };
    Layer layer;
    QColor colour;
    double width;
};

/// Draws parts and lines in one palette; canvas, print and clipboard share it.
class CircuitDrawing {
public:
    /// `textScale` as for textFont(); 0 draws no texts at all.
    explicit CircuitDrawing(const Palette& palette, double textScale = 1)
        : m_palette(palette), m_symbols(palette), m_textScale(textScale) {}

    const Palette& palette() const { return m_palette; }

    /// Whether the painter's scale is too small for any text.
    static bool isFar(const QPainter& painter);
    static bool isFar(double scale);

    /// The painter's origin is the part's: wash, symbol and texts.
    void drawPart(QPainter& painter, const PartPicture& picture, const PartLive& live, Emphasis emphasis);
    /// What shows behind a part that it is hovered or selected.
    void drawWash(QPainter& painter, const PartPicture& picture, Emphasis emphasis) const;
    void drawSymbol(QPainter& painter, const PartPicture& picture, const PartLive& live);
    /// The texts beside the symbol, and the reading below it.
    void drawTexts(QPainter& painter, const PartPicture& picture, const PartLive& live) const;
    /// A small ring at each free terminal, a dot where several lines end; `lines` says how many end at each.
    void drawEnds(QPainter& painter, const PartPicture& picture, const std::vector<int>& lines) const;
    std::vector<WireStroke> wireStrokes(const Wire& wire, const WireLive& live, Emphasis emphasis) const;
    void drawWire(QPainter& painter, const LinePicture& picture, const Wire& wire, const WireLive& live,
                  Emphasis emphasis) const;
    void drawHose(QPainter& painter, const LinePicture& picture, Emphasis emphasis) const;
    void drawLabel(QPainter& painter, const LinePicture& picture) const;
    /// Says where a current flows; the painter's origin is the middle of the stretch.
    void drawArrow(QPainter& painter, const QPointF& along) const;
    /// The current beside the arrow, where there is room for it or the line is emphasised.
    void drawCurrent(QPainter& painter, const LinePicture& picture, const WireLive& live,
                     Emphasis emphasis) const;

    /// A mark with the letter of a finding's signal word.
    void drawMark(QPainter& painter, const QPointF& at, SignalWord word) const;

    /// All that touches `seen`, in scene coordinates.
    void drawAll(QPainter& painter, const Circuit& circuit, const CircuitLayout& layout, const QRectF& seen);

private:
    void drawReading(QPainter& painter, const PartPicture& picture, const PartLive& live) const;

    Palette m_palette;
    SymbolPainter m_symbols;
    double m_textScale;
};

/// Width of a wire's core, by its area, in scene units.
double coreWidth(const Wire& wire);

} // namespace pumpwright

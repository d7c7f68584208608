#include "app/desktop/circuit/circuit_painter.h"

#include "app/desktop/circuit/drawing.h"

#include <QPainter>

#include <algorithm>

namespace pumpwright {
namespace {

Palette paletteOf(PaintStyle style) {
    switch (style) {
    case PaintStyle::Light:
        return lightPalette();
    case PaintStyle::Dark:
        return darkPalette();
    case PaintStyle::Print:
        break;
    }
    return printPalette();
}

} // namespace

QRectF circuitBounds(const Circuit& circuit) {
    return layoutOf(circuit).bounds();
}

double smallestTextHeight() {
    return kSmallTextHeight;
}

void paintCircuit(QPainter& painter, const Circuit& circuit, const QRectF& target, PaintStyle style,
                  double textScale) {
    paintLaidOut(painter, circuit, withTextScale(layoutOf(circuit), circuit, textScale), target, style,
                 textScale);
}

void paintLaidOut(QPainter& painter, const Circuit& circuit, const CircuitLayout& layout,
                  const QRectF& target, PaintStyle style, double textScale) {
    const QRectF bounds = layout.bounds();
    if (bounds.isEmpty() || target.isEmpty()) {
        return;
    }
    const double scale = std::min(target.width() / bounds.width(), target.height() / bounds.height());
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(target.center());
    painter.scale(scale, scale);
    painter.translate(-bounds.center());
    CircuitDrawing drawing(paletteOf(style), textScale);
    drawing.drawAll(painter, circuit, layout, painter.hasClipping() ? painter.clipBoundingRect() : bounds);
    painter.restore();
}

} // namespace pumpwright

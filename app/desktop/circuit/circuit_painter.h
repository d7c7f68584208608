#pragma once

#include "app/desktop/circuit/layout.h"

class QPainter;

namespace pumpwright {

/// Print is black on white: wires are told apart by their colour letters.
enum class PaintStyle { Light, Dark, Print };

/// Size in scene units (20 to a grid step of 5 mm) of all that paintCircuit() draws, labels included.
/// Empty for an empty circuit.
QRectF circuitBounds(const Circuit& circuit);

/// Height in scene units of the smallest text that is drawn, to work out the least scale that can be read.
double smallestTextHeight();

/// Draws the whole circuit as vectors, without live state or marks, scaled to fit into `target` and centred
/// there. `textScale` enlarges the smallest text where it stands, and other text to that height, for
/// paper on which it would be too small.
void paintCircuit(QPainter& painter, const Circuit& circuit, const QRectF& target, PaintStyle style,
                  double textScale = 1);

/// The same for a circuit that is laid out already, with this text scale (0: without texts); for
/// many pages of one circuit.
/// Leaves out what lies outside the painter's clip.
void paintLaidOut(QPainter& painter, const Circuit& circuit, const CircuitLayout& layout,
                  const QRectF& target, PaintStyle style, double textScale);

} // namespace pumpwright

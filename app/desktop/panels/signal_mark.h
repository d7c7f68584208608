#pragma once

#include "core/checks/finding.h"

#include <QColor>

class QPainter;
class QPalette;
class QRectF;

namespace pumpwright {

/// The colour that ANSI Z535.1 gives a signal word: red, orange, yellow, blue.
QColor signalColour(SignalWord word);

/// Draws the word's shape, so that it is told without colour: octagon, triangle, diamond, square, with a sign
/// in it. The outline is in the text colour of the palette.
void paintSignalMark(QPainter& painter, const QRectF& square, SignalWord word, const QPalette& palette);

} // namespace pumpwright

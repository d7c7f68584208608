#pragma once

#include "core/circuit/circuit.h"

#include <QPointF>
#include <QRectF>
#include <QTransform>

namespace pumpwright {

/// Scene units to a grid step of 5 mm.
inline constexpr double kStep = 20;

/// A direction on the sheet, in the order of quarter turns clockwise.
enum class Side { Right, Down, Left, Up };

QPointF scenePoint(GridPoint point);
GridPoint nearestGridPoint(const QPointF& scenePosition);
GridPoint operator+(GridPoint a, GridPoint b);
GridPoint operator-(GridPoint a, GridPoint b);

/// One step towards a side.
GridPoint stepTowards(Side side);
Side opposite(Side side);

/// From the symbol's own coordinates to the sheet: mirrored left to right first, then turned clockwise.
QTransform turning(const Part& part);
GridPoint turned(const Part& part, GridPoint local);

} // namespace pumpwright

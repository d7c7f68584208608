#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/placement.h"

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
/// Scene units of a distance in millimetres, and the nearest that a label may stand off.
QPointF sceneDistance(LabelOffset offset);
LabelOffset nearestOffset(const QPointF& sceneOffset);
GridPoint operator+(GridPoint a, GridPoint b);
GridPoint operator-(GridPoint a, GridPoint b);

/// One step towards a side.
GridPoint stepTowards(Side side);
Side opposite(Side side);

/// From the symbol's own coordinates to the sheet, as turned() does for grid points.
QTransform turning(const Part& part);

} // namespace pumpwright

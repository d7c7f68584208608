#pragma once

#include <QList>
#include <QPointF>

namespace pumpwright {

/// Round numbers (1, 2 or 5 times a power of ten apart) from `low` to `high`, about `wanted` of them.
QList<double> roundTicks(double low, double high, int wanted);

/// The same curve with at most four points a column of width `column`, each column's first, last, lowest and
/// highest: drawn, it looks as the whole does. Points are in the order of x.
QList<QPointF> thinned(const QList<QPointF>& curve, double column);

} // namespace pumpwright

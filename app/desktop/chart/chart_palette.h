#pragma once

#include "app/desktop/chart/chart_lanes.h"

#include <QPen>

class QCPAxis;
class QPalette;

namespace pumpwright {

/// Colours of the Drive chart for a light or a dark ground. Lines reach 3:1 against it, and differ by dash as
/// well as by colour.
struct ChartPalette {
    QColor ground;
    QColor text;
    QColor grid;
    QColor level; ///< set points
    QColor cursor;
    bool dark = false;

    explicit ChartPalette(const QPalette& palette);
    /// `nth` of its role in its lane, from 0.
    QPen pen(TraceRole role, int nth) const;
};

/// The pens of a lane's traces, in their order.
std::vector<QPen> lanePens(const ChartLane& lane, const ChartPalette& palette);
/// The pen of a set point.
QPen levelPen(const ChartPalette& palette);
void colourAxis(QCPAxis& axis, const ChartPalette& palette);

} // namespace pumpwright

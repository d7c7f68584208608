#pragma once

#include "app/desktop/circuit/part_picture.h"
#include "core/circuit/circuit.h"

#include <QPolygonF>

#include <map>
#include <vector>

namespace pumpwright {

/// How a wire or hose lies on the sheet, in scene coordinates.
struct LinePicture {
    std::vector<GridPoint> corners; ///< ends included
    QPolygonF path;
    QString label;
    QPointF labelAt;          ///< middle of the label
    QRectF labelRect;         ///< empty without label
    bool labelUpright = true; ///< else it reads from below to above
    QPointF middle;           ///< of the longest stretch: where the current's arrow sits
    double stretch = 0;       ///< its length
    QPointF direction;        ///< of that stretch, from end to end
    QRectF extent;            ///< path and label
    friend bool operator==(const LinePicture&, const LinePicture&) = default;
};

/// Where everything is on the sheet.
struct CircuitLayout {
    std::map<PartId, PartPicture> parts;
    std::map<WireId, LinePicture> wires;
    std::map<HoseId, LinePicture> hoses;
    std::map<GridPoint, int, bool (*)(GridPoint, GridPoint)> ends; ///< lines that end at a point
    QRectF bounds() const;
    /// How many lines end at each connection point of a part.
    std::vector<int> linesAt(const PartPicture& picture) const;

    CircuitLayout();
};

CircuitLayout layoutOf(const Circuit& circuit);

/// The same lines with texts enlarged for paper: `textScale` as for textFont().
CircuitLayout withTextScale(CircuitLayout layout, const Circuit& circuit, double textScale);

/// The same, taking from `before` the pictures of the parts that have not changed since.
CircuitLayout layoutOf(const Circuit& circuit, CircuitLayout before);

/// A path for a line that is being drawn, among those that are there.
std::vector<GridPoint> proposedPath(const CircuitLayout& layout, const ConnectionPoint& from,
                                    const ConnectionPoint& to, const std::vector<GridPoint>& bends);

/// The middle between the ends, from where a moved label's offset is counted.
QPointF labelAnchor(const LinePicture& picture);

QPolygonF scenePath(const std::vector<GridPoint>& corners);

/// Reference, colour letters and area: "W3 RD 2.5 mm²".
QString wireLabel(const Wire& wire);

} // namespace pumpwright

#include "core/parts/placement.h"

#include "core/parts/part_kind.h"

#include <algorithm>

namespace pumpwright {

GridPoint turned(const Part& part, GridPoint local) {
    GridPoint point = part.mirrored ? GridPoint{-local.x, local.y} : local;
    for (int turn = 0; turn < part.quarterTurns; ++turn) {
        point = {-point.y, point.x};
    }
    return point;
}

bool Footprint::covers(GridPoint point) const {
    return least.x <= point.x && point.x <= most.x && least.y <= point.y && point.y <= most.y;
}

Footprint footprintOf(const Part& part) {
    Footprint footprint{{-1, -1}, {1, 1}};
    const PartKind& kind = kindOf(part);
    for (const auto& points : {kind.terminals(part), kind.ports(part)}) {
        for (const TerminalSpec& spec : points) {
            const GridPoint at = turned(part, spec.at);
            footprint.least = {std::min(footprint.least.x, at.x), std::min(footprint.least.y, at.y)};
            footprint.most = {std::max(footprint.most.x, at.x), std::max(footprint.most.y, at.y)};
        }
    }
    return {{part.at.x + footprint.least.x, part.at.y + footprint.least.y},
            {part.at.x + footprint.most.x, part.at.y + footprint.most.y}};
}

} // namespace pumpwright

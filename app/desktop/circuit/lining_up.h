#pragma once

#include "app/desktop/circuit/layout.h"

#include <set>
#include <vector>

namespace pumpwright {

/// From a terminal that stays to one in line with it.
struct GuideLine {
    GridPoint from;
    GridPoint to;
    friend bool operator==(const GuideLine&, const GuideLine&) = default;
};

/// The terminals and ports of these parts, and of all others.
std::vector<GridPoint> terminalsOf(const CircuitLayout& layout, const std::set<PartId>& parts);
std::vector<GridPoint> terminalsBeside(const CircuitLayout& layout, const std::set<PartId>& parts);
/// Those of a part that is not placed yet.
std::vector<GridPoint> terminalsOf(const Part& part);

/// How far terminals go that a gesture moves by `wanted` scene units: to the grid, or where one of them then
/// is in line with a terminal nearby that stays. No place of the grid gets out of reach by it.
GridPoint linedUp(const std::vector<GridPoint>& moving, const std::vector<GridPoint>& staying,
                  const QPointF& wanted);

/// For each direction the shortest line between terminals that are in line; none where none is near.
std::vector<GuideLine> guidesOf(const std::vector<GridPoint>& moving, const std::vector<GridPoint>& staying,
                                GridPoint by);

} // namespace pumpwright

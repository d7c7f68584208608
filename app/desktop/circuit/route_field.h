#pragma once

#include "app/desktop/circuit/geometry.h"

#include <QRect>

#include <cstdint>
#include <optional>
#include <vector>

namespace pumpwright {

/// One end of a line that is to be routed.
struct RouteEnd {
    GridPoint at;
    std::optional<Side> exit; ///< side to which the line should leave, where it matters
};

/// The grid of the sheet with what is in the way of lines. Finds the cheapest right-angled path: short, with
/// few bends, round parts and their texts, not along other lines, and not over terminals that it does not
/// belong to. The same field gives the same path.
class RouteField {
public:
    /// `area` in grid steps holds everything; paths stay inside.
    explicit RouteField(const QRect& area);

    void addBody(const QRect& steps);
    void addText(const QRect& steps);
    /// Keeps foreign lines off a terminal and off the step in front of it.
    void addTerminal(const RouteEnd& terminal);
    /// Notes a path that later ones should not run along.
    void addPath(const std::vector<GridPoint>& corners);

    /// Corners from end to end, both included, by way of `bends` in order.
    std::vector<GridPoint> path(const RouteEnd& from, const RouteEnd& to,
                                const std::vector<GridPoint>& bends) const;

    /// How much a text over these steps would hide, to choose where a line's label goes: bodies, texts, lines
    /// that cross it and, less, lines beside it. `across`: the text reads from left to right.
    int crowding(const QRect& steps, bool across) const;

private:
    struct Cell {
        std::uint8_t body = 0;
        std::uint8_t nearBody = 0;
        std::uint8_t text = 0;
        std::uint8_t terminal = 0;
        std::uint8_t lane = 0; ///< in front of a terminal
        std::uint8_t across = 0;
        std::uint8_t along = 0;
        std::uint8_t corner = 0;
    };
    class Search;

    const Cell* cell(GridPoint at) const;
    Cell* cell(GridPoint at);
    std::vector<GridPoint> leg(const RouteEnd& from, const RouteEnd& to) const;

    QRect m_area;
    std::vector<Cell> m_cells;
};

/// Leaves out points in the middle of straight stretches.
std::vector<GridPoint> cornersOf(const std::vector<GridPoint>& points);

} // namespace pumpwright

#include "app/desktop/circuit/route_field.h"

#include <queue>

#include <algorithm>
#include <array>
#include <limits>

namespace pumpwright {
namespace {

// What a path pays, per step of the grid or as it says. The proportions are chosen by eye.
constexpr int kStepCost = 10;
constexpr int kBendCost = 24;
constexpr int kSidewaysExitCost = 60; ///< leaving a terminal to another side than its lead points
constexpr int kBodyCost = 500;
constexpr int kNearBodyCost = 6;
constexpr int kTextCost = 30;
constexpr int kForeignTerminalCost = 400;
constexpr int kForeignLaneCost = 18;
constexpr int kOverlapCost = 160; ///< running along another line
constexpr int kCrossingCost = 16;
constexpr int kCornerCost = 90; ///< touching another line's corner, or bending on another line

constexpr int kDetour = 14;                      ///< steps that a path may go beyond its ends
constexpr std::size_t kLargestField = 4'000'000; ///< cells; beyond, lines go straight
/// Cells between two ends, more than from corner to corner of a sheet of A0 (ISO 216). Ends farther apart are
/// joined without a search, which would take long for a line that nobody can follow.
constexpr qint64 kLargestSearch = 60'000;

void add(std::uint8_t& count) {
    count = static_cast<std::uint8_t>(std::min(255, count + 1));
}

Side sideBetween(GridPoint from, GridPoint to) {
    if (from.x != to.x) {
        return to.x > from.x ? Side::Right : Side::Left;
    }
    return to.y > from.y ? Side::Down : Side::Up;
}

bool isAcross(Side side) {
    return side == Side::Left || side == Side::Right;
}

int distance(GridPoint a, GridPoint b) {
    return std::abs(a.x - b.x) + std::abs(a.y - b.y);
}

bool areFarApart(GridPoint a, GridPoint b) {
    const qint64 width = std::abs(a.x - b.x) + 2 * kDetour + 1;
    const qint64 height = std::abs(a.y - b.y) + 2 * kDetour + 1;
    return width * height > kLargestSearch;
}

/// The path without a search: straight, or with one corner.
std::vector<GridPoint> plainLeg(const RouteEnd& from, const RouteEnd& to) {
    const bool acrossFirst = !from.exit || isAcross(*from.exit);
    const GridPoint corner = acrossFirst ? GridPoint{to.at.x, from.at.y} : GridPoint{from.at.x, to.at.y};
    return cornersOf({from.at, corner, to.at});
}

} // namespace

std::vector<GridPoint> cornersOf(const std::vector<GridPoint>& points) {
    std::vector<GridPoint> corners;
    for (const GridPoint point : points) {
        if (!corners.empty() && corners.back() == point) {
            continue;
        }
        if (corners.size() > 1) {
            const GridPoint before = corners[corners.size() - 2];
            const GridPoint last = corners.back();
            const bool sameRow = before.y == last.y && last.y == point.y;
            const bool sameColumn = before.x == last.x && last.x == point.x;
            if (sameRow || sameColumn) {
                corners.back() = point;
                continue;
            }
        }
        corners.push_back(point);
    }
    return corners;
}

RouteField::RouteField(const QRect& area) : m_area(area) {
    const auto size = static_cast<std::size_t>(std::max<qint64>(0, area.width())) *
                      static_cast<std::size_t>(std::max<qint64>(0, area.height()));
    if (size <= kLargestField) {
        m_cells.resize(size);
    }
}

const RouteField::Cell* RouteField::cell(GridPoint at) const {
    if (m_cells.empty() || !m_area.contains(at.x, at.y)) {
        return nullptr;
    }
    const auto row = static_cast<std::size_t>(at.y - m_area.top());
    const auto column = static_cast<std::size_t>(at.x - m_area.left());
    return &m_cells[row * static_cast<std::size_t>(m_area.width()) + column];
}

RouteField::Cell* RouteField::cell(GridPoint at) {
    return const_cast<Cell*>(std::as_const(*this).cell(at));
}

void RouteField::addBody(const QRect& steps) {
    for (int y = steps.top() - 1; y <= steps.bottom() + 1; ++y) {
        for (int x = steps.left() - 1; x <= steps.right() + 1; ++x) {
            if (Cell* at = cell({x, y})) {
                add(steps.contains(x, y) ? at->body : at->nearBody);
            }
        }
    }
}

void RouteField::addText(const QRect& steps) {
    for (int y = steps.top(); y <= steps.bottom(); ++y) {
        for (int x = steps.left(); x <= steps.right(); ++x) {
            if (Cell* at = cell({x, y})) {
                add(at->text);
            }
        }
    }
}

void RouteField::addTerminal(const RouteEnd& terminal) {
    if (Cell* at = cell(terminal.at)) {
        add(at->terminal);
    }
    if (terminal.exit) {
        if (Cell* at = cell(terminal.at + stepTowards(*terminal.exit))) {
            add(at->lane);
        }
    }
}

void RouteField::addPath(const std::vector<GridPoint>& corners) {
    for (std::size_t i = 0; i + 1 < corners.size(); ++i) {
        const Side side = sideBetween(corners[i], corners[i + 1]);
        for (GridPoint at = corners[i];; at = at + stepTowards(side)) {
            Cell* here = cell(at);
            if (!here) {
                break;
            }
            add(isAcross(side) ? here->across : here->along);
            if (at == corners[i + 1]) {
                break;
            }
        }
        if (Cell* corner = i > 0 ? cell(corners[i]) : nullptr) {
            add(corner->corner);
        }
    }
}

int RouteField::crowding(const QRect& steps, bool across) const {
    int sum = 0;
    for (int y = steps.top(); y <= steps.bottom(); ++y) {
        for (int x = steps.left(); x <= steps.right(); ++x) {
            if (const Cell* at = cell({x, y})) {
                sum += 4 * at->body + 3 * at->text + 5 * (across ? at->along : at->across) +
                       2 * (across ? at->across : at->along);
            }
        }
    }
    return sum;
}

/// A* from one end to the other over (place, direction of arrival).
class RouteField::Search {
public:
    Search(const RouteField& field, const RouteEnd& from, const RouteEnd& to)
        : m_field(field), m_from(from), m_to(to),
          m_box(QRect(QPoint(std::min(from.at.x, to.at.x), std::min(from.at.y, to.at.y)),
                      QPoint(std::max(from.at.x, to.at.x), std::max(from.at.y, to.at.y)))
                    .adjusted(-kDetour, -kDetour, kDetour, kDetour)
                    .intersected(field.m_area)) {
        const auto states =
            static_cast<std::size_t>(m_box.width()) * static_cast<std::size_t>(m_box.height()) * 4;
        m_cost.assign(states, std::numeric_limits<int>::max());
        m_before.assign(states, -1);
    }

    std::vector<GridPoint> path() {
        start();
        while (!m_open.empty()) {
            const Entry entry = m_open.top();
            m_open.pop();
            const GridPoint at = place(entry.state);
            if (at == m_to.at) {
                return traced(entry.state);
            }
            if (entry.cost == m_cost[static_cast<std::size_t>(entry.state)]) {
                expand(entry, at);
            }
        }
        return plainLeg(m_from, m_to);
    }

private:
    struct Entry {
        int estimate;
        int cost;
        int state;
        // Ties go to the later state so that the order, and with it the path, is always the same.
        bool operator<(const Entry& other) const {
            return estimate != other.estimate ? estimate > other.estimate : state < other.state;
        }
    };

    int stateOf(GridPoint at, Side side) const {
        return ((at.y - m_box.top()) * m_box.width() + at.x - m_box.left()) * 4 + static_cast<int>(side);
    }
    GridPoint place(int state) const {
        const int index = state / 4;
        return {m_box.left() + index % m_box.width(), m_box.top() + index / m_box.width()};
    }

    void start() {
        for (int side = 0; side < 4; ++side) {
            const Side out = static_cast<Side>(side);
            const int cost = m_from.exit && *m_from.exit != out ? kSidewaysExitCost : 0;
            step(m_from.at, out, cost, -1);
        }
    }

    void expand(const Entry& entry, GridPoint at) {
        const Side arrived = static_cast<Side>(entry.state % 4);
        for (int side = 0; side < 4; ++side) {
            const Side next = static_cast<Side>(side);
            if (next != opposite(arrived)) {
                step(at, next, entry.cost + (next == arrived ? 0 : bendCost(at)), entry.state);
            }
        }
    }

    int bendCost(GridPoint at) const {
        const Cell* here = m_field.cell(at);
        return kBendCost + (here && here->across + here->along > 0 ? kCornerCost : 0);
    }

    void step(GridPoint at, Side side, int cost, int before) {
        const GridPoint next = at + stepTowards(side);
        if (!m_box.contains(next.x, next.y)) {
            return;
        }
        const int total = cost + kStepCost + (next == m_to.at ? arrivalCost(side) : passingCost(next, side));
        const int state = stateOf(next, side);
        if (total < m_cost[static_cast<std::size_t>(state)]) {
            m_cost[static_cast<std::size_t>(state)] = total;
            m_before[static_cast<std::size_t>(state)] = before;
            m_open.push({total + kStepCost * distance(next, m_to.at), total, state});
        }
    }

    int arrivalCost(Side side) const {
        return m_to.exit && *m_to.exit != opposite(side) ? kSidewaysExitCost : 0;
    }

    int passingCost(GridPoint at, Side side) const {
        const Cell* here = m_field.cell(at);
        if (!here) {
            return 0;
        }
        const bool ownLane = isOwnLane(m_from, at) || isOwnLane(m_to, at);
        const int along = isAcross(side) ? here->across : here->along;
        const int crossed = isAcross(side) ? here->along : here->across;
        return (here->body > 0 ? kBodyCost : 0) + (here->nearBody > 0 && !ownLane ? kNearBodyCost : 0) +
               (here->text > 0 ? kTextCost : 0) + kForeignTerminalCost * here->terminal +
               (ownLane ? 0 : kForeignLaneCost * here->lane) + kOverlapCost * along +
               kCrossingCost * crossed + kCornerCost * here->corner;
    }

    static bool isOwnLane(const RouteEnd& end, GridPoint at) {
        return end.exit && end.at + stepTowards(*end.exit) == at;
    }

    std::vector<GridPoint> traced(int state) const {
        std::vector<GridPoint> points;
        for (int at = state; at >= 0; at = m_before[static_cast<std::size_t>(at)]) {
            points.push_back(place(at));
        }
        points.push_back(m_from.at);
        std::reverse(points.begin(), points.end());
        return cornersOf(points);
    }

    const RouteField& m_field;
    const RouteEnd& m_from;
    const RouteEnd& m_to;
    QRect m_box;
    std::vector<int> m_cost;
    std::vector<int> m_before;
    std::priority_queue<Entry> m_open;
};

std::vector<GridPoint> RouteField::leg(const RouteEnd& from, const RouteEnd& to) const {
    if (from.at == to.at) {
        return {from.at};
    }
    if (!cell(from.at) || !cell(to.at) || areFarApart(from.at, to.at)) {
        return plainLeg(from, to);
    }
    return Search(*this, from, to).path();
}

std::vector<GridPoint> RouteField::path(const RouteEnd& from, const RouteEnd& to,
                                        const std::vector<GridPoint>& bends) const {
    std::vector<GridPoint> points{from.at};
    RouteEnd start = from;
    for (std::size_t i = 0; i <= bends.size(); ++i) {
        const RouteEnd end = i < bends.size() ? RouteEnd{bends[i], std::nullopt} : to;
        const bool fixed = i > 0 && i < bends.size();
        const bool straight = start.at.x == end.at.x || start.at.y == end.at.y;
        const std::vector<GridPoint> next =
            fixed && straight ? std::vector<GridPoint>{end.at} : leg(start, end);
        points.insert(points.end(), next.begin(), next.end());
        start = {end.at, std::nullopt};
    }
    return cornersOf(points);
}

} // namespace pumpwright

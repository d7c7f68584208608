#include "app/desktop/circuit/lining_up.h"

#include <cmath>
#include <cstdlib>
#include <optional>

namespace pumpwright {
namespace {

/// In grid steps. Less than 1, so that the place beside a line can still be chosen.
constexpr double kPull = 0.8;
constexpr int kSight = 30; ///< farther apart, nobody sees that two terminals are in line

/// One coordinate, and the other.
struct Direction {
    int GridPoint::*along;
    int GridPoint::*aside;
};

constexpr Direction kAcross{&GridPoint::x, &GridPoint::y};
constexpr Direction kDown{&GridPoint::y, &GridPoint::x};

/// The shift along one direction that is nearest to what is wanted among those that bring terminals in line.
int shift(const std::vector<GridPoint>& moving, const std::vector<GridPoint>& staying, Direction direction,
          double wanted, double wantedAside) {
    double least = kPull;
    int best = static_cast<int>(std::lround(wanted));
    for (const GridPoint mover : moving) {
        for (const GridPoint stayer : staying) {
            const int inLine = stayer.*direction.along - mover.*direction.along;
            const double apart = std::abs(stayer.*direction.aside - mover.*direction.aside - wantedAside);
            if (apart <= kSight && std::abs(inLine - wanted) < least) {
                least = std::abs(inLine - wanted);
                best = inLine;
            }
        }
    }
    return best;
}

std::optional<GuideLine> guide(const std::vector<GridPoint>& moving, const std::vector<GridPoint>& staying,
                               GridPoint by, Direction direction) {
    int least = kSight + 1;
    std::optional<GuideLine> shortest;
    for (const GridPoint mover : moving) {
        for (const GridPoint stayer : staying) {
            const GridPoint moved = mover + by;
            const int apart = std::abs(stayer.*direction.aside - moved.*direction.aside);
            if (stayer.*direction.along == moved.*direction.along && apart > 0 && apart < least) {
                least = apart;
                shortest = {stayer, moved};
            }
        }
    }
    return shortest;
}

std::vector<GridPoint> terminalsWhere(const CircuitLayout& layout, const std::set<PartId>& parts,
                                      bool among) {
    std::vector<GridPoint> terminals;
    for (const auto& [id, picture] : layout.parts) {
        if (parts.contains(id) == among) {
            for (const ConnectionPoint& point : picture.points) {
                terminals.push_back(point.at);
            }
        }
    }
    return terminals;
}

} // namespace

std::vector<GridPoint> terminalsOf(const CircuitLayout& layout, const std::set<PartId>& parts) {
    return terminalsWhere(layout, parts, true);
}

std::vector<GridPoint> terminalsBeside(const CircuitLayout& layout, const std::set<PartId>& parts) {
    return terminalsWhere(layout, parts, false);
}

std::vector<GridPoint> terminalsOf(const Part& part) {
    std::vector<GridPoint> terminals;
    for (const ConnectionPoint& point : pictureOf(part).points) {
        terminals.push_back(point.at);
    }
    return terminals;
}

GridPoint linedUp(const std::vector<GridPoint>& moving, const std::vector<GridPoint>& staying,
                  const QPointF& wanted) {
    const QPointF steps = wanted / kStep;
    return {shift(moving, staying, kAcross, steps.x(), steps.y()),
            shift(moving, staying, kDown, steps.y(), steps.x())};
}

std::vector<GuideLine> guidesOf(const std::vector<GridPoint>& moving, const std::vector<GridPoint>& staying,
                                GridPoint by) {
    std::vector<GuideLine> guides;
    for (const Direction direction : {kAcross, kDown}) {
        if (const auto found = guide(moving, staying, by, direction)) {
            guides.push_back(*found);
        }
    }
    return guides;
}

} // namespace pumpwright

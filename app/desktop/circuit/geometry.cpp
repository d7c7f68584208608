#include "app/desktop/circuit/geometry.h"

#include <cmath>

namespace pumpwright {

QPointF scenePoint(GridPoint point) {
    return {point.x * kStep, point.y * kStep};
}

GridPoint nearestGridPoint(const QPointF& scenePosition) {
    return {static_cast<int>(std::lround(scenePosition.x() / kStep)),
            static_cast<int>(std::lround(scenePosition.y() / kStep))};
}

GridPoint operator+(GridPoint a, GridPoint b) {
    return {a.x + b.x, a.y + b.y};
}

GridPoint operator-(GridPoint a, GridPoint b) {
    return {a.x - b.x, a.y - b.y};
}

GridPoint stepTowards(Side side) {
    switch (side) {
    case Side::Right:
        return {1, 0};
    case Side::Down:
        return {0, 1};
    case Side::Left:
        return {-1, 0};
    case Side::Up:
        break;
    }
    return {0, -1};
}

Side opposite(Side side) {
    return static_cast<Side>((static_cast<int>(side) + 2) % 4);
}

QTransform turning(const Part& part) {
    QTransform transform;
    transform.rotate(90.0 * part.quarterTurns);
    if (part.mirrored) {
        transform.scale(-1, 1);
    }
    return transform;
}

} // namespace pumpwright

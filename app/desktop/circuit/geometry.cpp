#include "app/desktop/circuit/geometry.h"

#include "core/parts/document_fields.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kMillimetre = kStep / 5;

int labelDistance_mm(double distance) {
    constexpr double kFarthest_mm = field::kFarthestLabel_mm;
    return static_cast<int>(std::lround(std::clamp(distance / kMillimetre, -kFarthest_mm, kFarthest_mm)));
}

} // namespace

QPointF scenePoint(GridPoint point) {
    return {point.x * kStep, point.y * kStep};
}

GridPoint nearestGridPoint(const QPointF& scenePosition) {
    return {static_cast<int>(std::lround(scenePosition.x() / kStep)),
            static_cast<int>(std::lround(scenePosition.y() / kStep))};
}

QPointF sceneDistance(LabelOffset offset) {
    return {offset.x_mm * kMillimetre, offset.y_mm * kMillimetre};
}

LabelOffset nearestOffset(const QPointF& sceneOffset) {
    return {labelDistance_mm(sceneOffset.x()), labelDistance_mm(sceneOffset.y())};
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

#include "app/desktop/circuit/free_place.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr int kRoom = 3; ///< grid steps to the next part and to the edge
constexpr int kStride = 2;

bool isFree(const CircuitLayout& layout, const QRectF& room) {
    return std::none_of(layout.parts.begin(), layout.parts.end(), [&](const auto& entry) {
        return entry.second.extent.translated(entry.second.origin()).intersects(room);
    });
}

} // namespace

GridPoint freePlace(const CircuitLayout& layout, const Part& prototype, const QRectF& area) {
    Part part = prototype;
    part.at = {};
    const QRectF extent = pictureOf(part).extent;
    const QRectF room = extent.adjusted(-kRoom * kStep, -kRoom * kStep, kRoom * kStep, kRoom * kStep);
    const GridPoint first = nearestGridPoint(area.topLeft() - room.topLeft());
    const int right = nearestGridPoint(area.bottomRight() - room.bottomRight()).x;
    for (GridPoint at = first;; at.y += kStride) {
        for (at.x = first.x; at.x <= std::max(first.x, right); at.x += kStride) {
            if (isFree(layout, room.translated(scenePoint(at)))) {
                return at;
            }
        }
    }
}

} // namespace pumpwright

#pragma once

#include <QPixmap>
#include <QRectF>

#include <functional>
#include <string>
#include <unordered_map>

class QPainter;

namespace pumpwright {

/// Small pictures that are drawn often, kept as pixels at the scale of the latest painting.
class PixmapStore {
public:
    /// Draws with the picture's origin at `at`. `paint` draws it round the painter's origin, within `bounds`;
    /// it is asked once for each key and scale, and each time for pictures too large to keep.
    void draw(QPainter& painter, const std::string& key, const QPointF& at, const QRectF& bounds,
              const std::function<void(QPainter&)>& paint);
    void clear() { m_pixmaps.clear(); }

private:
    std::unordered_map<std::string, QPixmap> m_pixmaps;
    double m_scale = 0; ///< device pixels to a unit of the painter
};

} // namespace pumpwright

#include "app/desktop/circuit/pixmap_store.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kLargestKept_px = 256; ///< few larger ones are in view at a time

QPixmap painted(const QSize& size, double scale, double ratio, const QPointF& corner,
                const std::function<void(QPainter&)>& paint) {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    painter.translate(-corner);
    paint(painter);
    painter.end();
    pixmap.setDevicePixelRatio(ratio);
    return pixmap;
}

} // namespace

void PixmapStore::draw(QPainter& painter, const std::string& key, const QPointF& at, const QRectF& bounds,
                       const std::function<void(QPainter&)>& paint) {
    const QTransform world = painter.worldTransform();
    const double ratio = painter.device()->devicePixelRatioF();
    const double scale = world.m11() * ratio;
    if (scale * std::max(bounds.width(), bounds.height()) > kLargestKept_px) {
        painter.save();
        painter.translate(at);
        paint(painter);
        painter.restore();
        return;
    }
    if (scale != m_scale) {
        clear();
        m_scale = scale;
    }
    const auto [entry, isNew] = m_pixmaps.try_emplace(key);
    // A whole pixel of the screen, or the picture would be smeared over its neighbours.
    const QPointF reach(std::ceil(-bounds.left() * scale), std::ceil(-bounds.top() * scale));
    if (isNew) {
        const QSize size(static_cast<int>(reach.x() + std::ceil(bounds.right() * scale)),
                         static_cast<int>(reach.y() + std::ceil(bounds.bottom() * scale)));
        entry->second = painted(size, scale, ratio, -reach / scale, paint);
    }
    const QPointF pixel = (world.map(at) * ratio - reach).toPoint();
    painter.resetTransform();
    painter.drawPixmap(pixel / ratio, entry->second);
    painter.setWorldTransform(world);
}

} // namespace pumpwright

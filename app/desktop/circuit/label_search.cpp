#include "app/desktop/circuit/label_search.h"

#include "app/desktop/circuit/part_picture.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kTile = 100; ///< side of a tile in scene units: some texts fit in one
constexpr double kHeight = 14;
constexpr double kGap = 4; ///< between line and text

/// Tiles that a rectangle touches.
QRect tilesOf(const QRectF& rect) {
    const auto tile = [](double at) { return static_cast<int>(std::floor(at / kTile)); };
    return {QPoint(tile(rect.left()), tile(rect.top())), QPoint(tile(rect.right()), tile(rect.bottom()))};
}

template <class Visit>
void visitTiles(const QRectF& rect, Visit visit) {
    const QRect tiles = tilesOf(rect);
    for (int y = tiles.top(); y <= tiles.bottom(); ++y) {
        for (int x = tiles.left(); x <= tiles.right(); ++x) {
            visit(QPoint(x, y));
        }
    }
}

} // namespace

QRect coveredSteps(const QRectF& scene) {
    return {QPoint(static_cast<int>(std::ceil(scene.left() / kStep - 0.01)),
                   static_cast<int>(std::ceil(scene.top() / kStep - 0.01))),
            QPoint(static_cast<int>(std::floor(scene.right() / kStep + 0.01)),
                   static_cast<int>(std::floor(scene.bottom() / kStep + 0.01)))};
}

void LabelSearch::addText(const QRectF& rect) {
    visitTiles(rect, [&](const QPoint& tile) { m_texts[tile].append(rect); });
}

int LabelSearch::textsTouched(const QRectF& rect) const {
    int touched = 0;
    visitTiles(rect, [&](const QPoint& tile) {
        const auto texts = m_texts.constFind(tile);
        if (texts != m_texts.constEnd()) {
            for (const QRectF& text : *texts) {
                touched += text.intersects(rect) ? 1 : 0;
            }
        }
    });
    return touched;
}

void LabelSearch::tryStretch(LabelPlace& best, const QPointF& from, const QPointF& to, double width) const {
    constexpr int kPlaces = 16; // the middle first, then places further and further from it
    constexpr int kTouch = 9;
    const QPointF stretch = to - from;
    const bool across = std::abs(stretch.x()) > std::abs(stretch.y());
    const double length = std::abs(stretch.x()) + std::abs(stretch.y());
    const double height = kHeight * m_scale;
    const double off = kGap + height / 2;
    const QSizeF size = across ? QSizeF(width, height) : QSizeF(height, width);
    for (int i = 0; i < kPlaces - 1; ++i) {
        const double share = 0.5 + (i % 2 == 0 ? -1.0 : 1.0) * ((i + 1) / 2) / kPlaces;
        const double beyond =
            std::max(0.0, width / 2 - share * length) + std::max(0.0, width / 2 - (1 - share) * length);
        for (const double side : {-1.0, 1.0}) { // above and to the left first
            const QPointF at = from + share * stretch + side * (across ? QPointF(0, off) : QPointF(off, 0));
            const QRectF rect(at - QPointF(size.width(), size.height()) / 2, size);
            const QRectF clear = across ? rect.adjusted(0, -3, 0, 3) : rect.adjusted(-3, 0, 3, 0);
            const int score = static_cast<int>(std::ceil(beyond / 2)) + (i > 0 ? 1 : 0) + (side > 0 ? 1 : 0) +
                              m_field.crowding(coveredSteps(clear), across) + kTouch * textsTouched(rect);
            if (score < best.score) {
                best.score = score;
                best.rect = rect;
                best.upright = across;
            }
        }
    }
}

double LabelSearch::widthOf(const QString& text) const {
    return QFontMetricsF(textFont(TextRole::Number, m_scale)).horizontalAdvance(text) + kGap;
}

LabelPlace LabelSearch::fixed(const QPointF& middle, const QString& text) {
    LabelPlace place;
    place.text = text;
    const QSizeF size(widthOf(text), kHeight * m_scale);
    place.rect = QRectF(middle - QPointF(size.width(), size.height()) / 2, size);
    addText(place.rect);
    return place;
}

LabelPlace LabelSearch::placeFor(const QPolygonF& path, const QString& text) const {
    LabelPlace best;
    best.text = text;
    const double width = widthOf(text);
    for (qsizetype i = 0; i + 1 < path.size(); ++i) {
        tryStretch(best, path[i], path[i + 1], width);
    }
    return best;
}

LabelPlace LabelSearch::placed(const QPolygonF& path, const QStringList& texts) {
    constexpr int kGoodScore = 8;
    LabelPlace best;
    for (const QString& text : texts) {
        LabelPlace place = placeFor(path, text);
        if (place.score < best.score) {
            best = std::move(place);
        }
        if (best.score <= kGoodScore) {
            break;
        }
    }
    addText(best.rect);
    return best;
}

} // namespace pumpwright

#pragma once

#include "app/desktop/circuit/route_field.h"

#include <QHash>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <limits>

namespace pumpwright {

/// A text beside a line, and how badly it stands there.
struct LabelPlace {
    QString text;
    QRectF rect;
    bool upright = true; ///< else it reads from below to above
    int score = std::numeric_limits<int>::max();
};

/// Looks along the stretches of lines for places where their labels hide nothing and touch no other text.
class LabelSearch {
public:
    /// `textScale` as for textFont(). The field must hold all bodies and lines, and outlive the search.
    LabelSearch(const RouteField& field, double textScale) : m_field(field), m_scale(textScale) {}

    /// A text that stands already, in scene coordinates.
    void addText(const QRectF& rect);

    /// The fullest of the texts, given from full to short, that stands well beside the path; else the one
    /// that stands best. Later labels keep off it.
    LabelPlace placed(const QPolygonF& path, const QStringList& texts);

    /// The text with its middle where somebody wants it. Later labels keep off it.
    LabelPlace fixed(const QPointF& middle, const QString& text);

private:
    double widthOf(const QString& text) const;
    LabelPlace placeFor(const QPolygonF& path, const QString& text) const;
    void tryStretch(LabelPlace& best, const QPointF& from, const QPointF& to, double width) const;
    int textsTouched(const QRectF& rect) const;

    const RouteField& m_field;
    double m_scale;
    QHash<QPoint, QList<QRectF>> m_texts; ///< by the tile of the sheet that they touch
};

/// The steps whose grid points a rectangle covers.
QRect coveredSteps(const QRectF& scene);

} // namespace pumpwright

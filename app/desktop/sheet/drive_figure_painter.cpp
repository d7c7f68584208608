#include "app/desktop/sheet/drive_figure.h"
#include "app/desktop/sheet/figure_scale.h"
#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"

#include <QPainter>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kTitleHeight = 60;
constexpr double kAxisHeight = 75;
constexpr double kLeft = 130;
constexpr double kRight = 620; ///< legend
constexpr double kLaneGap = 30;
constexpr double kBarHeight = 36;
constexpr double kFirstLaneShare = 1.6;
constexpr double kLegendLine = 34;

struct CurveLook {
    QColor colour;
    QList<qreal> dashes; ///< in line widths; empty: unbroken
};

const CurveLook& look(qsizetype curve) {
    static const QList<CurveLook> looks{{QColor(0, 0, 0), {}},
                                        {QColor(24, 74, 150), {7, 3}},
                                        {QColor(150, 50, 20), {2, 2}},
                                        {QColor(20, 100, 60), {9, 3, 2, 3}}};
    return looks[curve % looks.size()];
}

QPen curvePen(qsizetype curve) {
    QPen pen(look(curve).colour, 4);
    pen.setJoinStyle(Qt::RoundJoin);
    if (!look(curve).dashes.isEmpty()) {
        pen.setDashPattern(look(curve).dashes);
    }
    return pen;
}

QPen levelPen() {
    QPen pen(Qt::black, 2);
    pen.setDashPattern({12, 6});
    return pen;
}

/// Time to x and value to y in one lane.
struct Scale {
    QRectF plot;
    double duration_s;
    double low;
    double high;

    double x(double time_s) const { return plot.left() + plot.width() * time_s / duration_s; }
    double y(double value) const { return plot.bottom() - plot.height() * (value - low) / (high - low); }
};

Scale scaleOf(const DriveFigure::Lane& lane, const QRectF& plot, double duration_s) {
    double low = 0;
    double high = 0;
    for (const DriveFigure::Curve& curve : lane.curves) {
        for (const QPointF& sample : curve.samples) {
            low = std::min(low, sample.y());
            high = std::max(high, sample.y());
        }
    }
    for (const DriveFigure::Level& level : lane.levels) {
        high = std::max(high, level.value);
    }
    const double span = high > low ? high - low : 1;
    return {plot, duration_s, low < 0 ? low - 0.05 * span : 0, high + 0.08 * span};
}

void paintPresses(QPainter& painter, const Scale& scale, const DriveFigure& figure) {
    for (const DriveFigure::Span& press : figure.presses) {
        const double left = scale.x(press.from_s);
        painter.fillRect(
            QRectF(left, scale.plot.top(), std::max(scale.x(press.to_s) - left, 2.0), scale.plot.height()),
            QColor(222, 222, 222));
    }
}

void paintTimeGrid(QPainter& painter, const Scale& scale) {
    QPen grid(QColor(150, 150, 150), 1);
    painter.setPen(grid);
    for (const double tick : roundTicks(0, scale.duration_s, 10)) {
        painter.drawLine(QPointF(scale.x(tick), scale.plot.top()),
                         QPointF(scale.x(tick), scale.plot.bottom()));
    }
}

void paintValueAxis(QPainter& painter, const Scale& scale, const QString& title) {
    const QFont font = sheetFont(SheetText::Label);
    for (const double tick : roundTicks(scale.low, scale.high, 5)) {
        const double y = scale.y(tick);
        painter.setPen(QPen(QColor(150, 150, 150), 1));
        painter.drawLine(QPointF(scale.plot.left(), y), QPointF(scale.plot.right(), y));
        painter.setPen(Qt::black);
        paintLine(painter, {scale.plot.left() - kLeft, y - 20, kLeft - 12, 40}, QString::number(tick, 'g', 6),
                  font, Qt::AlignRight | Qt::AlignVCenter);
    }
    painter.setPen(Qt::black);
    painter.save();
    painter.translate(scale.plot.left() - kLeft + 16, scale.plot.center().y());
    painter.rotate(-90);
    paintLine(painter, {-scale.plot.height() / 2, -18, scale.plot.height(), 36}, title, font,
              Qt::AlignCenter);
    painter.restore();
}

QList<QPointF> pointsOf(const DriveFigure::Curve& curve, const Scale& scale) {
    constexpr double kColumn = 2; // finer than eye and printer resolve
    QList<QPointF> points;
    for (const QPointF& sample : curve.samples) {
        const QPointF point(scale.x(sample.x()), scale.y(sample.y()));
        if (curve.stepped && !points.isEmpty()) {
            points.append({point.x(), points.back().y()});
        }
        points.append(point);
    }
    return thinned(points, kColumn);
}

void paintCurves(QPainter& painter, const Scale& scale, const DriveFigure::Lane& lane) {
    painter.save();
    painter.setClipRect(scale.plot);
    painter.setPen(levelPen());
    for (const DriveFigure::Level& level : lane.levels) {
        painter.drawLine(QPointF(scale.plot.left(), scale.y(level.value)),
                         QPointF(scale.plot.right(), scale.y(level.value)));
    }
    painter.setBrush(Qt::NoBrush);
    for (qsizetype i = 0; i < lane.curves.size(); ++i) {
        painter.setPen(curvePen(i));
        const QList<QPointF> points = pointsOf(lane.curves[i], scale);
        painter.drawPolyline(points.constData(), static_cast<int>(points.size()));
    }
    painter.restore();
}

void paintLegendLine(QPainter& painter, QPointF at, const QPen& pen, const QString& name) {
    painter.setPen(pen);
    painter.drawLine(at + QPointF(0, kLegendLine / 2), at + QPointF(90, kLegendLine / 2));
    painter.setPen(Qt::black);
    paintLine(painter, {at.x() + 105, at.y(), kRight - 130, kLegendLine}, name, sheetFont(SheetText::Label));
}

void paintLegend(QPainter& painter, const QRectF& plot, const DriveFigure::Lane& lane) {
    QPointF at(plot.right() + 20, plot.top());
    for (qsizetype i = 0; i < lane.curves.size(); ++i) {
        paintLegendLine(painter, at, curvePen(i), lane.curves[i].name);
        at.ry() += kLegendLine;
    }
    // Values are told beside the names, highest first, as they lie in the plot.
    QList<DriveFigure::Level> levels = lane.levels;
    std::sort(levels.begin(), levels.end(), [](const auto& a, const auto& b) { return a.value > b.value; });
    for (const DriveFigure::Level& level : std::as_const(levels)) {
        paintLegendLine(painter, at, levelPen(),
                        QStringLiteral("%1: %2").arg(level.name, QString::number(level.value, 'g', 4)));
        at.ry() += kLegendLine;
    }
}

void paintLane(QPainter& painter, const QRectF& plot, const DriveFigure& figure,
               const DriveFigure::Lane& lane) {
    const Scale scale = scaleOf(lane, plot, figure.duration_s);
    paintPresses(painter, scale, figure);
    paintTimeGrid(painter, scale);
    paintValueAxis(painter, scale, lane.title);
    paintCurves(painter, scale, lane);
    paintLegend(painter, plot, lane);
    painter.setPen(sheetPen(SheetLine::Thin));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(plot);
}

/// Stretches that lie closer together than a column are one stretch: chatter shows as a solid bar.
QList<QPointF> mergedStretches(const QList<QPointF>& closed, double column_s) {
    QList<QPointF> merged;
    for (const QPointF& stretch : closed) {
        if (!merged.isEmpty() && stretch.x() - merged.back().y() < column_s) {
            merged.back().setY(stretch.y());
        } else {
            merged.append(stretch);
        }
    }
    return merged;
}

void paintBars(QPainter& painter, const QRectF& plot, const DriveFigure& figure) {
    const Scale scale{plot, figure.duration_s, 0, 1};
    paintPresses(painter, scale, figure);
    paintTimeGrid(painter, scale);
    double top = plot.top();
    for (const DriveFigure::Bar& bar : figure.bars) {
        const QRectF row(plot.left(), top, plot.width(), kBarHeight);
        painter.setPen(QPen(QColor(110, 110, 110), 1));
        painter.drawLine(row.bottomLeft(), row.bottomRight());
        for (const QPointF& stretch : mergedStretches(bar.closed, figure.duration_s * 2 / plot.width())) {
            const double left = scale.x(stretch.x());
            painter.fillRect(
                QRectF(left, top + 8, std::max(scale.x(stretch.y()) - left, 1.5), kBarHeight - 16),
                Qt::black);
        }
        painter.setPen(Qt::black);
        paintLine(painter, {plot.left() - kLeft, top, kLeft - 12, kBarHeight}, bar.name,
                  sheetFont(SheetText::Label), Qt::AlignRight | Qt::AlignVCenter);
        const QString times = QStringLiteral("closed %1 ×").arg(bar.closed.size());
        paintLine(painter, {plot.right() + 20, top, kRight - 30, kBarHeight}, times,
                  sheetFont(SheetText::Label));
        top += kBarHeight;
    }
    painter.setPen(sheetPen(SheetLine::Thin));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(plot);
}

void paintTimeAxis(QPainter& painter, const QRectF& plot, double duration_s) {
    const Scale scale{plot, duration_s, 0, 1};
    painter.setPen(Qt::black);
    const QFont font = sheetFont(SheetText::Label);
    for (const double tick : roundTicks(0, duration_s, 10)) {
        paintLine(painter, {scale.x(tick) - 60, plot.bottom() + 4, 120, 32}, QString::number(tick, 'g', 6),
                  font, Qt::AlignCenter);
    }
    paintLine(painter, {plot.left(), plot.bottom() + 36, plot.width(), 34},
              QStringLiteral("time [s] – grey: brake pedal pressed"), font, Qt::AlignCenter);
}

} // namespace

void paintDriveFigure(QPainter& painter, const QRectF& box, const DriveFigure& figure) {
    painter.setPen(Qt::black);
    paintLine(painter, {box.left(), box.top(), box.width(), kTitleHeight - 10}, figure.title,
              sheetFont(SheetText::Heading));
    if (figure.duration_s <= 0) {
        return;
    }
    const double barsHeight = kBarHeight * static_cast<double>(figure.bars.size());
    const double laneRoom = box.height() - kTitleHeight - kAxisHeight - barsHeight;
    const auto laneCount = static_cast<double>(figure.lanes.size());
    // The first lane, vacuum, has most lines and gets more room.
    const double laneHeight = (laneRoom - laneCount * kLaneGap) / (laneCount - 1 + kFirstLaneShare);
    QRectF plot(box.left() + kLeft, box.top() + kTitleHeight, box.width() - kLeft - kRight,
                laneHeight * kFirstLaneShare);
    for (const DriveFigure::Lane& lane : figure.lanes) {
        paintLane(painter, plot, figure, lane);
        plot.translate(0, plot.height() + kLaneGap);
        plot.setHeight(laneHeight);
    }
    plot.setHeight(barsHeight);
    paintBars(painter, plot, figure);
    paintTimeAxis(painter, plot, figure.duration_s);
}

} // namespace pumpwright

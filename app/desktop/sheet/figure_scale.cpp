#include "app/desktop/sheet/figure_scale.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

double roundStep(double rough) {
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= rough * (1 - 1e-9)) {
            return factor * power;
        }
    }
    return 10 * power;
}

/// Appends a column's points in their order, each once.
void appendColumn(QList<QPointF>& kept, const QList<QPointF>& curve, qsizetype first, qsizetype last) {
    qsizetype lowest = first;
    qsizetype highest = first;
    for (qsizetype i = first; i <= last; ++i) {
        lowest = curve[i].y() < curve[lowest].y() ? i : lowest;
        highest = curve[i].y() > curve[highest].y() ? i : highest;
    }
    QList<qsizetype> wanted{first, lowest, highest, last};
    std::sort(wanted.begin(), wanted.end());
    wanted.erase(std::unique(wanted.begin(), wanted.end()), wanted.end());
    for (const qsizetype i : std::as_const(wanted)) {
        kept.append(curve[i]);
    }
}

} // namespace

QList<double> roundTicks(double low, double high, int wanted) {
    QList<double> ticks;
    if (!(high > low) || wanted < 1) {
        return ticks;
    }
    const double step = roundStep((high - low) / wanted);
    const double slack = step * 1e-9;
    for (double tick = std::ceil((low - slack) / step) * step; tick <= high + slack; tick += step) {
        ticks.append(std::abs(tick) < slack ? 0.0 : tick);
    }
    return ticks;
}

QList<QPointF> thinned(const QList<QPointF>& curve, double column) {
    QList<QPointF> kept;
    qsizetype first = 0;
    while (first < curve.size()) {
        const double index = std::floor(curve[first].x() / column);
        qsizetype last = first;
        while (last + 1 < curve.size() && std::floor(curve[last + 1].x() / column) == index) {
            ++last;
        }
        appendColumn(kept, curve, first, last);
        first = last + 1;
    }
    return kept;
}

} // namespace pumpwright

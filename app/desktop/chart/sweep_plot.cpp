#include "app/desktop/chart/sweep_plot.h"

#include "app/desktop/chart/chart_palette.h"
#include "app/desktop/shown_text.h"
#include "core/sheet/sweep_tables.h"

#include <qcustomplot.h>
#include <QEvent>
#include <QVBoxLayout>

#include <cmath>

namespace pumpwright {
namespace {

constexpr double kRing = 9;
constexpr double kLine = 1.5;

/// In the unit that is offered first, so that an axis needs no choice.
double inUnit(double si, QuantityKind kind) {
    const DisplayUnit unit = displayUnits(kind).front();
    return (si - unit.offset) / unit.factor;
}

QString axisText(std::string_view label, QuantityKind kind) {
    const std::string_view unit = displayUnits(kind).front().symbol;
    return unit.empty() ? shown(label) : QStringLiteral("%1 / %2").arg(shown(label), shown(unit));
}

} // namespace

SweepPlot::SweepPlot(QWidget* parent) : QWidget(parent), m_plot(new QCustomPlot(this)) {
    m_plot->setAccessibleName(tr("Picture of the sweep"));
    m_plot->setFocusPolicy(Qt::NoFocus);
    m_plot->setInteractions({});
    m_plot->setMinimumSize(160, 120);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_plot);
    redraw();
}

void SweepPlot::showSweep(const SweepStudy& study, const Measure& measure, std::optional<double> goal) {
    m_study = study;
    m_measure = &measure;
    m_goal = goal;
    redraw();
}

void SweepPlot::clear() {
    m_plot->clearItems();
    m_plot->clearPlottables();
    // Of the colour scale of a map, if there was one.
    while (m_plot->plotLayout()->columnCount() > 1) {
        m_plot->plotLayout()->remove(m_plot->plotLayout()->element(0, 1));
        m_plot->plotLayout()->simplify();
    }
    m_plot->yAxis->setTicker(QSharedPointer<QCPAxisTicker>::create());
}

void SweepPlot::redraw() {
    clear();
    const ChartPalette colours(palette());
    m_plot->setBackground(QBrush(colours.ground));
    for (QCPAxis* axis : {m_plot->xAxis, m_plot->yAxis}) {
        colourAxis(*axis, colours);
        axis->setVisible(m_measure != nullptr);
    }
    if (m_measure == nullptr || m_study.points.empty()) {
        m_plot->replot();
        return;
    }
    const SweepAxis& first = m_study.axes.front();
    m_plot->xAxis->setLabel(axisText(first.what.label, first.what.spec->kind));
    m_plot->xAxis->setRange(inUnit(std::min(first.from, first.to), first.what.spec->kind),
                            inUnit(std::max(first.from, first.to), first.what.spec->kind));
    if (m_study.axes.size() > 1) {
        addMap();
    } else {
        addCurve();
    }
    m_plot->replot();
    QString summary = axisText(m_measure->label, m_measure->kind);
    for (const SweepThreshold& threshold : m_study.thresholds) {
        summary += QStringLiteral(". ") + translated(thresholdText(m_study, threshold));
    }
    setAccessibleDescription(summary);
}

/// Not a number where there is no result: the line is broken there.
double SweepPlot::shownValue(const SweepPoint& point) const {
    const std::optional<double> value = sweepValue(point, *m_measure);
    return value ? inUnit(*value, m_measure->kind) : std::nan("");
}

void SweepPlot::addCurve() {
    const ChartPalette colours(palette());
    const QuantityKind kind = m_study.axes.front().what.spec->kind;
    QCPGraph* curve = m_plot->addGraph();
    curve->setPen(QPen(colours.text, kLine));
    curve->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssDisc, 4));
    curve->setLineStyle(m_measure->sort == Measure::Sort::Quantity ? QCPGraph::lsLine : QCPGraph::lsNone);
    QVector<double> goodX;
    QVector<double> goodY;
    for (const SweepPoint& point : m_study.points) {
        const double x = inUnit(point.at.front(), kind);
        const double y = shownValue(point);
        curve->addData(x, y);
        if (m_goal && isGood(*m_measure, sweepValue(point, *m_measure), *m_goal)) {
            goodX << x;
            goodY << y;
        }
    }
    addGoodRings(goodX, goodY);
    addThresholds();
    m_plot->yAxis->setLabel(axisText(m_measure->label, m_measure->kind));
    m_plot->yAxis->rescale();
    addGoal();
    const QCPRange range = m_plot->yAxis->range();
    const double margin = 0.08 * std::max(range.size(), 1e-9);
    m_plot->yAxis->setRange(range.lower - margin, range.upper + margin);
    if (m_measure->sort == Measure::Sort::YesNo) {
        const auto words = QSharedPointer<QCPAxisTickerText>::create();
        words->addTick(0, tr("no"));
        words->addTick(1, tr("yes"));
        m_plot->yAxis->setTicker(words);
        m_plot->yAxis->setRange(-0.3, 1.3);
    }
}

void SweepPlot::addGoodRings(const QVector<double>& x, const QVector<double>& y) {
    const ChartPalette colours(palette());
    QCPGraph* good = m_plot->addGraph();
    good->setName(tr("good"));
    good->setLineStyle(QCPGraph::lsNone);
    const QPen pen = colours.pen(TraceRole::AssistDelivered, 0);
    good->setScatterStyle(
        QCPScatterStyle(QCPScatterStyle::ssCircle, QPen(pen.color(), 2), Qt::NoBrush, kRing));
    good->setData(x, y);
}

void SweepPlot::addThresholds() {
    const ChartPalette colours(palette());
    const QuantityKind kind = m_study.axes.front().what.spec->kind;
    for (const SweepThreshold& threshold : m_study.thresholds) {
        auto* line = new QCPItemStraightLine(m_plot);
        const double x = inUnit(threshold.good, kind);
        line->point1->setCoords(x, 0);
        line->point2->setCoords(x, 1);
        line->setPen(QPen(colours.cursor, kLine));
    }
}

void SweepPlot::addGoal() {
    if (!m_goal || m_measure->sort == Measure::Sort::YesNo) {
        return;
    }
    const double y = inUnit(*m_goal, m_measure->kind);
    auto* line = new QCPItemStraightLine(m_plot);
    line->point1->setCoords(0, y);
    line->point2->setCoords(1, y);
    line->setPen(levelPen(ChartPalette(palette())));
    QCPRange range = m_plot->yAxis->range();
    range.expand(y);
    m_plot->yAxis->setRange(range);
}

QCPRange SweepPlot::valueRange() const {
    std::optional<QCPRange> range;
    for (const SweepPoint& point : m_study.points) {
        if (const double value = shownValue(point); !std::isnan(value)) {
            range = range ? range->expanded(QCPRange(value, value)) : QCPRange(value, value);
        }
    }
    return range.value_or(QCPRange(0, 1));
}

void SweepPlot::addMap() {
    const SweepAxis& right = m_study.axes.front();
    const SweepAxis& up = m_study.axes.back();
    const QuantityKind xKind = right.what.spec->kind;
    const QuantityKind yKind = up.what.spec->kind;
    auto* map = new QCPColorMap(m_plot->xAxis, m_plot->yAxis);
    map->data()->setSize(right.points, up.points);
    map->data()->setRange({inUnit(right.from, xKind), inUnit(right.to, xKind)},
                          {inUnit(up.from, yKind), inUnit(up.to, yKind)});
    map->data()->fill(std::nan("")); // what was not driven yet
    map->setInterpolate(false);
    QVector<double> goodX;
    QVector<double> goodY;
    for (std::size_t i = 0; i < m_study.points.size(); ++i) {
        const SweepPoint& point = m_study.points[i];
        map->data()->setCell(static_cast<int>(i) % right.points, static_cast<int>(i) / right.points,
                             shownValue(point));
        if (m_goal && isGood(*m_measure, sweepValue(point, *m_measure), *m_goal)) {
            goodX << inUnit(point.at.front(), xKind);
            goodY << inUnit(point.at.back(), yKind);
        }
    }
    auto* scale = new QCPColorScale(m_plot);
    m_plot->plotLayout()->addElement(0, 1, scale);
    colourAxis(*scale->axis(), ChartPalette(palette()));
    scale->axis()->setLabel(axisText(m_measure->label, m_measure->kind));
    map->setColorScale(scale);
    QCPColorGradient greys(QCPColorGradient::gpGrayscale);
    greys.setNanHandling(QCPColorGradient::nhTransparent);
    map->setGradient(greys);
    map->setDataRange(valueRange());
    addGoodRings(goodX, goodY);
    m_plot->yAxis->setLabel(axisText(up.what.label, yKind));
    m_plot->rescaleAxes();
}

void SweepPlot::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        redraw();
    }
}

} // namespace pumpwright

#include "app/desktop/chart/lane_plot.h"

#include <qcustomplot.h>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kStateHeight = 0.62; ///< of a row
constexpr int kRowHeight = 14;        ///< [px] of a row of states at least
constexpr int kLaneHeight = 30;       ///< [px] of a lane at least
constexpr double kReadingSize = 5;    ///< [px] of a measured point
constexpr int kFocusWidth = 2;
const QString kCursorLayer = QStringLiteral("cursor");

/// Numbers with their unit, so that the axis needs no title.
class SecondsTicker final : public QCPAxisTicker {
protected:
    QString getTickLabel(double tick, const QLocale& locale, QChar format, int precision) override {
        return QCPAxisTicker::getTickLabel(tick, locale, format, precision) + QStringLiteral(" s");
    }
};

DisplayUnit unitOf(const ChartLane& lane, std::string_view vacuumUnit) {
    const auto units = displayUnits(lane.kind);
    if (lane.kind == QuantityKind::GaugeVacuum) {
        for (const DisplayUnit& unit : units) {
            if (unit.symbol == vacuumUnit) {
                return unit;
            }
        }
    }
    return units.front();
}

double inUnit(double si, const DisplayUnit& unit) {
    return (si - unit.offset) / unit.factor;
}

QSharedPointer<QCPGraphDataContainer> graphData(const Channel& channel, const DisplayUnit& unit, double scale,
                                                double offset) {
    QVector<QCPGraphData> points;
    points.reserve(static_cast<qsizetype>(channel.times_s.size()));
    for (std::size_t i = 0; i < channel.times_s.size(); ++i) {
        const auto si = static_cast<double>(channel.values[i]);
        points.append(QCPGraphData(channel.times_s[i], inUnit(si, unit) * scale + offset));
    }
    auto data = QSharedPointer<QCPGraphDataContainer>::create();
    data->set(points, true);
    return data;
}

/// Range of all that a lane shows, with room above for its title.
QCPRange valueRange(const ChartLane& lane, const DisplayUnit& unit) {
    double low = 0;
    double high = 0;
    const auto include = [&](double si) {
        low = std::min(low, inUnit(si, unit));
        high = std::max(high, inUnit(si, unit));
    };
    for (const ChartTrace& trace : lane.traces) {
        const Extremes extremes =
            trace.channel->extremes(trace.channel->times_s.front(), trace.channel->times_s.back());
        include(extremes.lowest);
        include(extremes.highest);
    }
    for (const ChartLevel& level : lane.levels) {
        include(level.si);
    }
    const double height = std::max(high - low, 1e-9);
    return {low < 0 ? low - 0.08 * height : low, high + 0.22 * height};
}

} // namespace

LanePlot::LanePlot(QWidget* parent) : QWidget(parent), m_plot(new QCustomPlot(this)) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Lines of the drive"));
    m_plot->setAccessibleName(tr("Drawing of the lines"));
    m_plot->setFocusPolicy(Qt::NoFocus);
    m_plot->setInteractions({});
    m_plot->setMouseTracking(true);
    m_plot->setNoAntialiasingOnDrag(true);
    // Lines wider than a pixel, stretch by stretch: joined ones take ten times as long where samples are
    // dense.
    m_plot->setPlottingHint(QCP::phFastPolylines, true);
    m_plot->setMinimumSize(60, 60);
    m_plot->addLayer(kCursorLayer, m_plot->layer(QStringLiteral("overlay")), QCustomPlot::limBelow);
    // Moving the cursor repaints this layer alone, not the lines.
    m_plot->layer(kCursorLayer)->setMode(QCPLayer::lmBuffered);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(kFocusWidth, kFocusWidth, kFocusWidth, kFocusWidth);
    column->addWidget(m_plot);
    connect(m_plot, &QCustomPlot::afterLayout, this, &LanePlot::thinOut);
    connect(m_plot, &QCustomPlot::mousePress, this, &LanePlot::press);
    connect(m_plot, &QCustomPlot::mouseMove, this, &LanePlot::move);
    connect(m_plot, &QCustomPlot::mouseRelease, this, &LanePlot::release);
    connect(m_plot, &QCustomPlot::mouseWheel, this, &LanePlot::turnWheel);
    connect(m_plot, &QCustomPlot::mouseDoubleClick, this, [this] { showWholeDrive(); });
}

LanePlot::~LanePlot() = default;

/// In a low lane the names of the set points would cover the lines, the read-out names them as well; and
/// numbers of the axis would touch.
void LanePlot::thinOut() {
    const int lineHeight = QFontMetrics(smallFont()).height();
    for (const LevelLabel& one : m_levelLabels) {
        const auto inLane = std::count_if(m_levelLabels.begin(), m_levelLabels.end(),
                                          [&](const LevelLabel& other) { return other.rect == one.rect; });
        one.label->setVisible(one.rect->height() > 2 * inLane * lineHeight);
    }
    for (QCPAxisRect* rect : m_rects) {
        const int count = std::clamp(rect->height() / (2 * lineHeight), 1, 4);
        for (const QCPAxis::AxisType side : {QCPAxis::atLeft, QCPAxis::atRight}) {
            rect->axis(side)->ticker()->setTickCount(count);
        }
    }
}

/// Below it the panel scrolls.
void LanePlot::setLeastHeight() {
    int height = QFontMetrics(smallFont()).height() + 12;
    for (const QCPAxisRect* rect : m_rects) {
        height += rect->minimumSize().height() + rect->minimumMargins().top() + 6;
    }
    m_plot->setMinimumHeight(height);
}

/// Lanes are low: their texts are a little smaller than the rest of the window's.
QFont LanePlot::smallFont() const {
    QFont small = font();
    small.setPointSizeF(0.85 * small.pointSizeF());
    return small;
}

void LanePlot::clear() {
    m_cursorLines.clear();
    m_markLines.clear();
    m_levelLabels.clear();
    m_rects.clear();
    m_plot->clearItems();
    m_plot->clearPlottables();
    m_plot->plotLayout()->clear();
    delete m_margins;
    m_margins = new QCPMarginGroup(m_plot);
}

void LanePlot::showLanes(const std::vector<ChartLane>& lanes, double duration_s, const ShownUnits& units) {
    const bool whole = !hasLanes() || (m_span.from_s <= 0 && m_span.to_s >= m_duration_s);
    const ChartPalette colours(palette());
    clear();
    m_units = units;
    m_duration_s = std::max(duration_s, 1e-6);
    m_plot->setBackground(QBrush(colours.ground));
    m_plot->plotLayout()->setRowSpacing(4);
    for (std::size_t row = 0; row < lanes.size(); ++row) {
        auto* rect = new QCPAxisRect(m_plot, true);
        // Items take over the plot's rects when they are made, so it has to be in its place before.
        m_plot->plotLayout()->addElement(static_cast<int>(row), 0, rect);
        fillLane(*rect, lanes[row], colours);
        rect->axis(QCPAxis::atBottom)->setTicker(QSharedPointer<SecondsTicker>::create());
        rect->axis(QCPAxis::atBottom)->setTickLabels(row + 1 == lanes.size());
        m_plot->plotLayout()->setRowStretchFactor(static_cast<int>(row),
                                                  row == 0 && lanes.size() > 1 ? 2.6 : 1.0);
    }
    setLeastHeight();
    showSpan(whole ? TimeSpan{0, m_duration_s} : m_span);
    showCursor(m_cursor_s);
}

void LanePlot::fillLane(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette) {
    m_rects.push_back(&rect);
    const bool states = lane.sort == ChartLane::Sort::States;
    const int rows = states ? static_cast<int>(lane.traces.size()) : 0;
    rect.setMinimumSize(40, std::max(kLaneHeight, rows * kRowHeight));
    rect.setMarginGroup(QCP::msLeft | QCP::msRight, m_margins);
    rect.setMinimumMargins(QMargins(4, states ? 4 : QFontMetrics(smallFont()).height() + 1, 8, 2));
    for (QCPAxis* axis : rect.axes()) {
        axis->setLayer(QStringLiteral("axes"));
        axis->grid()->setLayer(QStringLiteral("grid"));
        axis->setTickLabelFont(smallFont());
        axis->setLabelFont(smallFont());
        colourAxis(*axis, palette);
    }
    if (states) {
        fillStates(rect, lane, palette);
    } else {
        fillQuantities(rect, lane, palette);
        addLevels(rect, lane, palette);
        addTitle(rect, lane, palette);
    }
    m_markLines.push_back(newTimeLine(rect, QPen(palette.cursor, 1.5, Qt::DashLine)));
    m_cursorLines.push_back(newTimeLine(rect, QPen(palette.cursor, 1.5)));
}

void LanePlot::fillQuantities(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette) {
    const DisplayUnit unit = unitOf(lane, m_units.vacuum);
    QCPAxis* left = rect.axis(QCPAxis::atLeft);
    const auto pens = lanePens(lane, palette);
    for (std::size_t i = 0; i < lane.traces.size(); ++i) {
        const Channel& channel = *lane.traces[i].channel;
        QCPGraph* graph = m_plot->addGraph(rect.axis(QCPAxis::atBottom), left);
        graph->setPen(pens[i]);
        graph->setName(lane.traces[i].name);
        graph->setLineStyle(channel.probe.stepped ? QCPGraph::lsStepLeft : QCPGraph::lsLine);
        if (lane.traces[i].role == TraceRole::Measured) { // as points: nothing is known between them
            graph->setLineStyle(QCPGraph::lsNone);
            graph->setScatterStyle(QCPScatterStyle(QCPScatterStyle::ssCross, kReadingSize));
        }
        graph->setData(graphData(channel, unit, 1, 0));
    }
    left->setRange(valueRange(lane, unit));
    left->ticker()->setTickStepStrategy(QCPAxisTicker::tssMeetTickCount);
    if (lane.kind != QuantityKind::GaugeVacuum) {
        return;
    }
    const DisplayUnit second = unitOf(lane, m_units.secondVacuum);
    QCPAxis* right = rect.axis(QCPAxis::atRight);
    const double ratio = unit.factor / second.factor;
    right->setVisible(true);
    right->grid()->setVisible(false);
    right->ticker()->setTickStepStrategy(QCPAxisTicker::tssMeetTickCount);
    right->setRange(left->range().lower * ratio, left->range().upper * ratio);
}

void LanePlot::fillStates(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette) {
    const auto names = QSharedPointer<QCPAxisTickerText>::create();
    const auto pens = lanePens(lane, palette);
    const auto rows = static_cast<int>(lane.traces.size());
    QCPAxis* left = rect.axis(QCPAxis::atLeft);
    for (int row = 0; row < rows; ++row) {
        const ChartTrace& trace = lane.traces[static_cast<std::size_t>(row)];
        const double floor = rows - 1 - row;
        QCPGraph* graph = m_plot->addGraph(rect.axis(QCPAxis::atBottom), left);
        graph->setPen(pens[static_cast<std::size_t>(row)]);
        graph->setName(trace.name);
        graph->setLineStyle(QCPGraph::lsStepLeft);
        graph->setData(graphData(*trace.channel, {"", 1, 0}, kStateHeight, floor));
        names->addTick(floor + kStateHeight / 2, trace.name);
    }
    left->setTicker(names);
    left->setTickLength(0, 0);
    left->grid()->setVisible(false);
    left->setRange(-0.2, rows - 1 + kStateHeight + 0.2);
}

void LanePlot::addLevels(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette) {
    const DisplayUnit unit = unitOf(lane, m_units.vacuum);
    for (std::size_t i = 0; i < lane.levels.size(); ++i) {
        const double value = inUnit(lane.levels[i].si, unit);
        auto* line = new QCPItemStraightLine(m_plot);
        line->setClipAxisRect(&rect);
        for (QCPItemPosition* position : {line->point1, line->point2}) {
            position->setAxisRect(&rect);
            position->setTypeX(QCPItemPosition::ptAxisRectRatio);
            position->setTypeY(QCPItemPosition::ptPlotCoords);
            position->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
        }
        line->point1->setCoords(0, value);
        line->point2->setCoords(1, value);
        line->setPen(levelPen(palette));

        auto* label = new QCPItemText(m_plot);
        label->setClipAxisRect(&rect);
        label->position->setAxisRect(&rect);
        label->position->setTypeX(QCPItemPosition::ptAxisRectRatio);
        label->position->setTypeY(QCPItemPosition::ptPlotCoords);
        label->position->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
        label->position->setCoords(0.995, value);
        // Closing stands below its line, opening above: the two lines are often close together.
        label->setPositionAlignment(Qt::AlignRight | (i % 2 == 0 ? Qt::AlignTop : Qt::AlignBottom));
        label->setText(lane.levels[i].name);
        label->setColor(palette.level);
        label->setFont(smallFont());
        m_levelLabels.push_back({&rect, label});
    }
}

void LanePlot::addTitle(QCPAxisRect& rect, const ChartLane& lane, const ChartPalette& palette) {
    QString units = shown(unitOf(lane, m_units.vacuum).symbol);
    if (lane.kind == QuantityKind::GaugeVacuum) {
        units = tr("%1, right: %2").arg(units, shown(m_units.secondVacuum));
    }
    auto* title = new QCPItemText(m_plot);
    title->setClipToAxisRect(false);
    title->position->setAxisRect(&rect);
    title->position->setType(QCPItemPosition::ptAxisRectRatio);
    title->position->setCoords(0, 0);
    title->setPositionAlignment(Qt::AlignLeft | Qt::AlignBottom);
    title->setText(QStringLiteral("%1 / %2").arg(lane.title, units));
    title->setColor(palette.text);
    title->setFont(smallFont());
}

QCPItemStraightLine* LanePlot::newTimeLine(QCPAxisRect& rect, const QPen& pen) {
    auto* line = new QCPItemStraightLine(m_plot);
    line->setLayer(kCursorLayer);
    line->setClipAxisRect(&rect);
    for (QCPItemPosition* position : {line->point1, line->point2}) {
        position->setAxisRect(&rect);
        position->setTypeX(QCPItemPosition::ptPlotCoords);
        position->setTypeY(QCPItemPosition::ptAxisRectRatio);
        position->setAxes(rect.axis(QCPAxis::atBottom), rect.axis(QCPAxis::atLeft));
    }
    line->setPen(pen);
    return line;
}

void LanePlot::placeTimeLines() {
    const auto place = [](const std::vector<QCPItemStraightLine*>& lines, double time_s) {
        for (QCPItemStraightLine* line : lines) {
            line->point1->setCoords(time_s, 0);
            line->point2->setCoords(time_s, 1);
        }
    };
    place(m_cursorLines, m_cursor_s);
    place(m_markLines, m_mark_s.value_or(0));
    for (QCPItemStraightLine* line : m_markLines) {
        line->setVisible(m_mark_s.has_value());
    }
    if (hasLanes()) {
        m_plot->layer(kCursorLayer)->replot();
    }
}

void LanePlot::showCursor(double time_s) {
    m_cursor_s = time_s;
    placeTimeLines();
}

void LanePlot::showMark(std::optional<double> time_s) {
    m_mark_s = time_s;
    placeTimeLines();
}

void LanePlot::giveSpanToLanes() {
    for (QCPAxisRect* rect : m_rects) {
        rect->axis(QCPAxis::atBottom)->setRange(m_span.from_s, m_span.to_s);
    }
    if (hasLanes()) {
        m_plot->replot(QCustomPlot::rpQueuedReplot);
    }
    Q_EMIT spanChanged();
}

void LanePlot::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 2 * kFocusWidth));
        painter.drawRect(rect());
    }
}

} // namespace pumpwright

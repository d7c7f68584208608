#include "app/desktop/chart/drive_chart.h"

#include "app/desktop/chart/chart_palette.h"
#include "app/desktop/chart/lane_plot.h"
#include "app/desktop/chart/readout_model.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/panels/table_names.h"
#include "app/desktop/preferences.h"

#include <QAction>
#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTableView>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kZoomStep = 2;

QLabel* newLabel(QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

QString laneTitle(ChartLane::Sort sort) {
    switch (sort) {
    case ChartLane::Sort::Vacuum:
        return DriveChart::tr("Vacuum");
    case ChartLane::Sort::Assist:
        return DriveChart::tr("Assist");
    case ChartLane::Sort::Current:
        return DriveChart::tr("Current");
    case ChartLane::Sort::Voltage:
        return DriveChart::tr("Voltage");
    case ChartLane::Sort::States:
        return DriveChart::tr("Contacts");
    }
    return {};
}

} // namespace

DriveChart::DriveChart(Document& document, Analysis& analysis, const Preferences& preferences,
                       QWidget* parent)
    : QWidget(parent), m_document(document), m_analysis(analysis), m_preferences(preferences),
      m_lanes(new LanePlot(this)), m_readout(new ReadoutModel(this)), m_readoutView(new QTableView(this)),
      m_pages(new QStackedWidget(this)), m_empty(newLabel(this)), m_message(newLabel(this)),
      m_time(newLabel(this)) {
    build();
    connect(&analysis, &Analysis::driveChanged, this, &DriveChart::reload);
    connect(&analysis, &Analysis::cursorMoved, this, &DriveChart::moveCursor);
    connect(&analysis, &Analysis::runningChanged, this, &DriveChart::showMessage);
    connect(&preferences, &Preferences::changed, this, &DriveChart::reload);
    connect(m_lanes, &LanePlot::cursorRequested, &m_analysis, &Analysis::setCursor);
    reload();
}

void DriveChart::build() {
    m_readoutView->setModel(m_readout);
    m_readoutView->setAccessibleName(tr("Values at the cursor"));
    m_readoutView->verticalHeader()->hide();
    m_readoutView->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6);
    m_readoutView->horizontalHeader()->setSectionResizeMode(ReadoutModel::Name, QHeaderView::Stretch);
    m_readoutView->horizontalHeader()->setSectionResizeMode(ReadoutModel::Value, QHeaderView::Fixed);
    m_readoutView->installEventFilter(this);
    m_readoutView->horizontalHeader()->setMinimumSectionSize(40);
    m_readoutView->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_readoutView->horizontalHeader()->setHighlightSections(false);
    m_readoutView->setSelectionMode(QAbstractItemView::SingleSelection);
    m_readoutView->setTabKeyNavigation(false);
    m_readoutView->setShowGrid(false);
    m_readoutView->setWordWrap(false);
    m_readoutView->setIconSize({22, 12});
    m_readoutView->setCornerButtonEnabled(false);
    nameHeaders(*m_readoutView);

    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setAccessibleName(tr("Lines and values"));
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(m_lanes);
    splitter->addWidget(scroll);
    splitter->addWidget(m_readoutView);
    splitter->setStretchFactor(0, 2);
    splitter->setStretchFactor(1, 1);
    splitter->setSizes({620, 380});
    splitter->setCollapsible(0, false);

    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setContentsMargins(16, 8, 16, 8);
    m_pages->addWidget(m_empty);
    m_pages->addWidget(splitter);
    m_message->setContentsMargins(8, 2, 8, 2);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(buildHead());
    column->addWidget(m_message);
    column->addWidget(m_pages, 1);
}

QAction* DriveChart::addTo(QToolBar& bar, const QString& text, const QString& tip,
                           std::function<void()> act) {
    QAction* action = bar.addAction(text);
    action->setToolTip(tip);
    connect(action, &QAction::triggered, this, std::move(act));
    return action;
}

QWidget* DriveChart::buildHead() {
    // A tool bar, because it puts what finds no room into a menu of its own.
    auto* head = new QToolBar(tr("Drive chart tools"), this);
    head->setAccessibleName(head->windowTitle());
    head->setToolButtonStyle(Qt::ToolButtonTextOnly);
    addTo(*head, tr("◂ Event"), tr("Cursor to the event before"), [this] { goToEventBefore(); });
    addTo(*head, tr("Event ▸"), tr("Cursor to the next event"), [this] { goToNextEvent(); });
    head->addSeparator();
    addTo(*head, tr("Closer"), tr("Show less time (+)"), [this] { m_lanes->zoom(kZoomStep); });
    addTo(*head, tr("Wider"), tr("Show more time (−)"), [this] { m_lanes->zoom(1 / kZoomStep); });
    addTo(*head, tr("Whole drive"), tr("Show the whole drive (0)"), [this] { m_lanes->showWholeDrive(); });
    head->addSeparator();
    head->addWidget(newLaneButton());
    m_time->setWordWrap(false);
    m_time->setContentsMargins(8, 0, 8, 0);
    head->addWidget(m_time);
    return head;
}

QToolButton* DriveChart::newLaneButton() {
    auto* lanes = new QToolButton(this);
    lanes->setText(tr("Lanes"));
    lanes->setToolTip(tr("Choose the lanes that are shown"));
    auto* menu = new QMenu(lanes);
    for (const ChartLane::Sort sort :
         {ChartLane::Sort::Vacuum, ChartLane::Sort::Assist, ChartLane::Sort::Current,
          ChartLane::Sort::Voltage, ChartLane::Sort::States}) {
        QAction* action = menu->addAction(laneTitle(sort));
        action->setCheckable(true);
        action->setChecked(showsLane(sort));
        connect(action, &QAction::toggled, this, [this, sort](bool show) { showLane(sort, show); });
    }
    lanes->setMenu(menu);
    lanes->setPopupMode(QToolButton::InstantPopup);
    return lanes;
}

bool DriveChart::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_readoutView && event->type() == QEvent::Resize) {
        fitReadout();
    }
    return QWidget::eventFilter(watched, event);
}

/// Names come before the second unit of a vacuum.
void DriveChart::fitReadout() {
    const QFontMetrics metrics = fontMetrics();
    const int both = metrics.horizontalAdvance(QStringLiteral(" 88.88 kPa (88.88 inHg) "));
    const int one = metrics.horizontalAdvance(QStringLiteral(" 88.88 inHg "));
    const int names = metrics.horizontalAdvance(m_readout->longestName()) + 40;
    const bool room = m_readoutView->viewport()->width() >= names + both;
    m_readout->setBothUnits(room);
    m_readoutView->horizontalHeader()->resizeSection(ReadoutModel::Value, room ? both : one);
}

void DriveChart::reload() {
    m_drive = m_analysis.drive();
    std::vector<ChartLane> lanes;
    if (m_drive) {
        lanes = chartLanes(m_document.circuit(), m_drive->recording);
        std::erase_if(lanes, [this](const ChartLane& lane) { return !showsLane(lane.sort); });
    }
    m_readout->setLanes(lanes, ChartPalette(palette()));
    m_readout->setUnits(m_preferences.vacuumUnits());
    fitReadout();
    m_pages->setCurrentIndex(lanes.empty() ? 0 : 1);
    m_lanes->showLanes(lanes, m_drive ? m_drive->recording.duration_s : 1, m_preferences.vacuumUnits());
    moveCursor(m_analysis.cursor_s());
    showMessage();
}

void DriveChart::moveCursor(double time_s) {
    m_lanes->showCursor(time_s);
    m_readout->setTime(time_s);
    m_time->setText(tr("Cursor at %1").arg(shown(formatQuantity(time_s, QuantityKind::Time))));
    m_lanes->setAccessibleDescription(m_time->text() + QStringLiteral(": ") + m_readout->summary());
}

void DriveChart::showMessage() {
    const bool stopped = m_drive && m_drive->status == DriveStatus::Stopped;
    m_message->setText(stopped ? tr("The simulation stopped early. %1").arg(shown(m_drive->message))
                               : QString());
    m_message->setVisible(stopped);
    m_empty->setText(m_analysis.isRunning() && !m_drive
                         ? tr("Simulating the drive…")
                         : tr("The drive shows here once the circuit holds a supply, a pump and a booster."));
}

void DriveChart::showLane(ChartLane::Sort sort, bool show) {
    if (show) {
        m_hidden.erase(sort);
    } else {
        m_hidden.insert(sort);
    }
    reload();
}

void DriveChart::goToNextEvent() {
    if (!m_drive) {
        return;
    }
    const auto& events = m_drive->recording.events;
    const auto next =
        std::upper_bound(events.begin(), events.end(), m_analysis.cursor_s(),
                         [](double time_s, const DriveEvent& one) { return time_s < one.time_s; });
    if (next != events.end()) {
        m_analysis.setCursor(next->time_s);
    }
}

void DriveChart::goToEventBefore() {
    if (!m_drive) {
        return;
    }
    const auto& events = m_drive->recording.events;
    const auto next =
        std::lower_bound(events.begin(), events.end(), m_analysis.cursor_s(),
                         [](const DriveEvent& one, double time_s) { return one.time_s < time_s; });
    if (next != events.begin()) {
        m_analysis.setCursor(std::prev(next)->time_s);
    }
}

void DriveChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        reload();
    }
}

} // namespace pumpwright

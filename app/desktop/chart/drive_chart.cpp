#include "app/desktop/chart/drive_chart.h"

#include "app/desktop/chart/chart_palette.h"
#include "app/desktop/chart/drive_actions.h"
#include "app/desktop/chart/event_model.h"
#include "app/desktop/chart/lane_plot.h"
#include "app/desktop/chart/readout_model.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"
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
#include <QTabWidget>
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

/// A table to read from: no grid, no row heads, no corner.
void plainTable(QTableView& view) {
    view.verticalHeader()->hide();
    view.verticalHeader()->setDefaultSectionSize(view.fontMetrics().height() + 6);
    view.horizontalHeader()->setHighlightSections(false);
    view.setSelectionMode(QAbstractItemView::SingleSelection);
    view.setEditTriggers(QAbstractItemView::NoEditTriggers);
    view.setTabKeyNavigation(false);
    view.setShowGrid(false);
    view.setWordWrap(false);
    view.setCornerButtonEnabled(false);
    nameHeaders(view);
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
    case ChartLane::Sort::Picked:
        return DriveChart::tr("Current of the selection");
    case ChartLane::Sort::States:
        return DriveChart::tr("Contacts");
    }
    return {};
}

} // namespace

DriveChart::DriveChart(Document& document, Selection& selection, Analysis& analysis,
                       const Preferences& preferences, QWidget* parent)
    : QWidget(parent), m_document(document), m_analysis(analysis), m_selection(selection),
      m_preferences(preferences), m_playback(analysis, preferences),
      m_actions(new DriveActions(m_playback, *this)), m_lanes(new LanePlot(this)),
      m_readout(new ReadoutModel(this)), m_readoutView(new QTableView(this)), m_events(new EventModel(this)),
      m_eventsView(new QTableView(this)), m_pages(new QStackedWidget(this)), m_empty(newLabel(this)),
      m_message(newLabel(this)), m_time(newLabel(this)) {
    build();
    connect(&analysis, &Analysis::driveChanged, this, &DriveChart::reload);
    connect(&analysis, &Analysis::cursorMoved, this, &DriveChart::moveCursor);
    connect(&analysis, &Analysis::runningChanged, this, &DriveChart::showMessage);
    connect(&preferences, &Preferences::changed, this, &DriveChart::reload);
    connect(&selection, &Selection::changed, this, &DriveChart::reload);
    connect(m_lanes, &LanePlot::cursorRequested, &analysis, &Analysis::setCursor);
    reload();
}

void DriveChart::build() {
    buildReadout();
    auto* tabs = new QTabWidget(this);
    tabs->setDocumentMode(true);
    tabs->setAccessibleName(tr("Values and events"));
    tabs->addTab(m_readoutView, tr("Values"));
    tabs->addTab(buildEvents(), tr("Events"));

    auto* splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setAccessibleName(tr("Lines and values"));
    splitter->addWidget(buildLanes());
    splitter->addWidget(tabs);
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

QWidget* DriveChart::buildLanes() {
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(m_lanes);
    return scroll;
}

void DriveChart::buildReadout() {
    m_readoutView->setModel(m_readout);
    m_readoutView->setAccessibleName(tr("Values at the cursor"));
    plainTable(*m_readoutView);
    QHeaderView& columns = *m_readoutView->horizontalHeader();
    columns.setSectionResizeMode(ReadoutModel::Name, QHeaderView::Stretch);
    columns.setSectionResizeMode(ReadoutModel::Value, QHeaderView::Fixed);
    columns.setSectionResizeMode(ReadoutModel::Difference, QHeaderView::Fixed);
    columns.setMinimumSectionSize(40);
    m_readoutView->hideColumn(ReadoutModel::Difference);
    m_readoutView->installEventFilter(this);
    m_readoutView->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_readoutView->setIconSize({22, 12});
}

QWidget* DriveChart::buildEvents() {
    m_eventsView->setModel(m_events);
    m_eventsView->setAccessibleName(tr("Events of the drive"));
    plainTable(*m_eventsView);
    m_eventsView->setSelectionBehavior(QAbstractItemView::SelectRows);
    QHeaderView& columns = *m_eventsView->horizontalHeader();
    columns.resizeSection(EventModel::Time, fontMetrics().horizontalAdvance(QStringLiteral(" 888.88 ms ")));
    columns.resizeSection(EventModel::Part, fontMetrics().horizontalAdvance(QStringLiteral(" W888 ")));
    columns.setStretchLastSection(true);
    connect(m_eventsView->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& row) {
                if (row.isValid() && m_eventsView->hasFocus()) {
                    m_analysis.setCursor(m_events->timeAt_s(row.row()));
                }
            });
    return m_eventsView;
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
    m_time->setWordWrap(false);
    m_time->setContentsMargins(8, 0, 8, 0);
    m_actions->fillToolBar(*head, *m_time);
    head->addSeparator();
    addTo(*head, tr("Whole drive"), tr("Show the whole drive (0)"), [this] { m_lanes->showWholeDrive(); });
    head->addWidget(newLaneButton());
    addTo(*head, tr("Closer"), tr("Show less time (+)"), [this] { m_lanes->zoom(kZoomStep); });
    addTo(*head, tr("Wider"), tr("Show more time (−)"), [this] { m_lanes->zoom(1 / kZoomStep); });
    return head;
}

QToolButton* DriveChart::newLaneButton() {
    auto* lanes = new QToolButton(this);
    lanes->setText(tr("Lanes"));
    lanes->setToolTip(tr("Choose the lanes that are shown"));
    auto* menu = new QMenu(lanes);
    for (const ChartLane::Sort sort :
         {ChartLane::Sort::Vacuum, ChartLane::Sort::Assist, ChartLane::Sort::Current, ChartLane::Sort::Picked,
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
    const int change = m_mark_s ? metrics.horizontalAdvance(QStringLiteral(" +88.88 inHg  ")) + 8 : 0;
    const bool room = m_readoutView->viewport()->width() >= names + both + change;
    m_readout->setBothUnits(room);
    m_readoutView->horizontalHeader()->resizeSection(ReadoutModel::Value, room ? both : one);
    m_readoutView->horizontalHeader()->resizeSection(ReadoutModel::Difference, change);
}

void DriveChart::reload() {
    m_drive = m_analysis.drive();
    std::vector<ChartLane> lanes;
    if (m_drive) {
        const SelectedObjects& picked = m_selection.objects();
        lanes = chartLanes(m_document.circuit(), m_drive->recording, {picked.parts, picked.wires});
        layOver(lanes, m_trials);
        layOver(lanes, m_log);
        m_events->setEvents(m_document.circuit(), m_drive->recording.events);
        std::erase_if(lanes, [this](const ChartLane& lane) { return !showsLane(lane.sort); });
    }
    m_readout->setLanes(lanes, ChartPalette(palette()));
    m_readout->setUnits(m_preferences.units());
    fitReadout();
    m_pages->setCurrentIndex(lanes.empty() ? 0 : 1);
    m_lanes->showLanes(lanes, m_drive ? m_drive->recording.duration_s : 1, m_preferences.units());
    moveCursor(m_analysis.cursor_s());
    showMessage();
}

void DriveChart::moveCursor(double time_s) {
    keepCursorInView(time_s);
    m_lanes->showCursor(time_s);
    m_readout->setTime(time_s);
    showEventAt(time_s);
    const QString at = tr("Cursor at %1").arg(shown(formatQuantity(time_s, QuantityKind::Time)));
    m_time->setText(m_mark_s ? tr("%1, %2 from the mark")
                                   .arg(at, shown(formatQuantity(time_s - *m_mark_s, QuantityKind::Time)))
                             : at);
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

void DriveChart::showLog(const BenchLog& log) {
    m_log = overlayOf(log);
    reload();
}

void DriveChart::showTrials(const std::vector<OverlayTrace>& traces) {
    m_trials = traces;
    reload();
}

void DriveChart::setMark() {
    if (m_drive) {
        showMark(m_analysis.cursor_s());
    }
}

void DriveChart::removeMark() {
    showMark(std::nullopt);
}

void DriveChart::showMark(std::optional<double> time_s) {
    m_mark_s = time_s;
    m_lanes->showMark(time_s);
    m_readout->setMark(time_s);
    m_readoutView->setColumnHidden(ReadoutModel::Difference, !time_s);
    fitReadout();
    moveCursor(m_analysis.cursor_s());
}

void DriveChart::fillMenu(QMenu& menu) {
    m_actions->fillMenu(menu);
}

/// The list follows the cursor, except while it leads.
void DriveChart::showEventAt(double time_s) {
    const int row = m_events->rowAt(time_s);
    if (m_eventsView->hasFocus() || row == m_eventsView->currentIndex().row()) {
        return;
    }
    if (row < 0) {
        m_eventsView->clearSelection();
        m_eventsView->setCurrentIndex({});
    } else {
        m_eventsView->selectRow(row);
    }
}

void DriveChart::keepCursorInView(double time_s) {
    const TimeSpan span = m_lanes->visibleSpan();
    if (m_playback.isPlaying() && (time_s < span.from_s || time_s > span.to_s)) {
        m_lanes->showSpan({time_s, time_s + span.to_s - span.from_s});
    }
}

void DriveChart::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        reload();
    }
}

} // namespace pumpwright

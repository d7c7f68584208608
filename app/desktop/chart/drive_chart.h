#pragma once

#include "app/desktop/chart/chart_lanes.h"
#include "app/desktop/document/playback.h"
#include "core/simulate/drive.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <optional>
#include <set>

class QLabel;
class QMenu;
class QSplitter;
class QTabWidget;
class QTableView;
class QAction;
class QToolBar;
class QToolButton;
class QStackedWidget;

namespace pumpwright {

class Analysis;
class Document;
class DriveActions;
class EventModel;
class LanePlot;
class Preferences;
class ReadoutModel;
class Selection;

/// The simulated traces of the latest drive, with the read-out of every line at the cursor and the list of
/// events. The cursor is the analysis's: moving it here moves it on the canvas. What is selected there shows
/// its current here.
class DriveChart final : public QWidget {
    Q_OBJECT

public:
    DriveChart(Document& document, Selection& selection, Analysis& analysis, const Preferences& preferences,
               QWidget* parent = nullptr);

    LanePlot& lanes() { return *m_lanes; }
    const ReadoutModel& readout() const { return *m_readout; }
    void showLane(ChartLane::Sort sort, bool show);
    bool showsLane(ChartLane::Sort sort) const { return m_hidden.count(sort) == 0; }
    Playback& playback() { return m_playback; }
    /// A second line at the cursor, from which differences are read until it is removed.
    void setMark();
    void removeMark();
    std::optional<double> mark_s() const { return m_mark_s; }
    void fillMenu(QMenu& menu);
    /// Lays measured traces over the drive's, in place of those before; none of an empty log.
    void showLog(const BenchLog& log);
    /// Likewise those of trials.
    void showTrials(const std::vector<OverlayTrace>& traces);

protected:
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void buildReadout();
    QWidget* buildEvents();
    QWidget* buildLanes();
    QWidget* buildHead();
    QAction* addTo(QToolBar& bar, const QString& text, const QString& tip, std::function<void()> act);
    QToolButton* newLaneButton();
    void fitReadout();
    void reload();
    void moveCursor(double time_s);
    void keepCursorInView(double time_s);
    void showMark(std::optional<double> time_s);
    void showEventAt(double time_s);
    void showMessage();

    Document& m_document;
    Analysis& m_analysis;
    Selection& m_selection;
    const Preferences& m_preferences;
    Playback m_playback;
    DriveActions* m_actions;
    std::shared_ptr<const DriveResult> m_drive; ///< what the lanes point into
    std::set<ChartLane::Sort> m_hidden{ChartLane::Sort::Voltage};
    std::vector<OverlayTrace> m_log;
    std::vector<OverlayTrace> m_trials;
    LanePlot* m_lanes;
    ReadoutModel* m_readout;
    QTableView* m_readoutView;
    EventModel* m_events;
    QTableView* m_eventsView;
    std::optional<double> m_mark_s;
    QStackedWidget* m_pages;
    QLabel* m_empty;
    QLabel* m_message;
    QLabel* m_time;
};

} // namespace pumpwright

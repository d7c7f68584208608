#pragma once

#include "app/desktop/chart/chart_lanes.h"
#include "core/simulate/drive.h"

#include <QWidget>

#include <functional>
#include <memory>
#include <set>

class QLabel;
class QTableView;
class QAction;
class QToolBar;
class QToolButton;
class QStackedWidget;

namespace pumpwright {

class Analysis;
class Document;
class LanePlot;
class Preferences;
class ReadoutModel;

/// The simulated traces of the latest drive, with the read-out of every line at the cursor. The cursor is the
/// analysis's: moving it here moves it on the canvas.
class DriveChart final : public QWidget {
    Q_OBJECT

public:
    DriveChart(Document& document, Analysis& analysis, const Preferences& preferences,
               QWidget* parent = nullptr);

    LanePlot& lanes() { return *m_lanes; }
    const ReadoutModel& readout() const { return *m_readout; }
    void showLane(ChartLane::Sort sort, bool show);
    bool showsLane(ChartLane::Sort sort) const { return m_hidden.count(sort) == 0; }
    /// Moves the cursor to the event after or before it.
    void goToNextEvent();
    void goToEventBefore();

protected:
    void changeEvent(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* buildHead();
    QAction* addTo(QToolBar& bar, const QString& text, const QString& tip, std::function<void()> act);
    QToolButton* newLaneButton();
    void fitReadout();
    void reload();
    void moveCursor(double time_s);
    void showMessage();

    Document& m_document;
    Analysis& m_analysis;
    const Preferences& m_preferences;
    std::shared_ptr<const DriveResult> m_drive; ///< what the lanes point into
    std::set<ChartLane::Sort> m_hidden{ChartLane::Sort::Voltage};
    LanePlot* m_lanes;
    ReadoutModel* m_readout;
    QTableView* m_readoutView;
    QStackedWidget* m_pages;
    QLabel* m_empty;
    QLabel* m_message;
    QLabel* m_time;
};

} // namespace pumpwright

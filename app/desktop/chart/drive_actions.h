#pragma once

#include <QObject>

class QAction;
class QComboBox;
class QMenu;
class QToolBar;

namespace pumpwright {

class DriveChart;
class Playback;

/// Playing the drive and going through its events, for the chart's tool bar and the window's menu alike.
class DriveActions final : public QObject {
    Q_OBJECT

public:
    DriveActions(Playback& playback, DriveChart& chart);

    void fillMenu(QMenu& menu);
    /// With the time at the cursor beside what moves it.
    void fillToolBar(QToolBar& bar, QWidget& time);

private:
    QAction* newAction(const QString& text, const QString& iconText, const QKeySequence& keys,
                       const QString& tip);
    QComboBox* newRateChooser(QWidget* parent);
    void showPlaying(bool playing);

    Playback& m_playback;
    DriveChart& m_chart;
    QAction* m_play;
    QAction* m_before;
    QAction* m_next;
    QAction* m_slow;
    QAction* m_mark;
    QAction* m_dropMark;
};

} // namespace pumpwright

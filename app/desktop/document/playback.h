#pragma once

#include "app/desktop/document/play_pace.h"

#include <QElapsedTimer>
#include <QObject>
#include <QTimer>

namespace pumpwright {

class Analysis;
class Preferences;

/// Runs the cursor of the analysis over the latest drive. Where the user wants less motion it goes from event
/// to event instead and rests at each.
class Playback final : public QObject {
    Q_OBJECT

public:
    Playback(Analysis& analysis, const Preferences& preferences, QObject* parent = nullptr);

    bool isPlaying() const { return m_timer.isActive(); }
    double rate() const { return m_rate; }
    bool slowsAtEvents() const { return m_slowsAtEvents; }

    /// Seconds of the drive in a second on the screen.
    void setRate(double rate);
    void setSlowsAtEvents(bool slows);
    /// From the cursor on, or from the start where the cursor stands at the end. Does nothing without a
    /// drive.
    void play();
    void pause();
    /// The cursor to the event after or before it.
    void goToNextEvent();
    void goToEventBefore();

Q_SIGNALS:
    void playingChanged(bool playing);

private:
    void readDrive();
    void readPace();
    void begin();
    void tick();
    void showFrame(double elapsed_s);

    Analysis& m_analysis;
    const Preferences& m_preferences;
    std::vector<DriveEvent> m_events;
    double m_duration_s = 0;
    double m_rate = 10;
    bool m_slowsAtEvents = true;
    PlayPace m_pace;
    QTimer m_timer;
    QElapsedTimer m_sinceFrame;
};

} // namespace pumpwright

#include "app/desktop/document/playback.h"

#include "app/desktop/document/analysis.h"
#include "app/desktop/preferences.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr int kFrame_ms = 16;
constexpr int kRestAtEvent_ms = 2000;
/// A frame that took longer, because the machine was busy, does not make the cursor jump.
constexpr double kLongestFrame_s = 0.1;

} // namespace

Playback::Playback(Analysis& analysis, const Preferences& preferences, QObject* parent)
    : QObject(parent), m_analysis(analysis), m_preferences(preferences) {
    m_timer.setTimerType(Qt::PreciseTimer);
    connect(&m_timer, &QTimer::timeout, this, &Playback::tick);
    connect(&analysis, &Analysis::driveChanged, this, &Playback::readDrive);
    connect(&preferences, &Preferences::changed, this, [this] {
        if (isPlaying()) {
            begin();
        }
    });
    readDrive();
}

void Playback::readDrive() {
    const auto drive = m_analysis.drive();
    m_events = drive ? drive->recording.events : std::vector<DriveEvent>();
    m_duration_s = drive ? drive->recording.duration_s : 0;
    readPace();
}

void Playback::readPace() {
    m_pace = PlayPace(m_rate, m_events, m_slowsAtEvents);
}

void Playback::setRate(double rate) {
    m_rate = rate;
    readPace();
}

void Playback::setSlowsAtEvents(bool slows) {
    m_slowsAtEvents = slows;
    readPace();
}

void Playback::play() {
    if (m_duration_s <= 0 || isPlaying()) {
        return;
    }
    if (m_analysis.cursor_s() >= m_duration_s) {
        m_analysis.setCursor(0);
    }
    begin();
    Q_EMIT playingChanged(true);
}

void Playback::begin() {
    m_sinceFrame.start();
    m_timer.start(m_preferences.lessMotion() ? kRestAtEvent_ms : kFrame_ms);
}

void Playback::pause() {
    if (isPlaying()) {
        m_timer.stop();
        m_analysis.setCursor(m_analysis.cursor_s()); // what stands still chatters no more
        Q_EMIT playingChanged(false);
    }
}

void Playback::tick() {
    if (m_preferences.lessMotion()) {
        const double before_s = m_analysis.cursor_s();
        goToNextEvent();
        if (m_analysis.cursor_s() == before_s) {
            pause();
        }
        return;
    }
    const double elapsed_s = static_cast<double>(m_sinceFrame.restart()) / 1000;
    showFrame(std::min(elapsed_s, kLongestFrame_s));
}

void Playback::showFrame(double elapsed_s) {
    const double time_s = std::min(m_pace.cursorAfter(m_analysis.cursor_s(), elapsed_s), m_duration_s);
    m_analysis.playCursorTo(time_s, m_pace.at(time_s));
    if (time_s >= m_duration_s) {
        pause();
    }
}

void Playback::goToNextEvent() {
    const auto next =
        std::upper_bound(m_events.begin(), m_events.end(), m_analysis.cursor_s(),
                         [](double time_s, const DriveEvent& one) { return time_s < one.time_s; });
    if (next != m_events.end()) {
        m_analysis.setCursor(next->time_s);
    }
}

void Playback::goToEventBefore() {
    const auto next =
        std::lower_bound(m_events.begin(), m_events.end(), m_analysis.cursor_s(),
                         [](const DriveEvent& one, double time_s) { return one.time_s < time_s; });
    if (next != m_events.begin()) {
        m_analysis.setCursor(std::prev(next)->time_s);
    }
}

} // namespace pumpwright

#include "app/desktop/document/play_pace.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [s of the drive per s on the screen] A relay that pulls in within 10 ms takes some seconds to watch.
constexpr double kSlowest = 0.004;
/// [s on the screen] over which the distance to an event falls to a third.
constexpr double kApproach_s = 0.4;
/// [s of the drive] without an event, after which events are slowed for again.
constexpr double kQuiet_s = 1;
constexpr int kSlowedInCrowd = 6;
/// [s on the screen] in which the pace is taken as constant: short against kApproach_s.
constexpr double kLongestStride_s = 0.004;

} // namespace

PlayPace::PlayPace(double rate, const std::vector<DriveEvent>& events, bool slowsAtEvents) : m_rate(rate) {
    int crowd = 0;
    double before_s = -kQuiet_s;
    for (const DriveEvent& event : events) {
        crowd = event.time_s - before_s < kQuiet_s ? crowd + 1 : 1;
        before_s = event.time_s;
        const bool isStart = event.time_s <= 0; // how things stand, nothing that happens
        if (slowsAtEvents && crowd <= kSlowedInCrowd && !isStart) {
            m_slowAt_s.push_back(event.time_s);
        }
    }
}

double PlayPace::at(double time_s) const {
    const auto next = std::lower_bound(m_slowAt_s.begin(), m_slowAt_s.end(), time_s);
    double pace = m_rate;
    const auto slowNear = [&](double event_s) {
        pace = std::min(pace, std::max(kSlowest, std::abs(event_s - time_s) / kApproach_s));
    };
    if (next != m_slowAt_s.end()) {
        slowNear(*next);
    }
    if (next != m_slowAt_s.begin()) {
        slowNear(*std::prev(next));
    }
    return pace;
}

double PlayPace::cursorAfter(double time_s, double elapsed_s) const {
    const auto strides = static_cast<int>(std::ceil(elapsed_s / kLongestStride_s));
    for (int i = 0; i < strides; ++i) {
        time_s += at(time_s) * elapsed_s / strides;
    }
    return time_s;
}

} // namespace pumpwright

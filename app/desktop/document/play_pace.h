#pragma once

#include "core/simulate/recording.h"

#include <vector>

namespace pumpwright {

/// How fast the cursor runs over a drive that is played: as fast as asked for, and slowly past events, so
/// that an armature can be seen to travel. Of events that crowd together, as in chatter, only the first slow
/// it.
class PlayPace {
public:
    PlayPace() = default;
    /// `rate`: seconds of the drive in a second on the screen, above zero. Events in order of time.
    PlayPace(double rate, const std::vector<DriveEvent>& events, bool slowsAtEvents);

    /// Seconds of the drive that pass in a second on the screen at this time of the drive.
    double at(double time_s) const;
    /// Where the cursor is so many seconds on the screen later.
    double cursorAfter(double time_s, double elapsed_s) const;

private:
    double m_rate = 1;
    std::vector<double> m_slowAt_s; ///< rising
};

} // namespace pumpwright

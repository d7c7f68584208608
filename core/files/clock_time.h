#pragma once

#include <optional>
#include <string_view>

namespace pumpwright {

/// What a clock showed, in seconds: a time of day, "14:03:07.250", since midnight; a date, with or without a
/// time, after ISO 8601, "2024-05-01T14:03:07.25+02:00", since 1970 in universal time. A blank may stand for
/// the T and a comma for the point. Without a zone the time is taken as it stands.
struct ClockTime {
    double seconds = 0;
    bool hasDate = false;
};

std::optional<ClockTime> clockTime(std::string_view text);

/// Turns what a clock showed, row after row, into seconds since the first row. A time of day that falls by
/// more than half a day has passed midnight.
class RunningClock {
public:
    double secondsAt(const ClockTime& time);

private:
    std::optional<double> m_first;
    double m_before = 0;
    double m_midnights_s = 0;
};

} // namespace pumpwright

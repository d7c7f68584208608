#include "core/files/clock_time.h"

#include <charconv>
#include <chrono>
#include <string>

namespace pumpwright {
namespace {

constexpr double kDay_s = 86'400;

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Reads a text from its begin.
class Scan {
public:
    explicit Scan(std::string_view text) : m_rest(text) {}

    bool isAtEnd() const { return m_rest.empty(); }

    bool skip(char c) {
        const bool found = m_rest.starts_with(c);
        m_rest.remove_prefix(found ? 1 : 0);
        return found;
    }

    /// `least` to `most` digits.
    std::optional<int> digits(std::size_t least, std::size_t most) {
        std::size_t count = 0;
        int value = 0;
        for (; count < most && count < m_rest.size() && isDigit(m_rest[count]); ++count) {
            value = 10 * value + (m_rest[count] - '0');
        }
        m_rest.remove_prefix(count);
        return count >= least ? std::optional(value) : std::nullopt;
    }

    /// What stands behind a point or a comma; 0 where neither is there.
    std::optional<double> fraction() {
        if (!skip('.') && !skip(',')) {
            return 0;
        }
        std::string text = "0.";
        for (; !m_rest.empty() && isDigit(m_rest.front()); m_rest.remove_prefix(1)) {
            text += m_rest.front();
        }
        double value = 0;
        const auto [stop, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
        return fault == std::errc() && text.size() > 2 ? std::optional(value) : std::nullopt;
    }

private:
    std::string_view m_rest;
};

/// Hours above 23 are those of a stopwatch.
std::optional<double> timeOfDay(Scan& scan) {
    const auto hours = scan.digits(1, 3);
    const auto minutes = hours && scan.skip(':') ? scan.digits(2, 2) : std::nullopt;
    const auto seconds = minutes && scan.skip(':') ? scan.digits(2, 2) : std::nullopt;
    const auto fraction = seconds ? scan.fraction() : std::nullopt;
    if (!fraction || *minutes > 59 || *seconds > 60) { // 60: a leap second
        return std::nullopt;
    }
    return *hours * 3600.0 + *minutes * 60.0 + *seconds + *fraction;
}

std::optional<double> date(Scan& scan) {
    const auto year = scan.digits(4, 4);
    const auto month = year && scan.skip('-') ? scan.digits(2, 2) : std::nullopt;
    const auto day = month && scan.skip('-') ? scan.digits(2, 2) : std::nullopt;
    if (!day) {
        return std::nullopt;
    }
    const std::chrono::year_month_day given{std::chrono::year{*year},
                                            std::chrono::month{static_cast<unsigned>(*month)},
                                            std::chrono::day{static_cast<unsigned>(*day)}};
    if (!given.ok()) {
        return std::nullopt;
    }
    return std::chrono::duration<double>(std::chrono::sys_days{given}.time_since_epoch()).count();
}

/// What the zone is ahead of universal time: "Z", "+02:00", "-0330", "+02", or nothing.
std::optional<double> zone(Scan& scan) {
    if (scan.isAtEnd() || scan.skip('Z')) {
        return 0;
    }
    const bool west = scan.skip('-');
    if (!west && !scan.skip('+')) {
        return std::nullopt;
    }
    const auto hours = scan.digits(2, 2);
    const bool colon = scan.skip(':');
    const auto minutes = !colon && scan.isAtEnd() ? std::optional(0) : scan.digits(2, 2);
    if (!hours || !minutes || *hours > 14 || *minutes > 59) {
        return std::nullopt;
    }
    return (west ? -1 : 1) * (*hours * 3600.0 + *minutes * 60.0);
}

std::optional<ClockTime> dateAndTime(std::string_view text) {
    Scan scan(text);
    const std::optional<double> midnight = date(scan);
    if (!midnight || scan.isAtEnd()) {
        return midnight ? std::optional(ClockTime{*midnight, true}) : std::nullopt;
    }
    const bool parted = scan.skip('T') || scan.skip(' ');
    const std::optional<double> time = parted ? timeOfDay(scan) : std::nullopt;
    const std::optional<double> ahead = time && *time < kDay_s + 1 ? zone(scan) : std::nullopt;
    if (!ahead || !scan.isAtEnd()) {
        return std::nullopt;
    }
    return ClockTime{*midnight + *time - *ahead, true};
}

} // namespace

std::optional<ClockTime> clockTime(std::string_view text) {
    while (text.starts_with(' ')) {
        text.remove_prefix(1);
    }
    while (text.ends_with(' ')) {
        text.remove_suffix(1);
    }
    Scan scan(text);
    const std::optional<double> time = timeOfDay(scan);
    if (time && scan.isAtEnd()) {
        return ClockTime{*time, false};
    }
    return dateAndTime(text);
}

double RunningClock::secondsAt(const ClockTime& time) {
    if (m_first && !time.hasDate && time.seconds < m_before - kDay_s / 2 && m_before < kDay_s + 1) {
        m_midnights_s += kDay_s;
    }
    m_before = time.seconds;
    const double now = time.seconds + m_midnights_s;
    m_first = m_first.value_or(now);
    return now - *m_first;
}

} // namespace pumpwright

// ISO 8601 for dates, times and zones (RFC 3339, section 5.8, has the examples); times of day by themselves
// are common practice of loggers, no published source.

#include "core/files/clock_time.h"
#include "tests/support/catch.h"

using namespace pumpwright;

TEST_CASE("times of day are seconds since midnight", "[files][clock-time]") {
    CHECK(clockTime("00:00:00")->seconds == 0);
    CHECK(clockTime(" 14:03:07.250 ")->seconds == 50'587.25);
    CHECK(clockTime("14:03:07,25")->seconds == 50'587.25);
    CHECK(clockTime("9:00:00")->seconds == 32'400);
    CHECK(clockTime("23:59:60")->seconds == 86'400);
    CHECK(clockTime("100:00:01")->seconds == 360'001); // a stopwatch
    CHECK_FALSE(clockTime("14:03:07")->hasDate);
}

TEST_CASE("dates with a time are seconds since 1970 in universal time", "[files][clock-time]") {
    CHECK(clockTime("1970-01-01")->seconds == 0);
    CHECK(clockTime("1985-04-12T23:20:50.52Z")->seconds == Approx(482'196'050.52).epsilon(1e-15));
    CHECK(clockTime("1996-12-19T16:39:57-08:00")->seconds == clockTime("1996-12-20T00:39:57Z")->seconds);
    CHECK(clockTime("1937-01-01T12:00:27.87+0020")->seconds == clockTime("1937-01-01T11:40:27.87Z")->seconds);
    CHECK(clockTime("2024-05-01 10:00:00+02")->seconds == clockTime("2024-05-01T08:00:00")->seconds);
    CHECK(clockTime("2024-03-01")->seconds - clockTime("2024-02-28")->seconds == 2 * 86'400);
    CHECK(clockTime("2024-05-01T10:00:00")->hasDate);
}

TEST_CASE("what no clock shows is none", "[files][clock-time]") {
    for (const char* none : {"",
                             ":",
                             "12",
                             "12:30",
                             "12:60:00",
                             "12:00:61",
                             "1:2:3",
                             "12:00:00.",
                             "12:00:00x",
                             "-1:00:00",
                             "1000:00:00",
                             "2023-02-29",
                             "2024-13-01",
                             "2024-00-10",
                             "2024-1-1",
                             "24-01-01",
                             "2024-05-01T",
                             "2024-05-01T10:00",
                             "2024-05-01T99:00:00",
                             "2024-05-01T10:00:00+15:00",
                             "2024-05-01T10:00:00+1",
                             "2024-05-01T10:00:00+02:",
                             "2024-05-01T10:00:00Zulu",
                             "2024-05-01x10:00:00"}) {
        CAPTURE(none);
        CHECK_FALSE(clockTime(none).has_value());
    }
}

TEST_CASE("a running clock counts on past midnight, and a step back stays one", "[files][clock-time]") {
    RunningClock clock;
    CHECK(clock.secondsAt({86'399, false}) == 0);
    CHECK(clock.secondsAt({1, false}) == 2);
    CHECK(clock.secondsAt({0.5, false}) == 1.5);
    CHECK(clock.secondsAt({86'399, false}) == 86'400);
    CHECK(clock.secondsAt({0, false}) == 86'401);
    RunningClock stopwatch;
    CHECK(stopwatch.secondsAt({359'999, false}) == 0);
    CHECK(stopwatch.secondsAt({0, false}) == -359'999);
    RunningClock dated;
    CHECK(dated.secondsAt({200'000, true}) == 0);
    CHECK(dated.secondsAt({0, true}) == -200'000);
}

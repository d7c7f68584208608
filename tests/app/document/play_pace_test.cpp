#include "app/desktop/document/play_pace.h"
#include "tests/support/catch.h"

using namespace pumpwright;

namespace {

std::vector<DriveEvent> eventsAt(std::initializer_list<double> times_s) {
    std::vector<DriveEvent> events;
    for (const double time_s : times_s) {
        events.push_back({time_s, Subject::Part, "K1", "contacts close"});
    }
    return events;
}

/// Seconds on the screen from one time of the drive to another, at 60 frames a second.
double secondsOnScreen(const PlayPace& pace, double from_s, double to_s) {
    constexpr double kFrame_s = 1.0 / 60;
    double shown_s = 0;
    for (double time_s = from_s; time_s < to_s; shown_s += kFrame_s) {
        const double next_s = pace.cursorAfter(time_s, kFrame_s);
        REQUIRE(next_s > time_s);
        time_s = next_s;
    }
    return shown_s;
}

} // namespace

TEST_CASE("away from events a drive plays as fast as asked for", "[playback]") {
    const PlayPace pace(10, eventsAt({500}), true);
    CHECK(pace.at(100) == 10);
    CHECK(pace.cursorAfter(100, 0.5) == Approx(105));
}

TEST_CASE("ten milliseconds in which a relay pulls in take seconds to watch, and no event is jumped over",
          "[playback]") {
    const PlayPace pace(60, eventsAt({100, 100.010}), true);
    CHECK(secondsOnScreen(pace, 99.999, 100.012) > 2);
    CHECK(secondsOnScreen(pace, 0, 200) < 15);
}

TEST_CASE("what is so from the start does not slow the start", "[playback]") {
    CHECK(PlayPace(10, eventsAt({0, 500}), true).at(0) == 10);
}

TEST_CASE("without slowing, an event changes nothing", "[playback]") {
    const PlayPace pace(60, eventsAt({100}), false);
    CHECK(secondsOnScreen(pace, 90, 110) == Approx(20.0 / 60).margin(0.02));
}

TEST_CASE("of a minute of chatter only the beginning is shown slowly", "[playback]") {
    std::vector<DriveEvent> chatter;
    for (int i = 0; i < 1800; ++i) {
        chatter.push_back({10 + i / 30.0, Subject::Part, "K1", "contacts close"});
    }
    CHECK(secondsOnScreen(PlayPace(10, chatter, true), 0, 80) < 120);
}

#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/playback.h"
#include "app/desktop/preferences.h"
#include "tests/support/catch.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

using namespace pumpwright;

namespace {

/// A finished drive of the sample that chatters, cut to 15 s.
struct PlayBench {
    QTemporaryDir folder;
    Preferences preferences{folder.filePath(QStringLiteral("settings.ini"))};
    Document document;
    Analysis analysis{document};
    Playback playback{analysis, preferences};

    PlayBench() {
        REQUIRE(document.open(QStringLiteral("samples/first-try.pumpwright")));
        DrivePlan plan = document.circuit().plan;
        plan.duration_s = 15;
        document.apply({"Shorten the drive", {Replace<DrivePlan>{std::make_shared<DrivePlan>(plan)}}});
        REQUIRE(QTest::qWaitFor([this] { return analysis.drive() && !analysis.isRunning(); }, 60000));
    }
};

} // namespace

TEST_CASE("playing moves the cursor to the end of the drive and stops there", "[playback]") {
    PlayBench bench;
    QSignalSpy changed(&bench.playback, &Playback::playingChanged);
    bench.playback.setRate(60);
    bench.playback.setSlowsAtEvents(false);
    bench.playback.play();
    REQUIRE(bench.playback.isPlaying());
    REQUIRE(QTest::qWaitFor([&] { return !bench.playback.isPlaying(); }, 10000));
    CHECK(bench.analysis.cursor_s() == 15);
    CHECK(bench.analysis.pace() == 0);
    CHECK(changed.count() == 2);
    bench.playback.play();
    CHECK(bench.analysis.cursor_s() == 0);
}

TEST_CASE("with less motion playing rests at each event", "[playback]") {
    PlayBench bench;
    bench.preferences.setLessMotion(true);
    const double first_s = bench.analysis.drive()->recording.events.front().time_s;
    bench.analysis.setCursor(first_s - 1e-3);
    bench.playback.play();
    QTest::qWait(300);
    CHECK(bench.analysis.cursor_s() == first_s - 1e-3);
    REQUIRE(QTest::qWaitFor([&] { return bench.analysis.cursor_s() == first_s; }, 4000));
    bench.playback.pause();
    CHECK_FALSE(bench.playback.isPlaying());
}

TEST_CASE("without a drive there is nothing to play", "[playback]") {
    QTemporaryDir folder;
    Preferences preferences(folder.filePath(QStringLiteral("settings.ini")));
    Document document;
    Analysis analysis(document);
    Playback playback(analysis, preferences);
    playback.play();
    CHECK_FALSE(playback.isPlaying());
}

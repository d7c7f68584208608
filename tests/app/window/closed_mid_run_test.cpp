// A window that is closed at any moment of what it runs: the drive, the breakdowns for the sheet, and a
// study.

#include "app/desktop/studies/studies_panel.h"
#include "app/desktop/studies/study_page.h"
#include "tests/app/window/bench.h"
#include "tests/support/test_seed.h"

#include <QElapsedTimer>

#include <algorithm>
#include <random>

using namespace pumpwright;

namespace {

/// Ten in a usual run; PUMPWRIGHT_STORMS sets another number.
int closings() {
    constexpr int kUsual = 10;
    bool set = false;
    const int other = qEnvironmentVariableIntValue("PUMPWRIGHT_STORMS", &set);
    return set ? std::max(2, other) : kUsual;
}

qsizetype threads() {
    return QDir(QStringLiteral("/proc/self/task")).entryList(QDir::Dirs | QDir::NoDotAndDotDot).size();
}

std::unique_ptr<WindowBench> openWindow() {
    auto bench = std::make_unique<WindowBench>();
    REQUIRE(bench->window.openSample(QStringLiteral("samples/six-ideas.pumpwright")));
    bench->dialogs->unsaved = UnsavedAnswer::Discard;
    return bench;
}

/// How long the window takes to go [ms].
double closed(std::unique_ptr<WindowBench> bench) {
    QElapsedTimer clock;
    clock.start();
    bench.reset();
    return static_cast<double>(clock.nsecsElapsed()) * 1e-6;
}

double closedMidRun(int wait_ms) {
    auto bench = openWindow();
    auto* studies = bench->window.findChild<StudiesPanel*>();
    REQUIRE(studies != nullptr);
    studies->spread().run();
    QTest::qWait(wait_ms);
    CHECK(studies->spread().isRunning());
    return closed(std::move(bench));
}

double closedIdle() {
    auto bench = openWindow();
    bench->waitForAnalysis();
    return closed(std::move(bench));
}

} // namespace

TEST_CASE("a window closed while a drive and a study run ends both", "[window][closed]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    const double idle_ms = closedIdle();
    double slowest_ms = closedMidRun(0);
    const qsizetype before = threads(); // those that stay for all windows have been made
    for (int closing = closings() - 1; closing > 0; --closing) {
        slowest_ms = std::max(slowest_ms, closedMidRun(static_cast<int>(random() % 200)));
        CHECK(threads() <= before);
    }
    CHECK(slowest_ms < 5000); // the study would take longer
    WARN("slowest closing: " << slowest_ms << " ms; one where nothing ran: " << idle_ms << " ms");
}

#include "app/desktop/comparison_window.h"
#include "app/desktop/data_files.h"
#include "app/desktop/handbook_window.h"
#include "app/desktop/preferences_window.h"
#include "app/desktop/studies/studies_panel.h"
#include "core/files/circuit_file.h"
#include "core/sheet/comparison.h"
#include "tests/app/window/bench.h"
#include "tests/app/window/long_winded.h"

#include <QTabWidget>

#include <functional>

using namespace pumpwright;

namespace {

/// A screen of 1024 by 640 pixels at 200 %, without the frame of a window.
constexpr QSize kSmall{512, 300};

/// Shows each page of the tabs in turn, and looks at it.
void checkPages(const QWidget& window, QTabWidget& pages) {
    for (int page = 0; page < pages.count(); ++page) {
        INFO("page " << page);
        pages.setCurrentIndex(page);
        QTest::qWait(30);
        CHECK(checkRoom(window) > 5);
    }
}

/// As it opens, and on the small screen.
void checkBothSizes(QWidget& window, const std::function<void()>& look) {
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    look();
    window.resize(kSmall);
    QTest::qWait(50);
    INFO("small");
    CHECK(window.width() <= kSmall.width());
    CHECK(window.height() <= kSmall.height());
    look();
}

} // namespace

TEST_CASE("long texts from the right are cut in no dialog, on a small screen neither",
          "[window][translations][long-texts]") {
    const LongWindedSpell spell;
    WindowBench bench;
    SECTION("preferences") {
        PreferencesWindow window(bench.preferences);
        checkBothSizes(window, [&] { checkPages(window, *window.findChild<QTabWidget*>()); });
    }
    SECTION("handbook") {
        HandbookWindow window(QString::fromStdString(docsFolder().string()));
        checkBothSizes(window, [&] { CHECK(checkRoom(window) > 3); });
    }
    SECTION("comparison") {
        const auto before = readCircuit("samples/first-try.pumpwright");
        const auto after = readCircuit("samples/put-right.pumpwright");
        REQUIRE(before);
        REQUIRE(after);
        const std::vector<Finding> none;
        auto* window = new ComparisonWindow(QStringLiteral("first-try.pumpwright"),
                                            QStringLiteral("put-right.pumpwright"),
                                            comparisonOf({*before, none}, {*after, none}), nullptr);
        checkBothSizes(*window, [&] { CHECK(checkRoom(*window) > 5); });
        window->close();
    }
}

TEST_CASE("long texts from the right are cut in no panel and on no page of the studies",
          "[window][translations][long-texts]") {
    const LongWindedSpell spell;
    WindowBench bench;
    REQUIRE(bench.window.openSample(QStringLiteral("samples/six-ideas.pumpwright")));
    bench.waitForAnalysis();
    for (QDockWidget* panel : bench.window.findChildren<QDockWidget*>()) {
        INFO(panel->objectName().toStdString());
        panel->show();
        panel->raise();
        QTest::qWait(30);
        CHECK(checkRoom(*panel) > 2);
    }
    auto* studies = bench.window.findChild<QDockWidget*>(QStringLiteral("studies"));
    studies->raise();
    checkPages(*studies, *studies->findChild<QTabWidget*>());
}

TEST_CASE("on a small screen the window has room for its texts, with any one panel open",
          "[window][layout][long-texts]") {
    const LongWindedSpell spell;
    QTemporaryDir folder;
    Preferences preferences(folder.filePath(QStringLiteral("settings.ini")));
    preferences.setCautionsUnderstood();
    MainWindow window(smallCatalogue(), preferences, std::make_unique<ToldDialogs>());
    window.resize(kSmall);
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    QTest::qWait(50);
    window.resize(kSmall); // the panels are folded away now, and ask for no room
    QTest::qWait(50);
    CHECK(window.width() <= kSmall.width());
    CHECK(window.height() <= kSmall.height());
    CHECK(checkRoom(window) > 5);
    for (QDockWidget* panel : window.findChildren<QDockWidget*>()) {
        INFO(panel->objectName().toStdString());
        panel->show();
        QTest::qWait(30);
        CHECK(window.width() <= kSmall.width());
        CHECK(checkRoom(*panel) > 2);
        panel->hide();
    }
}

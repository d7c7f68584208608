#include "app/desktop/comparison_window.h"
#include "app/desktop/data_files.h"
#include "app/desktop/handbook_window.h"
#include "app/desktop/preferences_window.h"
#include "app/desktop/studies/studies_panel.h"
#include "core/files/circuit_file.h"
#include "tests/app/window/bench.h"
#include "tests/app/window/room.h"

#include <QDockWidget>
#include <QTabWidget>

using namespace pumpwright;

namespace {

/// What a screen of 1024 by 640 has at 200 %.
constexpr QSize kSmall{512, 320};

const QString kFirstTry = QStringLiteral("samples/first-try.pumpwright");

/// Every page of every set of tabs in a window, one after the other.
void checkPages(QWidget& window) {
    QTest::qWait(30);
    checkRoom(window);
    for (QTabWidget* tabs : window.findChildren<QTabWidget*>()) {
        for (int page = 0; page < tabs->count(); ++page) {
            INFO("page " << tabs->tabText(page).toStdString());
            tabs->setCurrentIndex(page);
            QTest::qWait(30);
            checkRoom(window);
        }
    }
}

/// At its own size or at that of a small screen.
void checkDialog(QWidget& dialog, bool isSmall) {
    dialog.show();
    REQUIRE(QTest::qWaitForWindowExposed(&dialog));
    if (isSmall) {
        dialog.resize(kSmall);
        QTest::qWait(30);
        CHECK(dialog.width() <= kSmall.width());
        CHECK(dialog.height() <= kSmall.height());
    }
    checkPages(dialog);
}

void checkDialogs(bool isSmall) {
    SECTION("preferences") {
        WindowBench bench;
        PreferencesWindow dialog(bench.preferences);
        checkDialog(dialog, isSmall);
    }
    SECTION("handbook") {
        HandbookWindow dialog(QString::fromStdString(docsFolder().string()));
        checkDialog(dialog, isSmall);
    }
    SECTION("comparison") {
        const auto before = readCircuit("samples/first-try.pumpwright");
        const auto after = readCircuit("samples/put-right.pumpwright");
        REQUIRE(before);
        REQUIRE(after);
        const std::vector<Finding> none;
        auto* dialog = new ComparisonWindow(QStringLiteral("before"), QStringLiteral("after"),
                                            comparisonOf({*before, none}, {*after, none}), nullptr);
        checkDialog(*dialog, isSmall);
        dialog->close();
    }
}

} // namespace

TEST_CASE("texts longer by forty percent, written from the right, are cut nowhere in the window",
          "[window][translations][room]") {
    const LongTexts longTexts;
    WindowBench bench;
    bench.waitForAnalysis();
    QTest::qWait(100);
    bench.keepPicture(QStringLiteral("window-long-texts.png"));
    CHECK(bench.window.findChildren<QLabel*>().size() > 20);
    checkRoom(bench.window);
}

TEST_CASE("texts longer by forty percent, written from the right, are cut in no dialog",
          "[window][translations][room]") {
    const LongTexts longTexts;
    checkDialogs(false);
}

TEST_CASE("on a screen of 1024 by 640 at 200 % no dialog is cut", "[window][layout][room]") {
    checkDialogs(true);
}

TEST_CASE("texts longer by forty percent are cut in no panel, with something on each of them",
          "[window][translations][room]") {
    const LongTexts longTexts;
    WindowBench bench;
    bench.preferences.setCautionsUnderstood();
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    bench.window.selection().select({{bench.window.document().circuit().parts.begin()->first}, {}, {}});
    for (QDockWidget* panel : bench.window.findChildren<QDockWidget*>()) {
        INFO("panel " << panel->objectName().toStdString());
        panel->show();
        panel->raise();
        checkPages(*panel);
    }
}

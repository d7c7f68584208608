#include "app/desktop/circuit/palette.h"
#include "app/desktop/focus_style.h"
#include "app/desktop/theme.h"
#include "tests/app/window/bench.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QDockWidget>
#include <QImage>

using namespace pumpwright;

namespace {

/// The style and colours of the program, as long as this lives.
class ProgramsLooks {
public:
    explicit ProgramsLooks(Theme theme) {
        QApplication::setStyle(new FocusStyle);
        showTheme(theme);
    }
    ~ProgramsLooks() {
        showTheme(Theme::LikeDesktop);
        QApplication::setStyle(QStringLiteral("fusion"));
    }
    ProgramsLooks(const ProgramsLooks&) = delete;
    ProgramsLooks& operator=(const ProgramsLooks&) = delete;
};

/// How many squares of two by two pixels change so much between the pictures that people see it.
int changedSquares(const QImage& before, const QImage& after) {
    const auto changed = [&](int x, int y) {
        return before.pixel(x, y) != after.pixel(x, y) &&
               contrastRatio(before.pixelColor(x, y), after.pixelColor(x, y)) >= FocusStyle::kContrast;
    };
    int squares = 0;
    for (int y = 1; y < after.height(); ++y) {
        for (int x = 1; x < after.width(); ++x) {
            squares +=
                changed(x, y) && changed(x - 1, y) && changed(x, y - 1) && changed(x - 1, y - 1) ? 1 : 0;
        }
    }
    return squares;
}

bool isReachedByKeys(const QWidget& widget, const QWidget& window) {
    return widget.isVisibleTo(&window) && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) != 0 &&
           widget.focusProxy() == nullptr && !widget.visibleRegion().isEmpty();
}

void checkFocusIsSeen(Theme theme) {
    const ProgramsLooks looks(theme);
    WindowBench bench;
    bench.preferences.setCautionsUnderstood();
    REQUIRE(bench.window.openSample(QStringLiteral("samples/six-ideas.pumpwright")));
    bench.waitForAnalysis();
    QApplication::setActiveWindow(&bench.window);
    int seen = 0;
    for (QDockWidget* panel : bench.window.findChildren<QDockWidget*>()) {
        panel->show();
        panel->raise();
        QTest::qWait(20);
        for (QWidget* widget : panel->findChildren<QWidget*>()) {
            if (!isReachedByKeys(*widget, bench.window)) {
                continue;
            }
            bench.window.setFocus();
            const QImage before = widget->grab().toImage();
            widget->setFocus(Qt::TabFocusReason);
            REQUIRE(widget->hasFocus());
            const QImage after = widget->grab().toImage();
            INFO(panel->objectName().toStdString() << ": " << widget->metaObject()->className() << " "
                                                   << widget->accessibleName().toStdString());
            CHECK(changedSquares(before, after) >= 20);
            ++seen;
        }
    }
    CHECK(seen > 30);
}

} // namespace

TEST_CASE("the colour of focus stands out from window and fields in every theme", "[window][focus]") {
    for (const Theme theme : {Theme::LikeDesktop, Theme::Light, Theme::Dark}) {
        const QPalette palette = themePalette(theme);
        CHECK(contrastRatio(focusColour(palette), palette.color(QPalette::Window)) >= FocusStyle::kContrast);
        CHECK(contrastRatio(focusColour(palette), palette.color(QPalette::Base)) >= FocusStyle::kContrast);
    }
}

TEST_CASE("wherever the keys go, a line two pixels thick shows it on light ground", "[window][focus]") {
    checkFocusIsSeen(Theme::Light);
}

TEST_CASE("wherever the keys go, a line two pixels thick shows it on dark ground", "[window][focus]") {
    checkFocusIsSeen(Theme::Dark);
}

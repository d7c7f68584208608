#include "app/desktop/circuit/circuit_view.h"
#include "tests/app/window/first_circuit.h"

#include <QApplication>

using namespace pumpwright;

namespace {

constexpr int kMostKeys = 150;

/// Presses keys as a keyboard does: they go to the window, which knows who has the focus.
class Keyboard {
public:
    explicit Keyboard(MainWindow& window) : m_window(window) {}

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(m_window.windowHandle(), key, modifiers);
        afterKey();
    }
    void type(const char* text) {
        for (const char* letter = text; *letter != '\0'; ++letter) {
            QTest::keyClick(m_window.windowHandle(), *letter);
            afterKey();
        }
    }
    /// Types and takes what is found or offered; an empty text takes the offer.
    void take(const char* text) {
        type(text);
        press(Qt::Key_Return);
    }
    int count() const { return m_count; }

private:
    void afterKey() {
        ++m_count;
        QCoreApplication::processEvents();
        INFO("key " << m_count);
        const QWidget* focus = QApplication::focusWidget();
        REQUIRE(focus != nullptr);
        CHECK(focus->isVisible());
        CHECK_FALSE(focus->visibleRegion().isEmpty());
    }

    MainWindow& m_window;
    int m_count = 0;
};

void placeParts(Keyboard& keys) {
    keys.press(Qt::Key_P);
    for (const char* word : {"bat", "fus 15", "vac", "tim", "rel", "dio", "pum", "gro", "boo"}) {
        keys.type(word);
        keys.press(Qt::Key_Return, Qt::ControlModifier);
    }
    keys.press(Qt::Key_F6);
}

void drawWires(Keyboard& keys) {
    keys.press(Qt::Key_W);
    for (const auto& [from, to] : std::initializer_list<std::pair<const char*, const char*>>{
             {"g1", "f1"},   // the positive pole to the fuse
             {"", "k115"},   // its other end to the timer's own supply
             {"15", "30"},   // and to the timer's contact
             {"30", "b1"},   // and to the vacuum switch
             {"", "k1s"},    // whose other end starts the timer
             {"87", "k286"}, // which feeds the relay's coil
             {"", "x1"},     // the coil's other end to ground
             {"k230", "f12"},
             {"k287", "m1"}, // the relay feeds the pump
             {"", "x1"},
             {"k131", "x1"},
             {"g131", "x1"},
             {"r1", "85"},
             {"", "86"}}) {
        keys.take(from);
        keys.take(to);
    }
}

} // namespace

TEST_CASE("the first circuit is drawn, checked, driven and written as a sheet by keys alone",
          "[window][first-circuit]") {
    WindowBench bench(wholeCatalogue());
    bench.window.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&bench.window));
    Keyboard keys(bench.window);
    placeParts(keys);
    drawWires(keys);
    keys.press(Qt::Key_H);
    keys.take("a1");
    keys.take("m1");
    keys.take("a1");
    keys.take("b1");
    keys.press(Qt::Key_Escape);
    checkFirstCircuit(bench.window.document().circuit());
    checkItWorks(bench);

    bench.dialogs->path = bench.file("first.pdf");
    keys.press(Qt::Key_F, Qt::AltModifier);
    keys.type("ew");
    const int inTheFileDialog = 1;
    CHECK(keys.count() + inTheFileDialog <= kMostKeys);
    checkPdf(bench.dialogs->path);
    CHECK(bench.dialogs->errors.isEmpty());
    bench.keepPicture(QStringLiteral("first-circuit-by-keys.png"));
}

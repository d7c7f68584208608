#include "app/desktop/circuit/arranging.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/panels/nameplate.h"
#include "core/files/circuit_file.h"
#include "core/parts/part_kind.h"
#include "core/parts/placement.h"
#include "tests/app/window/bench.h"
#include "tests/support/test_seed.h"

#include <QLineEdit>

#include <functional>
#include <random>

using namespace pumpwright;

namespace {

constexpr int kUsualActions = 500; ///< some ten seconds; PUMPWRIGHT_ACTIONS gives another number
constexpr int kSavedEvery = 100;
constexpr std::size_t kManyParts = 25;

int actionCount() {
    bool isNumber = false;
    const int count = qEnvironmentVariableIntValue("PUMPWRIGHT_ACTIONS", &isNumber);
    return isNumber ? count : kUsualActions;
}

/// Does with the window what hands can do, at random; everything that edits, and much that ends half-way.
class RandomUser {
public:
    explicit RandomUser(WindowBench& bench) : m_bench(bench), m_random(testSeed()) {
        REQUIRE(m_bench.window.openSample(QStringLiteral("samples/first-try.pumpwright")));
    }

    void act() {
        if (circuit().parts.size() > kManyParts) {
            clickOnPart();
            view().deleteSelection();
            return;
        }
        m_acts.at(below(m_acts.size()))();
    }

    const Circuit& circuit() { return m_bench.window.document().circuit(); }

private:
    CircuitView& view() { return m_bench.window.circuitView(); }
    QWidget* paper() { return view().viewport(); }
    Document& document() { return m_bench.window.document(); }

    std::size_t below(std::size_t end) {
        return std::uniform_int_distribution<std::size_t>(0, end - 1)(m_random);
    }
    int between(int low, int high) { return std::uniform_int_distribution<int>(low, high)(m_random); }

    QPoint anywhere() { return {between(0, paper()->width() - 1), between(0, paper()->height() - 1)}; }
    QPoint onPart() {
        if (circuit().parts.empty()) {
            return anywhere();
        }
        const auto part = std::next(circuit().parts.begin(), static_cast<int>(below(circuit().parts.size())));
        return view().mapFromScene(20.0 * part->second.at.x, 20.0 * part->second.at.y) +
               QPoint(between(-4, 4), between(-4, 4));
    }
    QPoint onTerminal() {
        if (circuit().parts.empty()) {
            return anywhere();
        }
        const auto found =
            std::next(circuit().parts.begin(), static_cast<int>(below(circuit().parts.size())));
        const Part& part = found->second;
        const auto terminals = kindOf(part).terminals(part);
        if (terminals.empty()) {
            return onPart();
        }
        const GridPoint at = turned(part, terminals.at(below(terminals.size())).at);
        return view().mapFromScene(20.0 * (part.at.x + at.x), 20.0 * (part.at.y + at.y));
    }
    QPoint somewhere() {
        const int choice = between(0, 9);
        return choice < 4 ? onTerminal() : choice < 7 ? onPart() : anywhere();
    }
    Qt::KeyboardModifiers someModifiers() {
        const int choice = between(0, 9);
        return choice == 0 ? Qt::ShiftModifier : choice == 1 ? Qt::ControlModifier : Qt::NoModifier;
    }

    void click(QPoint at) {
        QTest::mouseMove(paper(), at);
        QTest::mouseClick(paper(), Qt::LeftButton, someModifiers(), at);
    }
    void clickOnPart() { click(onPart()); }
    void moveHeld(QPoint at, Qt::KeyboardModifiers modifiers) {
        QMouseEvent event(QEvent::MouseMove, at, paper()->mapToGlobal(at), Qt::NoButton, Qt::LeftButton,
                          modifiers);
        QCoreApplication::sendEvent(paper(), &event);
    }
    void drag() {
        const QPoint from = somewhere();
        const QPoint to = somewhere();
        const Qt::KeyboardModifiers modifiers = someModifiers();
        QTest::mousePress(paper(), Qt::LeftButton, modifiers, from);
        moveHeld((from + to) / 2, modifiers);
        moveHeld(to, modifiers);
        if (between(0, 5) == 0) {
            key(Qt::Key_Escape);
        }
        QTest::mouseRelease(paper(), Qt::LeftButton, modifiers, to);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&view(), key, modifiers); }
    void someKey() {
        constexpr std::array kKeys{Qt::Key_R,      Qt::Key_M,         Qt::Key_W,     Qt::Key_H,
                                   Qt::Key_Escape, Qt::Key_Left,      Qt::Key_Up,    Qt::Key_F,
                                   Qt::Key_Return, Qt::Key_Backspace, Qt::Key_Right, Qt::Key_Down,
                                   Qt::Key_K,      Qt::Key_1,         Qt::Key_Space, Qt::Key_Delete};
        key(kKeys.at(below(kKeys.size())), someModifiers());
    }
    void place() {
        view().place(newPart(*partKinds()[below(partKinds().size())], "", {}));
        click(somewhere());
        if (between(0, 1) == 0) {
            key(Qt::Key_Escape);
        }
    }
    void connect(bool hose) {
        hose ? view().startHose() : view().startWire();
        click(onTerminal());
        if (between(0, 2) == 0) {
            click(anywhere());
        }
        click(onTerminal());
        key(Qt::Key_Escape);
    }
    void selectSome() {
        SelectedObjects objects;
        for (const auto& [id, part] : circuit().parts) {
            if (between(0, 3) == 0) {
                objects.parts.insert(id);
            }
        }
        m_bench.window.selection().select(objects);
    }
    void arrange() {
        selectSome();
        view().arrangeSelection(kArrangements.at(below(kArrangements.size())));
    }
    /// Types into a field of the Nameplate; with nothing selected that is the title block and the limits.
    void fillIn() {
        if (between(0, 3) == 0) {
            m_bench.window.selection().select({});
        } else {
            clickOnPart();
        }
        const auto fields = m_bench.window.findChild<Nameplate*>()->findChildren<QLineEdit*>();
        if (!fields.isEmpty()) {
            QLineEdit* field =
                fields.at(static_cast<qsizetype>(below(static_cast<std::size_t>(fields.size()))));
            constexpr std::array kTexts{"12", "0.5", "1e9", "-3", "14 AWG", "2.5 mm2", "?", "", "Left rear"};
            field->setText(QString::fromLatin1(kTexts.at(below(kTexts.size()))));
            QTest::keyClick(field, Qt::Key_Return);
        }
    }
    void changeHistory() {
        QUndoStack& history = document().undoStack();
        for (int steps = between(1, 6); steps > 0; --steps) {
            between(0, 2) == 0 ? history.redo() : history.undo();
        }
    }
    void changeTrials() {
        if (between(0, 1) == 0 && document().undoStack().index() > 0) {
            document().makeTrialOfLast(between(1, std::min(5, document().undoStack().index())));
        } else if (!circuit().trials.empty()) {
            document().takeTrial(circuit().trials.begin()->first);
        }
    }

    WindowBench& m_bench;
    std::mt19937_64 m_random;
    const std::vector<std::function<void()>> m_acts{
        [this] { click(somewhere()); },
        [this] { click(somewhere()); },
        [this] { drag(); },
        [this] { drag(); },
        [this] { drag(); },
        [this] { someKey(); },
        [this] { someKey(); },
        [this] { someKey(); },
        [this] { place(); },
        [this] { connect(false); },
        [this] { connect(true); },
        [this] { view().rotateSelection(); },
        [this] { view().mirrorSelection(); },
        [this] { view().deleteSelection(); },
        [this] { view().cutSelection(); },
        [this] { view().copySelection(); },
        [this] { view().paste(); },
        [this] { view().duplicateSelection(); },
        [this] { arrange(); },
        [this] { selectSome(); },
        [this] { fillIn(); },
        [this] { changeHistory(); },
        [this] { changeTrials(); },
    };
};

/// What a file of the circuit gives back.
void checkSavedAndLoaded(WindowBench& bench) {
    const std::string path = bench.file("random.pumpwright").toStdString();
    REQUIRE(writeCircuit(bench.window.document().circuit(), path));
    const auto loaded = readCircuit(path);
    REQUIRE(loaded);
    CHECK(*loaded == bench.window.document().circuit());
    CHECK(circuitText(*loaded) == circuitText(bench.window.document().circuit()));
}

} // namespace

TEST_CASE("whatever a user does can be undone, redone, saved and loaded", "[window][random-user]") {
    WindowBench bench;
    RandomUser user(bench);
    const std::string first = circuitText(user.circuit());
    const int count = actionCount();
    WARN("PUMPWRIGHT_SEED=" << testSeed() << ", " << count << " actions");
    for (int done = 1; done <= count; ++done) {
        INFO("action " << done);
        user.act();
        // As a running program does between two actions: else widgets that are replaced pile up.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        if (done % kSavedEvery == 0) {
            checkSavedAndLoaded(bench);
            QCoreApplication::processEvents();
        }
    }
    QUndoStack& history = bench.window.document().undoStack();
    while (history.canRedo()) {
        history.redo();
    }
    const std::string last = circuitText(user.circuit());
    history.setIndex(0);
    CHECK(circuitText(user.circuit()) == first);
    history.setIndex(history.count());
    CHECK(circuitText(user.circuit()) == last);
    CHECK(history.count() > count / 10);
}

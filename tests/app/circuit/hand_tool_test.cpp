#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/geometry.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/hand_operation.h"
#include "app/desktop/document/selection.h"
#include "core/files/circuit_file.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QSignalSpy>
#include <QTest>

using namespace pumpwright;

namespace {

/// Switch S1 at 0,0, booster A1 at 12,0 and fuse F1 at 24,0 in grid steps.
class HandBench {
public:
    HandBench() {
        view.setHandOperation(operation);
        view.resize(1000, 700);
        view.show();
        document.startNew(
            CircuitBuilder().part("hand-switch", "S1").part("booster", "A1").part("fuse", "F1").build());
        QCoreApplication::processEvents();
        view.operateByHand();
    }

    QPoint pixel(const char* part) const {
        const GridPoint at = document.circuit().parts.at({part}).at;
        return view.mapFromScene(scenePoint(at));
    }
    void press(const char* part) {
        QTest::mouseMove(view.viewport(), pixel(part));
        QTest::mousePress(view.viewport(), Qt::LeftButton, {}, pixel(part));
    }
    void release(const char* part) { QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, pixel(part)); }

    Document document;
    Selection selection;
    Analysis analysis{document};
    HandOperation operation{document};
    CircuitView view{document, selection, analysis};
};

} // namespace

TEST_CASE("by hand a click moves a switch, and edits nothing", "[circuit][hand]") {
    HandBench bench;
    const std::string before = circuitText(bench.document.circuit());
    CHECK(bench.view.activity() == CanvasActivity::Operate);
    CHECK(bench.operation.isOn());
    bench.press("S1");
    bench.release("S1");
    CHECK(bench.operation.isSwitchOn({"S1"}));
    bench.press("S1");
    bench.release("S1");
    CHECK_FALSE(bench.operation.isSwitchOn({"S1"}));
    bench.press("F1");
    bench.release("F1");
    CHECK(bench.selection.objects().empty());
    CHECK(circuitText(bench.document.circuit()) == before);
    CHECK(bench.document.undoStack().count() == 0);
}

TEST_CASE("by hand the pedal is down while the button is", "[circuit][hand]") {
    HandBench bench;
    bench.press("A1");
    CHECK(bench.operation.isPedalPressed());
    bench.release("A1");
    CHECK_FALSE(bench.operation.isPedalPressed());
}

TEST_CASE("by hand everything is reached with keys", "[circuit][hand]") {
    HandBench bench;
    QTest::keyClick(&bench.view, Qt::Key_Right); // parts in the order of their ids: A1, S1
    CHECK(bench.selection.objects().parts == std::set<PartId>{{"A1"}});
    QTest::keyClick(&bench.view, Qt::Key_Return);
    CHECK(bench.operation.isPedalPressed());
    QTest::keyClick(&bench.view, Qt::Key_Return);
    CHECK_FALSE(bench.operation.isPedalPressed());
    QTest::keyClick(&bench.view, Qt::Key_Right);
    CHECK(bench.selection.objects().parts == std::set<PartId>{{"S1"}});
    QTest::keyClick(&bench.view, Qt::Key_Return);
    CHECK(bench.operation.isSwitchOn({"S1"}));
    QTest::keyPress(&bench.view, Qt::Key_B);
    CHECK(bench.operation.isPedalPressed());
    QTest::keyRelease(&bench.view, Qt::Key_B);
    CHECK_FALSE(bench.operation.isPedalPressed());
}

TEST_CASE("Esc, or another tool, ends operating by hand", "[circuit][hand]") {
    HandBench bench;
    QTest::keyClick(&bench.view, Qt::Key_Escape);
    CHECK(bench.view.activity() == CanvasActivity::Select);
    CHECK_FALSE(bench.operation.isOn());
    bench.view.operateByHand();
    CHECK(bench.operation.isOn());
    bench.view.startWire();
    CHECK_FALSE(bench.operation.isOn());
}

TEST_CASE("the status line says what a click does by hand", "[circuit][hand]") {
    HandBench bench;
    const QSignalSpy hints(&bench.view, &CircuitView::hint);
    bench.press("S1");
    bench.release("S1");
    CHECK(hints.last().front().toString().contains(QStringLiteral("S1 off")));
    QTest::mouseMove(bench.view.viewport(), bench.pixel("A1"));
    CHECK(hints.last().front().toString().contains(QStringLiteral("A1")));
}

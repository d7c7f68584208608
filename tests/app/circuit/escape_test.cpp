#include "app/desktop/document/hand_operation.h"
#include "tests/app/circuit/canvas.h"

using namespace pumpwright;

namespace {

/// A wire F1.2 to K1.30 and a hose C1.b to X1.a.
Circuit joinedParts() {
    return CircuitBuilder()
        .part("fuse", "F1")
        .part("relay", "K1")
        .part("reservoir", "C1")
        .part("tee", "X1")
        .wire("F1.2", "K1.30")
        .hose("C1.b", "X1.a")
        .build();
}

/// Begins a wire at the relay's terminal 86, without a pointer.
void takeWireStart(Canvas& canvas) {
    canvas.view.startWire();
    canvas.type("k186");
    canvas.key(Qt::Key_Return);
}

} // namespace

TEST_CASE("Esc ends whatever is half done, and leaves bytes and history as they were", "[canvas][escape]") {
    Canvas canvas(joinedParts());
    HandOperation operation(canvas.document);
    canvas.view.setHandOperation(operation);
    canvas.selection.select({{{"F1"}}, {}, {}});
    canvas.view.nudgeSelection(0, 3);
    canvas.document.undoStack().undo(); // something to redo, which must stay
    canvas.selection.select({});
    const std::string before = canvas.bytes();
    QPointF rest(9, 9);

    SECTION("a part on the pointer") {
        canvas.view.place(prototype("lamp"));
        canvas.moveTo(5, 5);
    }
    SECTION("a part on the pointer, turned and mirrored") {
        canvas.view.place(prototype("lamp"));
        canvas.moveTo(5, 5);
        canvas.key(Qt::Key_R);
        canvas.key(Qt::Key_M);
    }
    SECTION("a part over a wire that it would go into") {
        canvas.view.place(prototype("fuse"));
        canvas.moveTo(8, 0);
    }
    SECTION("a part steered by keys") {
        canvas.view.place(prototype("lamp"));
        canvas.key(Qt::Key_Down);
        canvas.key(Qt::Key_Right, Qt::ShiftModifier);
    }
    SECTION("a wire with nothing chosen yet") {
        canvas.view.startWire();
    }
    SECTION("a wire that is offered a start") {
        canvas.selection.select({{{"K1"}}, {}, {}});
        canvas.view.startWire();
    }
    SECTION("a wire whose start is half typed") {
        canvas.view.startWire();
        canvas.type("k1");
    }
    SECTION("a wire whose start is typed as something that is not there") {
        canvas.view.startWire();
        canvas.type("q9");
    }
    SECTION("a wire whose start is taken by keys") {
        takeWireStart(canvas);
    }
    SECTION("a wire whose end is half typed") {
        takeWireStart(canvas);
        canvas.type("f1");
    }
    SECTION("a wire whose end is typed as something that is not there") {
        takeWireStart(canvas);
        canvas.type("q9");
    }
    SECTION("a wire with a start by click, a corner, and an end half typed") {
        canvas.view.startWire();
        canvas.click(-2, 0);
        canvas.click(4, 6);
        canvas.type("k1");
    }
    SECTION("a wire with a start and corners by clicks") {
        canvas.view.startWire();
        canvas.click(-2, 0);
        canvas.click(4, 6);
        canvas.click(9, 6);
    }
    SECTION("a wire over another that it would branch from") {
        canvas.view.startWire();
        canvas.click(-2, 0);
        canvas.moveTo(8, 0);
    }
    SECTION("a wire steered by keys") {
        canvas.view.startWire();
        canvas.click(-2, 0);
        canvas.key(Qt::Key_Down, Qt::ShiftModifier);
    }
    SECTION("a wire by a drag") {
        canvas.press(-2, 0);
        canvas.dragTo(5, 5);
    }
    SECTION("a hose with nothing chosen yet") {
        canvas.view.startHose();
    }
    SECTION("a hose whose start is half typed") {
        canvas.view.startHose();
        canvas.type("c1");
    }
    SECTION("a hose whose end is half typed") {
        canvas.view.startHose();
        canvas.type("c1a");
        canvas.key(Qt::Key_Return);
        canvas.type("x1");
    }
    SECTION("a hose with a corner") {
        canvas.view.startHose();
        canvas.click(21, 0);
        canvas.click(25, 6);
    }
    SECTION("a hose by a drag") {
        canvas.press(21, 0);
        canvas.dragTo(25, 6);
    }
    SECTION("a part that is moved") {
        canvas.press(12.6, 0.3);
        canvas.dragTo(16, 6);
    }
    SECTION("a part that is moved off the lines of others") {
        canvas.press(12.6, 0.3, Qt::ControlModifier);
        canvas.dragTo(16, 6, Qt::ControlModifier);
    }
    SECTION("a stretch of a wire") {
        canvas.press(8, 0);
        canvas.dragTo(8, 3);
        CHECK(canvas.view.activity() == CanvasActivity::Select);
    }
    SECTION("a stretch of a hose") {
        canvas.press(31, 0);
        canvas.dragTo(31, 3);
    }
    SECTION("a rubber band") {
        canvas.press(-5, -6);
        canvas.dragTo(5, 6);
    }
    SECTION("a rubber band that adds") {
        canvas.press(-5, -6, Qt::ShiftModifier);
        canvas.dragTo(5, 6, Qt::ShiftModifier);
    }
    SECTION("a press that is no drag yet") {
        canvas.press(12.6, 0.3);
    }
    SECTION("the circuit tried by hand") {
        canvas.view.operateByHand();
        CHECK(operation.isOn());
    }
    SECTION("nothing at all") {}

    canvas.key(Qt::Key_Escape);
    canvas.key(Qt::Key_Escape); // the first takes back the start of a wire, the second ends wiring
    CHECK(canvas.view.activity() == CanvasActivity::Select);
    CHECK_FALSE(operation.isOn());
    canvas.dragTo(rest.x(), rest.y()); // a button that was down still is
    canvas.release(rest.x(), rest.y());
    canvas.moveTo(rest.x(), rest.y() + 1);
    CHECK(canvas.bytes() == before);
    CHECK(canvas.steps() == 1);
    CHECK(canvas.document.undoStack().index() == 0);
    CHECK(canvas.document.undoStack().canRedo());
    CHECK(canvas.selection.objects().parts.empty());
    CHECK(canvas.view.activity() == CanvasActivity::Select);
}

TEST_CASE("Esc after a wire by keys keeps the wire and drops what was begun after it", "[canvas][escape]") {
    Canvas canvas;
    canvas.view.startWire();
    canvas.type("f12");
    canvas.key(Qt::Key_Return);
    canvas.type("k130");
    canvas.key(Qt::Key_Return);
    REQUIRE(canvas.document.circuit().wires.size() == 1);
    const std::string before = canvas.bytes();
    canvas.key(Qt::Key_Return); // goes on from where it ended
    canvas.type("f1");
    canvas.key(Qt::Key_Escape);
    canvas.key(Qt::Key_Escape);
    CHECK(canvas.bytes() == before);
    CHECK(canvas.steps() == 1);
    CHECK(canvas.view.activity() == CanvasActivity::Select);
}

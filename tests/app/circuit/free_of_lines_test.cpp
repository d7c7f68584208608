#include "tests/app/circuit/canvas.h"

using namespace pumpwright;

namespace {

/// F1 at 0,0 with terminals at -2,0 and 2,0; P1 where nothing is in line with it.
Circuit fuseAndLamp() {
    Circuit circuit = CircuitBuilder().part("fuse", "F1").part("fuse", "F2").build();
    circuit.parts.at({"F2"}).at = {9, 9};
    return circuit;
}

} // namespace

TEST_CASE("a moved part goes into line with one near, and with Ctrl only to the grid",
          "[canvas][lining-up]") {
    for (const auto& [modifiers, at] :
         {std::pair<Qt::KeyboardModifiers, GridPoint>{{}, {9, 0}}, {Qt::ControlModifier, {9, 1}}}) {
        Canvas canvas(fuseAndLamp());
        canvas.drag(9, 9.3, 9, 9.3 - 8.35, modifiers); // to 0.65 below the line of F1
        CHECK(canvas.part("F2").at == at);
        CHECK(canvas.steps() == 1);
    }
}

TEST_CASE("Ctrl pressed in the middle of a move lets go of the line, and let go pulls again",
          "[canvas][lining-up]") {
    Canvas canvas(fuseAndLamp());
    canvas.press(9, 9.3);
    canvas.dragTo(9, 5);
    canvas.dragTo(9, 0.95, Qt::ControlModifier);
    canvas.dragTo(9, 0.95);
    canvas.release(9, 0.95);
    CHECK(canvas.part("F2").at == GridPoint{9, 0});
    canvas.document.undoStack().undo();
    canvas.press(9, 9.3);
    canvas.dragTo(9, 0.95);
    canvas.dragTo(9, 0.95, Qt::ControlModifier);
    canvas.release(9, 0.95, Qt::ControlModifier);
    CHECK(canvas.part("F2").at == GridPoint{9, 1});
}

TEST_CASE("a placed part goes into line with one near, and with Ctrl only to the grid",
          "[canvas][lining-up]") {
    for (const auto& [modifiers, at] :
         {std::pair<Qt::KeyboardModifiers, GridPoint>{{}, {17, 0}}, {Qt::ControlModifier, {17, 1}}}) {
        Canvas canvas(fuseAndLamp());
        canvas.view.place(prototype("fuse"));
        canvas.click(17, 0.65, modifiers);
        REQUIRE(canvas.selection.objects().parts.size() == 1);
        const PartId placed = *canvas.selection.objects().parts.begin();
        CHECK(canvas.document.circuit().parts.at(placed).at == at);
        CHECK(canvas.steps() == 1);
    }
}

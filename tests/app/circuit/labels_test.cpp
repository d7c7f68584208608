#include "app/desktop/circuit/canvas_edits.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/geometry.h"
#include "app/desktop/circuit/labels.h"
#include "app/desktop/circuit/line_surgery.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "core/files/circuit_file.h"
#include "core/parts/document_fields.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <QSignalSpy>
#include <QTest>

#include <cmath>

using namespace pumpwright;

namespace {

const SelectedObjects kRelay{{{"K1"}}, {}, {}};
const SelectedObjects kWire{{}, {{"w1"}}, {}};

/// A fuse at 0,0 and a relay at 12,0, joined by the wire w1.
Circuit fuseAndRelay() {
    return CircuitBuilder().part("fuse", "F1").part("relay", "K1").wire("F1.2", "K1.30").build();
}

StandingLabel labelOf(const Circuit& circuit, const SelectedObjects& one) {
    const auto label = pumpwright::labelOf(layoutOf(circuit), one);
    REQUIRE(label);
    return *label;
}

/// The middle of a label, from its anchor, to the millimetre.
LabelOffset offsetOf(const Circuit& circuit, const SelectedObjects& one) {
    const StandingLabel label = labelOf(circuit, one);
    return nearestOffset(label.rect.center() - label.anchor);
}

Circuit after(Circuit circuit, const Edit& edit) {
    applyEdit(circuit, edit);
    return circuit;
}

/// A canvas in a window, with gestures in scene units.
class Canvas {
public:
    explicit Canvas(const Circuit& circuit = fuseAndRelay()) {
        view.resize(1000, 700);
        view.show();
        document.startNew(circuit);
        QCoreApplication::processEvents();
    }

    QPoint pixel(const QPointF& at) const { return view.mapFromScene(at); }
    /// The middle of a label as it is shown now.
    QPointF middle(const SelectedObjects& one) const { return labelOf(circuit(), one).rect.center(); }

    void press(const QPointF& at) { QTest::mousePress(view.viewport(), Qt::LeftButton, {}, pixel(at)); }
    void release(const QPointF& at) { QTest::mouseRelease(view.viewport(), Qt::LeftButton, {}, pixel(at)); }
    /// QTest::mouseMove forgets the button, so the event is made here.
    void moveTo(const QPointF& to, Qt::MouseButton button) {
        const QPointF at = pixel(to);
        QMouseEvent event(QEvent::MouseMove, at, view.viewport()->mapToGlobal(at), Qt::NoButton, button,
                          Qt::NoModifier);
        QCoreApplication::sendEvent(view.viewport(), &event);
    }
    void drag(const QPointF& from, const QPointF& to) {
        press(from);
        moveTo((from + to) / 2, Qt::LeftButton);
        moveTo(to, Qt::LeftButton);
        release(to);
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) { QTest::keyClick(&view, key, modifiers); }

    const Circuit& circuit() const { return document.circuit(); }
    QString undoText() { return document.undoStack().undoText(); }
    int steps() { return document.undoStack().count(); }

    Document document;
    Selection selection;
    Analysis analysis{document};
    CircuitView view{document, selection, analysis};
};

} // namespace

TEST_CASE("a part's label is dragged to another place in one step, which undo takes back", "[labels]") {
    Canvas canvas;
    const std::string before = circuitText(canvas.circuit());
    const QPointF middle = canvas.middle(kRelay);
    const QPointF to = middle + QPointF(-20, 160);
    canvas.drag(middle, to);
    CHECK(canvas.steps() == 1);
    CHECK(canvas.undoText() == QStringLiteral("Move label of K1"));
    CHECK(canvas.selection.objects() == kRelay);
    CHECK(canvas.circuit().parts.at({"K1"}).at == GridPoint{12, 0});
    CHECK(QLineF(canvas.middle(kRelay), to).length() < 6); // a millimetre and a pixel
    canvas.document.undoStack().undo();
    CHECK(circuitText(canvas.circuit()) == before);
}

TEST_CASE("a wire's label is dragged, and the wire stays as it lies", "[labels]") {
    Canvas canvas;
    const QPolygonF path = layoutOf(canvas.circuit()).wires.at({"w1"}).path;
    const QPointF to = canvas.middle(kWire) + QPointF(40, 90);
    canvas.drag(canvas.middle(kWire), to);
    CHECK(canvas.undoText() == QStringLiteral("Move label of W1"));
    CHECK(QLineF(canvas.middle(kWire), to).length() < 6);
    CHECK(layoutOf(canvas.circuit()).wires.at({"w1"}).path == path);
}

TEST_CASE("a click on a label selects what it names and moves nothing", "[labels]") {
    Canvas canvas;
    for (const SelectedObjects& one : {kRelay, kWire}) {
        canvas.press(canvas.middle(one));
        canvas.release(canvas.middle(one));
        CHECK(canvas.selection.objects() == one);
    }
    CHECK(canvas.steps() == 0);
}

TEST_CASE("Esc in the middle of a drag leaves the label where it was", "[labels]") {
    Canvas canvas;
    const std::string before = circuitText(canvas.circuit());
    const QPointF middle = canvas.middle(kRelay);
    canvas.press(middle);
    canvas.moveTo(middle + QPointF(60, 60), Qt::LeftButton);
    canvas.key(Qt::Key_Escape);
    canvas.moveTo(middle + QPointF(90, 90), Qt::LeftButton);
    canvas.release(middle + QPointF(90, 90));
    CHECK(canvas.steps() == 0);
    CHECK(circuitText(canvas.circuit()) == before);
}

TEST_CASE("a label that a drag brings back to where it was is not moved", "[labels]") {
    Canvas canvas;
    const QPointF middle = canvas.middle(kRelay);
    canvas.press(middle);
    canvas.moveTo(middle + QPointF(60, 60), Qt::LeftButton);
    canvas.moveTo(middle, Qt::LeftButton);
    canvas.release(middle);
    CHECK(canvas.steps() == 0);
}

TEST_CASE("keys move the label of the selected part by millimetres, Return puts it down", "[labels]") {
    Canvas canvas;
    const LabelOffset first = offsetOf(canvas.circuit(), kRelay);
    canvas.selection.select(kRelay);
    canvas.view.moveLabel();
    canvas.key(Qt::Key_Right, Qt::ShiftModifier);
    canvas.key(Qt::Key_Right);
    canvas.key(Qt::Key_Up);
    canvas.key(Qt::Key_Down, Qt::ShiftModifier);
    canvas.key(Qt::Key_Left);
    CHECK(canvas.steps() == 0);
    canvas.key(Qt::Key_Return);
    CHECK(canvas.steps() == 1);
    CHECK(canvas.circuit().parts.at({"K1"}).labelFrom == LabelOffset{first.x_mm + 5, first.y_mm + 4});
    canvas.key(Qt::Key_Right); // the part again
    CHECK(canvas.circuit().parts.at({"K1"}).at == GridPoint{13, 0});
}

TEST_CASE("started as a command, the label follows the pointer until a click or Esc", "[labels]") {
    Canvas canvas;
    canvas.selection.select(kRelay);
    canvas.view.moveLabel();
    canvas.moveTo({100, 200}, Qt::NoButton);
    canvas.key(Qt::Key_Escape);
    CHECK(canvas.steps() == 0);
    canvas.view.moveLabel();
    canvas.moveTo({100, 200}, Qt::NoButton);
    canvas.press({100, 200});
    canvas.release({100, 200});
    CHECK(canvas.steps() == 1);
    CHECK(QLineF(canvas.middle(kRelay), {100, 200}).length() < 6);
    CHECK(canvas.selection.objects() == kRelay);
}

TEST_CASE("without one part or wire that has a label the command says what to select", "[labels]") {
    Canvas canvas;
    QSignalSpy hints(&canvas.view, &CircuitView::hint);
    canvas.selection.select({{{"K1"}, {"F1"}}, {}, {}});
    canvas.view.moveLabel();
    CHECK(hints.last().first().toString() == QStringLiteral("Select one part or wire that has a label."));
    canvas.key(Qt::Key_Right);
    CHECK(canvas.undoText() == QStringLiteral("Move F1, K1"));
}

TEST_CASE("a label goes with an undo in the middle of its move, even if its part does", "[labels]") {
    Canvas canvas{Circuit()};
    canvas.document.apply({"Place K1", {putPart({"K1"}, fuseAndRelay().parts.at({"K1"}))}});
    canvas.selection.select(kRelay);
    canvas.view.moveLabel();
    canvas.key(Qt::Key_Right);
    canvas.document.undoStack().undo();
    canvas.key(Qt::Key_Right);
    canvas.key(Qt::Key_Return);
    CHECK(canvas.circuit().parts.empty());
    CHECK(canvas.steps() == 1);
}

TEST_CASE("a moved label is placed by the program again on command, in one step", "[labels]") {
    Canvas canvas;
    const std::string before = circuitText(canvas.circuit());
    canvas.document.apply(labelling(canvas.circuit(), kRelay, {30, 30}));
    canvas.document.apply(labelling(canvas.circuit(), kWire, {0, 20}));
    const SelectedObjects all = allObjects(canvas.circuit());
    CHECK(hasMovedLabel(canvas.circuit(), all));
    canvas.selection.select(all);
    canvas.view.placeLabels();
    CHECK(canvas.steps() == 3);
    CHECK(circuitText(canvas.circuit()) == before);
    CHECK_FALSE(hasMovedLabel(canvas.circuit(), all));
    canvas.view.placeLabels();
    CHECK(canvas.steps() == 3);
}

TEST_CASE("a label stands where the file says, read back and enlarged for paper too", "[labels]") {
    const Circuit moved = after(fuseAndRelay(), labelling(fuseAndRelay(), kRelay, {-25, 40}));
    const Circuit both = after(moved, labelling(moved, kWire, {3, -50}));
    const Circuit read = parseCircuit(circuitText(both)).value();
    CHECK(offsetOf(read, kRelay) == LabelOffset{-25, 40});
    CHECK(offsetOf(read, kWire) == LabelOffset{3, -50});
    const CircuitLayout paper = withTextScale(layoutOf(read), read, 1.4);
    for (const SelectedObjects& one : {kRelay, kWire}) {
        const StandingLabel label = *pumpwright::labelOf(paper, one);
        CHECK(label.rect.height() > labelOf(read, one).rect.height());
        CHECK(QLineF(label.rect.center(), labelOf(read, one).rect.center()).length() < 0.01);
    }
}

TEST_CASE("what draws beside a moved label is in its part's extent", "[labels]") {
    const Circuit moved = after(fuseAndRelay(), labelling(fuseAndRelay(), kRelay, {-25, 400}));
    CHECK(layoutOf(moved).bounds().contains(labelOf(moved, kRelay).rect));
    CHECK(layoutOf(moved).bounds().height() > layoutOf(fuseAndRelay()).bounds().height() + 1000);
}

TEST_CASE("labels that the program places keep off those that somebody moved", "[labels]") {
    const Circuit plain = CircuitBuilder()
                              .part("fuse", "F1")
                              .part("relay", "K1")
                              .wire("F1.2", "K1.30")
                              .wire("F1.1", "K1.85")
                              .build();
    const StandingLabel wanted = labelOf(plain, kWire);
    const SelectedObjects other{{}, {{"w2"}}, {}};
    const QPointF anchor = labelOf(plain, other).anchor;
    const Circuit moved = after(plain, labelling(plain, other, nearestOffset(wanted.rect.center() - anchor)));
    CHECK(labelOf(moved, other).rect.intersects(wanted.rect));
    CHECK_FALSE(labelOf(moved, kWire).rect.intersects(labelOf(moved, other).rect));
}

TEST_CASE("a moved label goes along with its part and round with it", "[labels]") {
    const Circuit moved = after(fuseAndRelay(), labelling(fuseAndRelay(), kRelay, {30, -10}));
    const auto offset = [](const Circuit& circuit) { return *circuit.parts.at({"K1"}).labelFrom; };
    CHECK(offset(after(moved, movement(moved, kRelay, {4, 4}))) == LabelOffset{30, -10});
    CHECK(offset(after(moved, rotation(moved, kRelay))) == LabelOffset{10, 30});
    CHECK(offset(after(moved, mirroring(moved, kRelay))) == LabelOffset{-30, -10});
    Circuit turned = moved;
    for (int turn = 0; turn < 4; ++turn) {
        applyEdit(turned, rotation(turned, kRelay));
    }
    CHECK(turned == moved);
}

TEST_CASE("the moved label of a wire turns with both its parts, and stays where only one turns", "[labels]") {
    const Circuit moved = after(fuseAndRelay(), labelling(fuseAndRelay(), kWire, {0, 20}));
    const auto offset = [](const Circuit& circuit) { return *circuit.wires.at({"w1"}).labelFrom; };
    CHECK(offset(after(moved, rotation(moved, {{{"F1"}, {"K1"}}, {}, {}}))) == LabelOffset{-20, 0});
    CHECK(offset(after(moved, rotation(moved, kRelay))) == LabelOffset{0, 20});
}

TEST_CASE("the halves of a cut wire have their labels placed by the program", "[labels]") {
    const Circuit moved = after(fuseAndRelay(), labelling(fuseAndRelay(), kWire, {0, 20}));
    const LinePicture wire = layoutOf(moved).wires.at({"w1"});
    const auto place = cutPlace(wire, (wire.path[0] + wire.path[1]) / 2);
    REQUIRE(place);
    Wire branch;
    branch.from = {{"F1"}, "1"};
    const Circuit cut = after(moved, branching(moved, WireId{"w1"}, *place, branch).edit);
    REQUIRE(cut.wires.size() == 3);
    CHECK_FALSE(hasMovedLabel(cut, allObjects(cut)));
}

TEST_CASE("copies have their labels where the originals have them", "[labels]") {
    const Circuit part = after(fuseAndRelay(), labelling(fuseAndRelay(), kRelay, {30, -10}));
    const Circuit moved = after(part, labelling(part, kWire, {0, 20}));
    const SelectedObjects parts{{{"F1"}, {"K1"}}, {}, {}};
    const Addition copies = pasting(moved, fragmentOf(moved, parts), {2, 2});
    const Circuit pasted = after(moved, copies.edit);
    const auto labels = [&](const auto& objects, const auto& ids) {
        std::vector<std::optional<LabelOffset>> found;
        for (const auto& id : ids) {
            found.push_back(objects.at(id).labelFrom);
        }
        return found;
    };
    CHECK(labels(pasted.parts, copies.objects.parts) ==
          std::vector<std::optional<LabelOffset>>{std::nullopt, LabelOffset{30, -10}});
    CHECK(labels(pasted.wires, copies.objects.wires) ==
          std::vector<std::optional<LabelOffset>>{LabelOffset{0, 20}});
}

TEST_CASE("a label goes no farther than the file allows", "[labels]") {
    constexpr int kMost = field::kFarthestLabel_mm;
    CHECK(nearestOffset({1e9, -1e9}) == LabelOffset{kMost, -kMost});
    CHECK(nearestOffset(sceneDistance(LabelOffset{kMost, 1 - kMost})) == LabelOffset{kMost, 1 - kMost});
    CHECK(nearestOffset({kStep / 10 - 0.1, kStep / 10 + 0.1}) == LabelOffset{0, 1});
}

TEST_CASE("from afar, where no label shows, a press on its place means the sheet", "[labels]") {
    Canvas canvas;
    for (int step = 0; step < 20; ++step) {
        canvas.view.zoomOut();
    }
    const QPointF middle = canvas.middle(kRelay);
    canvas.drag(middle, middle + QPointF(0, 400));
    CHECK(canvas.steps() == 0);
}

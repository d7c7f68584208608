#include "core/parts/placement.h"
#include "tests/app/circuit/canvas.h"

#include <QClipboard>
#include <QDropEvent>
#include <QGuiApplication>
#include <QMimeData>
#include <QPushButton>
#include <QScreen>
#include <QScrollBar>
#include <QSignalSpy>
#include <QWheelEvent>

using namespace pumpwright;

TEST_CASE("each click places a part with the next reference, Esc ends", "[canvas]") {
    Canvas canvas;
    canvas.view.place(prototype("relay"));
    CHECK(canvas.view.activity() == CanvasActivity::Place);
    canvas.click(3, 8);
    canvas.click(14, 9);
    canvas.key(Qt::Key_Escape);
    CHECK(canvas.view.activity() == CanvasActivity::Select);
    canvas.click(20, 9);
    REQUIRE(canvas.document.circuit().parts.size() == 6);
    CHECK(canvas.steps() == 2);
    CHECK(canvas.document.undoStack().undoText() == QStringLiteral("Place K3"));
    const auto& parts = canvas.document.circuit().parts;
    CHECK(std::any_of(parts.begin(), parts.end(), [](const auto& entry) {
        return entry.second.reference == "K2" && entry.second.at == GridPoint{3, 8};
    }));
}

TEST_CASE("a part can be turned before it is placed", "[canvas]") {
    Canvas canvas;
    canvas.view.place(prototype("fuse"));
    canvas.moveTo(3, 8);
    canvas.key(Qt::Key_R);
    canvas.view.rotateSelection(); // the menu's command turns the ghost as well
    canvas.key(Qt::Key_M);
    canvas.click(3, 8);
    REQUIRE(canvas.selection.objects().parts.size() == 1);
    const Part& placed = canvas.document.circuit().parts.at(*canvas.selection.objects().parts.begin());
    CHECK(placed.quarterTurns == 2);
    CHECK(placed.mirrored);
    CHECK(canvas.steps() == 1);
}

TEST_CASE("an entry dropped from the Parts drawer is placed where it is dropped", "[canvas]") {
    Canvas canvas;
    Catalogue catalogue;
    catalogue.entries.push_back(
        {"relay-30", "Relay 30 A", "relay", {{"coilResistance_ohm", 85}}, {}, 4.5, "invented"});
    canvas.view.setCatalogue(catalogue);
    QMimeData mime;
    mime.setData(QString::fromLatin1(kCatalogueMimeType), "relay-30");
    const QPoint at = canvas.pixel(5, 9);
    QDragEnterEvent enter(at, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(canvas.view.viewport(), &enter);
    REQUIRE(enter.isAccepted());
    QDragMoveEvent move(at, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(canvas.view.viewport(), &move);
    CHECK(canvas.steps() == 0);
    QDropEvent drop(at, Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(canvas.view.viewport(), &drop);
    REQUIRE(canvas.steps() == 1);
    const Part& placed = canvas.document.circuit().parts.at(*canvas.selection.objects().parts.begin());
    CHECK(placed.at == GridPoint{5, 9});
    CHECK(placed.reference == "K2");
    CHECK(placed.catalogue == "relay-30");
    CHECK(placed.values.at("coilResistance_ohm") == 85);
    CHECK(canvas.view.activity() == CanvasActivity::Select);
}

TEST_CASE("a price of the catalogue goes into a circuit of the same currency only", "[canvas]") {
    Catalogue catalogue;
    catalogue.currency = "EUR";
    Part priced = prototype("fuse");
    priced.price = 4.5;
    for (const auto& [currency, price] : {std::pair<std::string, double>{"EUR", 4.5}, {"GBP", 0}}) {
        CAPTURE(currency);
        Circuit circuit = fuseAndRelay();
        circuit.currency = currency;
        Canvas canvas(circuit);
        canvas.view.setCatalogue(catalogue);
        canvas.view.place(priced);
        canvas.click(3, 8);
        REQUIRE(canvas.selection.objects().parts.size() == 1);
        const PartId placed = *canvas.selection.objects().parts.begin();
        CHECK(canvas.document.circuit().parts.at(placed).price == price);
    }
}

TEST_CASE("an unknown entry is not taken, and one that leaves again changes nothing", "[canvas]") {
    Canvas canvas;
    Catalogue catalogue;
    catalogue.entries.push_back({"relay-30", "Relay 30 A", "relay", {}, {}, 4.5, "invented"});
    canvas.view.setCatalogue(catalogue);
    const std::string before = canvas.bytes();
    QMimeData strange;
    strange.setData(QString::fromLatin1(kCatalogueMimeType), "what is this");
    QDragEnterEvent refused(QPoint(9, 9), Qt::CopyAction, &strange, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(canvas.view.viewport(), &refused);
    CHECK_FALSE(refused.isAccepted());

    QMimeData mime;
    mime.setData(QString::fromLatin1(kCatalogueMimeType), "relay-30");
    QDragEnterEvent enter(QPoint(9, 9), Qt::CopyAction, &mime, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(canvas.view.viewport(), &enter);
    QDragLeaveEvent leave;
    QCoreApplication::sendEvent(canvas.view.viewport(), &leave);
    CHECK(canvas.bytes() == before);
    CHECK(canvas.view.activity() == CanvasActivity::Select);
}

TEST_CASE("two clicks on terminals draw a wire, within the catch radius", "[canvas]") {
    Canvas canvas;
    QSignalSpy hints(&canvas.view, &CircuitView::hint);
    canvas.view.startWire();
    canvas.click(2.3, 0.3);   // F1, 2
    canvas.click(14.2, -2.8); // K1, 30
    REQUIRE(canvas.document.circuit().wires.size() == 1);
    const Wire& wire = canvas.document.circuit().wires.begin()->second;
    CHECK(wire.from == End{{"F1"}, "2"});
    CHECK(wire.to == End{{"K1"}, "30"});
    CHECK(wire.reference == "W1");
    CHECK(wire.bends.empty());
    CHECK(canvas.steps() == 1);
    CHECK(canvas.document.undoStack().undoText() == QStringLiteral("Draw W1"));
    CHECK(canvas.view.activity() == CanvasActivity::Wire);
    CHECK(hints.count() >= 3);
}

TEST_CASE("a drag from a terminal to a terminal draws a wire, then selecting goes on", "[canvas]") {
    Canvas canvas;
    canvas.drag(2, 0, 14, -3);
    REQUIRE(canvas.document.circuit().wires.size() == 1);
    CHECK(canvas.view.activity() == CanvasActivity::Select);
    CHECK(canvas.part("F1").at == GridPoint{0, 0});
}

TEST_CASE("clicks on the empty sheet fix corners, Backspace takes the last one back", "[canvas]") {
    Canvas canvas;
    canvas.view.startWire();
    canvas.click(2, 0);
    canvas.click(5, 7);
    canvas.click(9, 7);
    canvas.key(Qt::Key_Backspace);
    canvas.click(14, -3);
    REQUIRE(canvas.document.circuit().wires.size() == 1);
    CHECK(canvas.document.circuit().wires.begin()->second.bends == std::vector<GridPoint>{{5, 7}});
}

TEST_CASE("wires take terminals and hoses take ports", "[canvas]") {
    Canvas canvas; // C1 at 24,0 with ports at 21 and 27; X1 at 36,0 with ports at 35 and 37
    canvas.view.startHose();
    canvas.click(2, 0);
    canvas.click(27, 0);
    canvas.click(35, 0);
    CHECK(canvas.document.circuit().wires.empty());
    REQUIRE(canvas.document.circuit().hoses.size() == 1);
    CHECK(canvas.document.circuit().hoses.begin()->second.to == End{{"X1"}, "a"});
    canvas.view.startWire();
    canvas.click(27, 0);
    canvas.click(2, 0);
    canvas.click(14, -3);
    REQUIRE(canvas.document.circuit().wires.size() == 1);
    CHECK(canvas.document.circuit().wires.begin()->second.from == End{{"F1"}, "2"});
}

TEST_CASE("a part clicked onto a wire goes into it, and deleting it leaves the wire whole, each in one step",
          "[canvas][surgery]") {
    Canvas canvas(CircuitBuilder().part("fuse", "F1").part("hand-switch", "S1").wire("F1.2", "S1.1").build());
    canvas.view.fit();
    const Circuit before = canvas.document.circuit();
    const GridPoint from = before.parts.at({"F1"}).at;
    const GridPoint to = before.parts.at({"S1"}).at;
    REQUIRE(from.y == to.y);
    canvas.view.place(prototype("fuse"));
    canvas.click((from.x + to.x) / 2.0, from.y);
    canvas.key(Qt::Key_Escape);
    CHECK(canvas.document.undoStack().undoText() == QStringLiteral("Insert F2 into W1"));
    CHECK(canvas.document.circuit().wires.size() == 2);
    canvas.key(Qt::Key_Delete);
    CHECK(canvas.steps() == 2);
    CHECK(canvas.document.circuit().wires == before.wires);
    CHECK(canvas.document.circuit().parts == before.parts);
}

TEST_CASE("a wire that is drawn to another wire ends on a splice there, in one step", "[canvas][surgery]") {
    Canvas canvas(CircuitBuilder()
                      .part("fuse", "F1")
                      .part("hand-switch", "S1")
                      .part("lamp", "P1")
                      .wire("F1.2", "S1.1")
                      .build());
    canvas.view.fit();
    const Circuit& circuit = canvas.document.circuit();
    const GridPoint from = circuit.parts.at({"F1"}).at;
    const GridPoint to = circuit.parts.at({"S1"}).at;
    const Part& lamp = circuit.parts.at({"P1"});
    const GridPoint terminal = lamp.at + turned(lamp, kindOf(lamp).terminals(lamp).front().at);
    canvas.view.startWire();
    canvas.click(terminal.x, terminal.y);
    canvas.click((from.x + to.x) / 2.0, from.y);
    canvas.key(Qt::Key_Escape);
    CHECK(canvas.steps() == 1);
    CHECK(canvas.document.undoStack().undoText() == QStringLiteral("Splice into W1"));
    CHECK(circuit.wires.size() == 3);
    CHECK(circuit.parts.size() == 4);
}

TEST_CASE("a drag moves a part in exactly one step, and undo restores the bytes", "[canvas]") {
    Canvas canvas;
    const std::string before = canvas.bytes();
    canvas.drag(12.6, 0.3, 15.6, 5.3);
    CHECK(canvas.part("K1").at == GridPoint{15, 5});
    CHECK(canvas.steps() == 1);
    CHECK(canvas.document.undoStack().undoText() == QStringLiteral("Move K1"));
    canvas.document.undoStack().undo();
    CHECK(canvas.bytes() == before);
}

TEST_CASE("a drag back to where it began is no step", "[canvas]") {
    Canvas canvas;
    canvas.press(12.6, 0.3);
    canvas.dragTo(16, 4);
    canvas.dragTo(12.6, 0.3);
    canvas.release(12.6, 0.3);
    CHECK(canvas.steps() == 0);
}

TEST_CASE("a click selects, Shift adds and takes away, a click beside clears", "[canvas]") {
    Canvas canvas;
    canvas.click(0, 0.2);
    CHECK(canvas.selection.objects() == SelectedObjects{{{"F1"}}, {}, {}});
    canvas.click(12, 0.5, Qt::ShiftModifier);
    CHECK(canvas.selection.objects().parts.size() == 2);
    canvas.click(0, 0.2, Qt::ShiftModifier);
    CHECK(canvas.selection.objects() == SelectedObjects{{{"K1"}}, {}, {}});
    canvas.click(6, 9);
    CHECK(canvas.selection.objects().empty());
    CHECK(canvas.steps() == 0);
}

TEST_CASE("a rubber band selects what lies inside", "[canvas]") {
    Canvas canvas;
    canvas.drag(-5, -6, 17, 6);
    CHECK(canvas.selection.objects() == SelectedObjects{{{"F1"}, {"K1"}}, {}, {}});
    CHECK(canvas.steps() == 0);
}

TEST_CASE("wires stay on their terminals when a part is rotated, mirrored and moved", "[canvas]") {
    Canvas canvas;
    canvas.view.startWire();
    canvas.click(2, 0);
    canvas.click(14, -3);
    canvas.view.cancel();
    const Wire wire = canvas.document.circuit().wires.begin()->second;
    canvas.selection.select({{{"K1"}}, {}, {}});
    canvas.view.rotateSelection();
    canvas.view.mirrorSelection();
    canvas.view.nudgeSelection(0, 3);
    CHECK(canvas.document.circuit().wires.begin()->second == wire);
    CHECK(canvas.part("K1").mirrored);
    CHECK(canvas.steps() == 4);
}

TEST_CASE("deleting a part takes its wires, and one undo brings all back", "[canvas]") {
    Canvas canvas;
    canvas.drag(2, 0, 14, -3);
    const std::string before = canvas.bytes();
    canvas.click(12, 0.5);
    canvas.key(Qt::Key_Delete);
    CHECK(canvas.document.circuit().parts.size() == 3);
    CHECK(canvas.document.circuit().wires.empty());
    CHECK(canvas.selection.objects().empty());
    CHECK(canvas.steps() == 2);
    canvas.document.undoStack().undo();
    CHECK(canvas.bytes() == before);
}

TEST_CASE("arrow keys nudge the selection, a run of them is one step", "[canvas]") {
    Canvas canvas;
    const std::string before = canvas.bytes();
    canvas.click(12, 0.5);
    canvas.key(Qt::Key_Right);
    canvas.key(Qt::Key_Right);
    canvas.key(Qt::Key_Down, Qt::ShiftModifier);
    CHECK(canvas.part("K1").at == GridPoint{14, 5});
    CHECK(canvas.steps() == 1);
    canvas.document.undoStack().undo();
    CHECK(canvas.bytes() == before);
}

TEST_CASE("copy and paste through the clipboard gives new ids and references", "[canvas]") {
    Canvas canvas;
    canvas.drag(2, 0, 14, -3);
    canvas.selection.select({{{"F1"}, {"K1"}}, {}, {}});
    canvas.view.copySelection();
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    REQUIRE(mime != nullptr);
    CHECK(mime->hasImage());
    CHECK(mime->data(QStringLiteral("image/svg+xml")).contains("<svg"));
    canvas.view.paste();
    const Circuit& circuit = canvas.document.circuit();
    CHECK(circuit.parts.size() == 6);
    CHECK(circuit.wires.size() == 2);
    CHECK(canvas.selection.objects().parts.size() == 2);
    std::set<std::string> references;
    for (const auto& [id, part] : circuit.parts) {
        CHECK(references.insert(part.reference).second);
    }
    CHECK(canvas.steps() == 2);
}

TEST_CASE("the picture of copied parts stays small however far apart they lie", "[canvas]") {
    Circuit circuit = fuseAndRelay();
    circuit.parts.at({"K1"}).at = {5000, 4};
    Canvas canvas(circuit);
    canvas.selection.select({{{"F1"}, {"K1"}}, {}, {}});
    canvas.view.copySelection();
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    REQUIRE(mime != nullptr);
    const auto picture = qvariant_cast<QImage>(mime->imageData());
    CHECK(picture.width() >= 3999);
    CHECK(picture.width() <= 4000);
    CHECK(picture.height() >= 1);
    CHECK(picture.height() <= 100);
    canvas.view.paste();
    CHECK(canvas.document.circuit().parts.size() == 6);
}

TEST_CASE("text on the clipboard that is no fragment is refused with a hint", "[canvas]") {
    Canvas canvas;
    const std::string before = canvas.bytes();
    QSignalSpy hints(&canvas.view, &CircuitView::hint);
    QGuiApplication::clipboard()->setText(QStringLiteral("{}"));
    canvas.view.paste();
    CHECK(hints.count() == 1);
    auto* broken = new QMimeData;
    broken->setData(QStringLiteral("application/x-pumpwright-fragment"), "{\"parts\": [");
    QGuiApplication::clipboard()->setMimeData(broken);
    canvas.view.paste();
    CHECK(hints.count() == 2);
    CHECK(canvas.bytes() == before);
}

TEST_CASE("a wire drawn by a drag that ends nowhere is not there", "[canvas]") {
    Canvas canvas;
    const std::string before = canvas.bytes();
    canvas.drag(2, 0, 6, 6);
    CHECK(canvas.bytes() == before);
    CHECK(canvas.view.activity() == CanvasActivity::Select);
}

TEST_CASE("the wheel zooms at the pointer, and one event never jumps far", "[canvas]") {
    Canvas canvas;
    const QPoint at = canvas.pixel(12, 0);
    const double before = canvas.view.zoom();
    QWheelEvent wheel(at, canvas.view.viewport()->mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(canvas.view.viewport(), &wheel);
    CHECK(canvas.view.zoom() > before * 1.05);
    CHECK(canvas.view.zoom() < before * 1.24);
    CHECK((canvas.pixel(12, 0) - at).manhattanLength() <= 3);
    QWheelEvent wild(at, canvas.view.viewport()->mapToGlobal(at), {}, {0, 12'000}, Qt::NoButton,
                     Qt::NoModifier, Qt::NoScrollPhase, false);
    const double second = canvas.view.zoom();
    QCoreApplication::sendEvent(canvas.view.viewport(), &wild);
    CHECK(canvas.view.zoom() < second * 1.5);
}

TEST_CASE("zoom has limits, and fitting shows everything", "[canvas]") {
    Canvas canvas;
    for (int i = 0; i < 100; ++i) {
        canvas.view.zoomIn();
    }
    CHECK(canvas.view.zoom() <= 8.0);
    for (int i = 0; i < 100; ++i) {
        canvas.view.zoomOut();
    }
    CHECK(canvas.view.zoom() >= 0.05);
    canvas.view.zoomToActualSize();
    CHECK(canvas.view.zoom() == Approx(1.0));
    canvas.view.fit();
    CHECK(canvas.view.viewport()->rect().contains(canvas.pixel(-2, 0)));
    CHECK(canvas.view.viewport()->rect().contains(canvas.pixel(37, 0)));
}

TEST_CASE("a middle drag pans by as many pixels as the pointer moves", "[canvas]") {
    Canvas canvas;
    const QPoint before = canvas.pixel(0, 0);
    QTest::mousePress(canvas.view.viewport(), Qt::MiddleButton, {}, {300, 300});
    QMouseEvent move(QEvent::MouseMove, QPointF(340, 250),
                     canvas.view.viewport()->mapToGlobal(QPointF(340, 250)), Qt::NoButton, Qt::MiddleButton,
                     Qt::NoModifier);
    QCoreApplication::sendEvent(canvas.view.viewport(), &move);
    QTest::mouseRelease(canvas.view.viewport(), Qt::MiddleButton, {}, {340, 250});
    CHECK((canvas.pixel(0, 0) - before - QPoint(40, -50)).manhattanLength() <= 2);
    CHECK(canvas.steps() == 0);
}

TEST_CASE("what scrolling and scrubbing leave on the screen is what painting it all gives", "[canvas]") {
    Canvas canvas(CircuitBuilder()
                      .part("supply", "G1")
                      .part("hand-switch", "S1", {}, {{"atStart", "on"}})
                      .part("lamp", "P1")
                      .wire("G1.30", "S1.1")
                      .wire("S1.2", "P1.1")
                      .wire("P1.2", "G1.31")
                      .build());
    REQUIRE(QTest::qWaitFor([&] { return !canvas.analysis.isRunning() && canvas.analysis.drive(); }, 60000));
    const auto seen = [&] {
        QCoreApplication::processEvents();
        return canvas.view.screen()->grabWindow(canvas.view.winId()).toImage();
    };
    const auto isWhole = [&] {
        const QImage left = seen();
        canvas.view.viewport()->update();
        return !left.isNull() && left == seen();
    };
    const QImage before = seen();
    canvas.view.setFocus();
    CHECK(isWhole());
    canvas.key(Qt::Key_Left);
    canvas.key(Qt::Key_Down);
    CHECK(isWhole());
    CHECK(seen() != before);
    canvas.analysis.setCursor(canvas.analysis.drive()->recording.duration_s / 2);
    CHECK(isWhole());
    canvas.selection.select({{PartId{"P1"}}, {}, {}});
    CHECK(isWhole());
    canvas.view.zoomOut();
    canvas.key(Qt::Key_Right);
    CHECK(isWhole());
}

TEST_CASE("showing an object from a panel brings it into view", "[canvas]") {
    Canvas canvas;
    for (int i = 0; i < 8; ++i) {
        canvas.view.zoomIn();
    }
    canvas.selection.show({{{"X1"}}, {}, {}});
    CHECK(canvas.view.viewport()->rect().contains(canvas.pixel(36, 0)));
    canvas.selection.show({{{"F1"}}, {}, {}});
    CHECK(canvas.view.viewport()->rect().contains(canvas.pixel(0, 0)));
}

TEST_CASE("the empty canvas offers a sample and a file, and the offer goes when parts come", "[canvas]") {
    Canvas canvas{Circuit{}};
    const auto buttons = canvas.view.findChildren<QPushButton*>();
    REQUIRE(buttons.size() == 2);
    QSignalSpy samples(&canvas.view, &CircuitView::sampleRequested);
    QSignalSpy files(&canvas.view, &CircuitView::fileRequested);
    for (QPushButton* button : buttons) {
        CHECK(button->isVisible());
        CHECK(button->height() >= 24);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    CHECK(samples.count() == 1);
    CHECK(files.count() == 1);
    canvas.view.place(prototype("lamp"));
    CHECK_FALSE(buttons.front()->isVisible());
    canvas.click(1, 1);
    canvas.view.cancel();
    CHECK_FALSE(buttons.front()->isVisible());
    canvas.document.undoStack().undo();
    CHECK(buttons.front()->isVisible());
}

TEST_CASE("with keys alone a part is placed and a wire is drawn", "[canvas]") {
    Canvas canvas;
    canvas.selection.select({});
    canvas.view.place(prototype("lamp"));
    canvas.key(Qt::Key_Down, Qt::ShiftModifier);
    canvas.key(Qt::Key_Return);
    canvas.key(Qt::Key_Escape);
    CHECK(canvas.document.circuit().parts.size() == 5);
    CHECK(canvas.steps() == 1);

    canvas.key(Qt::Key_Right, Qt::ControlModifier);
    CHECK(canvas.selection.objects().parts.size() == 1);
    QSignalSpy nameplates(&canvas.view, &CircuitView::nameplateRequested);
    canvas.key(Qt::Key_Return);
    CHECK(nameplates.count() == 1);
}

TEST_CASE("the canvas follows the window from light to dark", "[canvas]") {
    Canvas canvas;
    const auto lightness = [&] { return canvas.view.grab().toImage().pixelColor(8, 8).lightness(); };
    CHECK(lightness() > 200);
    canvas.view.setPalette(QPalette(QColor(40, 42, 46)));
    CHECK(lightness() < 80);
}

#include "app/desktop/chart/drive_chart.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/file_actions.h"
#include "app/desktop/panels/nameplate.h"
#include "app/desktop/panels/parts_drawer.h"
#include "app/desktop/panels/quantity_field.h"
#include "core/files/circuit_file.h"
#include "core/parts/part_kind.h"
#include "tests/app/window/bench.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QImage>
#include <QLayout>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QProgressDialog>
#include <QPushButton>

using namespace pumpwright;

namespace {

QAction* actionNamed(const MainWindow& window, const QString& text) {
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->text().remove(QLatin1Char('&')) == text) {
            return action;
        }
    }
    return nullptr;
}

/// Places what the search finds first, with a click at this place of the canvas.
void placePart(WindowBench& bench, const QString& search, QPoint at) {
    auto* drawer = bench.window.findChild<PartsDrawer*>();
    drawer->search().setFocus();
    drawer->search().clear();
    QTest::keyClicks(&drawer->search(), search);
    QTest::keyClick(&drawer->search(), Qt::Key_Return);
    QWidget* canvas = bench.window.circuitView().viewport();
    QTest::mouseMove(canvas, at);
    QTest::mouseClick(canvas, Qt::LeftButton, {}, at);
    QTest::keyClick(&bench.window.circuitView(), Qt::Key_Escape);
}

/// Where a terminal is on the canvas: a grid step is 20 scene units.
QPoint pointOf(WindowBench& bench, const char* reference, const std::string& terminal) {
    for (const auto& [id, part] : bench.window.document().circuit().parts) {
        if (part.reference != reference) {
            continue;
        }
        for (const TerminalSpec& spec : kindOf(part).terminals(part)) {
            if (spec.name == terminal) {
                return bench.window.circuitView().mapFromScene(20.0 * (part.at.x + spec.at.x),
                                                               20.0 * (part.at.y + spec.at.y));
            }
        }
    }
    FAIL("no such terminal");
    return {};
}

} // namespace

TEST_CASE("place, wire, edit and undo by hand; open, save and print a sample", "[window][whole-job]") {
    WindowBench bench;
    QWidget* canvas = bench.window.circuitView().viewport();
    placePart(bench, QStringLiteral("fuse 15"), {120, 120});
    placePart(bench, QStringLiteral("relay make"), {320, 120});
    const Circuit& circuit = bench.window.document().circuit();
    REQUIRE(circuit.parts.size() == 2);

    actionNamed(bench.window, QStringLiteral("Wire"))->trigger();
    for (const QPoint point : {pointOf(bench, "F1", "2"), pointOf(bench, "K1", "30")}) {
        QTest::mouseMove(canvas, point);
        QTest::mouseClick(canvas, Qt::LeftButton, {}, point);
    }
    REQUIRE(circuit.wires.size() == 1);
    QTest::keyClick(&bench.window.circuitView(), Qt::Key_Escape);

    bench.window.selection().select({{}, {circuit.wires.begin()->first}, {}});
    auto* area =
        qobject_cast<QuantityField*>(bench.window.findChild<Nameplate*>()->field(QStringLiteral("area_m2")));
    REQUIRE(area != nullptr);
    area->editor().setFocus();
    area->editor().selectAll();
    QTest::keyClicks(&area->editor(), QStringLiteral("14 AWG"));
    QTest::keyClick(&area->editor(), Qt::Key_Return);
    // ASTM B258: 14 AWG is 2.081 mm²
    CHECK(circuit.wires.begin()->second.area_m2 == Approx(2.081e-6).epsilon(1e-3));

    const int steps = bench.window.document().undoStack().count();
    CHECK(steps == 4);
    bench.keepPicture(QStringLiteral("drawn-by-hand.png"));
    QAction* undo = bench.window.document().undoStack().createUndoAction(&bench.window);
    for (int step = 0; step < steps; ++step) {
        undo->trigger();
    }
    CHECK(circuit.parts.empty());
    CHECK_FALSE(bench.window.isWindowModified());

    REQUIRE(bench.window.openSample(QStringLiteral("samples/put-right.pumpwright")));
    bench.waitForAnalysis();
    bench.keepPicture(QStringLiteral("sample.png"));
    bench.dialogs->path = bench.file("van.pumpwright");
    actionNamed(bench.window, QStringLiteral("Save"))->trigger();
    REQUIRE(readCircuit(bench.dialogs->path.toStdString()));

    const Circuit saved = circuit;
    actionNamed(bench.window, QStringLiteral("New"))->trigger();
    REQUIRE(circuit.parts.empty());
    actionNamed(bench.window, QStringLiteral("Open…"))->trigger();
    CHECK(circuit == saved);
    bench.waitForAnalysis();

    bench.dialogs->path = bench.file("van.pdf");
    actionNamed(bench.window, QStringLiteral("Wiring sheet as PDF…"))->trigger();
    QFile pdf(bench.dialogs->path);
    REQUIRE(QTest::qWaitFor([&] { return pdf.exists(); }, 60000));
    REQUIRE(pdf.open(QIODevice::ReadOnly));
    CHECK(pdf.read(5) == "%PDF-");
    CHECK(pdf.size() > 20'000);

    bench.dialogs->path = bench.file("van.png");
    actionNamed(bench.window, QStringLiteral("Drive chart…"))->trigger();
    CHECK(QImage(bench.dialogs->path).width() > 600);

    bench.dialogs->path = bench.file("van.svg");
    actionNamed(bench.window, QStringLiteral("Schematic…"))->trigger();
    QFile svg(bench.dialogs->path);
    REQUIRE(svg.open(QIODevice::ReadOnly));
    CHECK(svg.readAll().contains("<svg"));
    CHECK(bench.dialogs->errors.isEmpty());
}

TEST_CASE("a sheet asked for while the drive runs waits for the new findings", "[window][sheet]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(QStringLiteral("samples/first-try.pumpwright")));
    REQUIRE(bench.window.analysis().isRunning());
    bench.dialogs->path = bench.file("early.pdf");
    actionNamed(bench.window, QStringLiteral("Wiring sheet as PDF…"))->trigger();
    CHECK_FALSE(QFile::exists(bench.dialogs->path));
    bench.waitForAnalysis();
    REQUIRE(QTest::qWaitFor([&] { return bench.window.findChild<QProgressDialog*>() != nullptr; }, 60000));
    CHECK_FALSE(QFile::exists(bench.dialogs->path));
    bench.window.findChild<QProgressDialog*>()
        ->findChild<QPushButton*>()
        ->click(); // all breakdowns would take long
    CHECK(QTest::qWaitFor([&] { return QFile::exists(bench.dialogs->path); }, 60000));
}

TEST_CASE("the sheet's preview opens and closes", "[window][sheet]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(QStringLiteral("samples/put-right.pumpwright")));
    bench.waitForAnalysis();
    actionNamed(bench.window, QStringLiteral("Wiring sheet…"))->trigger();
    QWidget* preview = nullptr;
    REQUIRE(QTest::qWaitFor(
        [&] {
            preview = QApplication::activeModalWidget();
            return preview != nullptr;
        },
        60000));
    CHECK(preview->windowTitle().contains(QStringLiteral("Wiring sheet")));
    preview->close();
    CHECK(bench.dialogs->errors.isEmpty());
}

TEST_CASE("nothing in the window overlaps or is cut off at 1024 by 640", "[window][layout]") {
    WindowBench bench;
    bench.preferences.setCautionsUnderstood();
    bench.window.resize(1024, 640);
    REQUIRE(bench.window.openSample(QStringLiteral("samples/first-try.pumpwright")));
    bench.waitForAnalysis();
    QTest::qWait(50);
    CHECK(bench.window.size() == QSize(1024, 640));
    for (const QWidget* parent : bench.window.findChildren<QWidget*>()) {
        if (!parent->isVisibleTo(&bench.window) || !parent->layout()) {
            continue;
        }
        QList<const QWidget*> children;
        for (const QWidget* child : parent->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
            if (child->isVisibleTo(&bench.window) && parent->layout()->indexOf(child) >= 0) {
                children << child;
            }
        }
        for (qsizetype i = 0; i < children.size(); ++i) {
            INFO(parent->metaObject()->className() << ": " << children[i]->metaObject()->className());
            CHECK(parent->rect().contains(children[i]->geometry()));
            for (qsizetype j = i + 1; j < children.size(); ++j) {
                CHECK_FALSE(children[i]->geometry().intersects(children[j]->geometry()));
            }
        }
    }
}

#include "app/desktop/cautions_bar.h"
#include "app/desktop/chart/drive_chart.h"
#include "app/desktop/chart/lane_plot.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/file_actions.h"
#include "app/desktop/find_field.h"
#include "app/desktop/panels/drive_plan_editor.h"
#include "app/desktop/panels/findings_panel.h"
#include "app/desktop/panels/parts_drawer.h"
#include "app/desktop/panels/plan_table_model.h"
#include "app/desktop/twice_open_bar.h"
#include "core/files/circuit_file.h"
#include "tests/app/window/bench.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QTableView>
#include <QTabWidget>
#include <QTreeView>

using namespace pumpwright;

namespace {

const QString kFirstTry = QStringLiteral("samples/first-try.pumpwright");

/// What a screen reader would read: the set name, else what Qt derives from text, title or label.
QString accessibleName(const QWidget& widget) {
    const QAccessibleInterface* access = QAccessible::queryAccessibleInterface(const_cast<QWidget*>(&widget));
    return access ? access->text(QAccessible::Name) : QString();
}

bool isControl(const QWidget& widget) {
    // Qt's own inner parts have no name of their own: buttons of a tool bar's overflow, scroll areas'
    // corners.
    if (widget.objectName().startsWith(QStringLiteral("qt_"))) {
        return false;
    }
    return qobject_cast<const QAbstractButton*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QAbstractItemView*>(&widget) ||
           widget.focusPolicy() != Qt::NoFocus;
}

QByteArray textOf(const Circuit& circuit) {
    return QByteArray::fromStdString(circuitText(circuit));
}

} // namespace

TEST_CASE("every control of the window has an accessible name", "[window][accessible]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    bench.window.selection().select({{bench.window.document().circuit().parts.begin()->first}, {}, {}});
    QStringList nameless;
    int controls = 0;
    for (const QWidget* widget : bench.window.findChildren<QWidget*>()) {
        if (!isControl(*widget) || !widget->isVisibleTo(&bench.window)) {
            continue;
        }
        ++controls;
        if (accessibleName(*widget).trimmed().isEmpty()) {
            nameless << QStringLiteral("%1 %2 in %3")
                            .arg(QLatin1String(widget->metaObject()->className()), widget->objectName(),
                                 QLatin1String(widget->parentWidget()->metaObject()->className()));
        }
    }
    CHECK(controls > 30);
    INFO(nameless.join(QLatin1Char('\n')).toStdString());
    CHECK(nameless.isEmpty());
}

TEST_CASE("a sample opens with findings and a drive, and saving it asks where", "[window][file]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    CHECK(bench.window.analysis().findings().size() >= 5);
    REQUIRE(bench.window.analysis().drive());
    CHECK(bench.window.document().path().isEmpty());
    bench.dialogs->path = bench.file("mine.pumpwright");
    REQUIRE(bench.window.files().save());
    const auto saved = readCircuit(bench.dialogs->path.toStdString());
    REQUIRE(saved);
    CHECK(textOf(*saved) == textOf(bench.window.document().circuit()));
    CHECK(bench.window.windowTitle().startsWith(QStringLiteral("mine[*]")));
    CHECK(bench.preferences.recentFiles() == QStringList{bench.dialogs->path});
}

TEST_CASE("a file that can't be read says so once and leaves the open circuit as it was", "[window][file]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    const QByteArray before = textOf(bench.window.document().circuit());
    const QString bad = bench.file("bad.pumpwright");
    QFile file(bad);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("{\"pumpwright\": 1,\n \"parts\": [}");
    file.close();

    CHECK_FALSE(bench.window.open(bad));
    REQUIRE(bench.dialogs->errors.size() == 1);
    CHECK(bench.dialogs->errors.front().code == ErrorCode::NotJson);
    CHECK(placeText(bench.dialogs->errors.front().place).contains(QStringLiteral("bad.pumpwright")));
    CHECK(textOf(bench.window.document().circuit()) == before);

    CHECK_FALSE(bench.window.open(bench.file("missing.pumpwright")));
    CHECK(bench.dialogs->errors.back().code == ErrorCode::FileUnreadable);
    CHECK(textOf(bench.window.document().circuit()) == before);
}

TEST_CASE("closing with changes asks, and only an answer to leave closes", "[window][file]") {
    WindowBench bench;
    bench.window.document().apply({"Rename", {replaceTitle(TitleBlock{"Van", "", "", "", "", "", "", ""})}});
    REQUIRE(bench.window.isWindowModified());
    bench.dialogs->unsaved = UnsavedAnswer::Cancel;
    CHECK_FALSE(bench.window.close());
    CHECK(bench.dialogs->unsavedAsked == 1);

    bench.dialogs->unsaved = UnsavedAnswer::Save;
    bench.dialogs->path = QString(); // gives up in the file dialog
    CHECK_FALSE(bench.window.close());
    bench.dialogs->path = bench.file("van.pumpwright");
    CHECK(bench.window.close());
    CHECK(QFile::exists(bench.dialogs->path));
}

TEST_CASE("the cautions are there at the first start, stay until understood, and come back from Help",
          "[window][cautions]") {
    WindowBench bench;
    auto* bar = bench.window.findChild<CautionsBar*>();
    REQUIRE(bar != nullptr);
    CHECK(bar->isVisible());
    QTest::mouseClick(bar->findChild<QPushButton*>(), Qt::LeftButton);
    CHECK_FALSE(bar->isVisible());
    CHECK(bench.preferences.cautionsUnderstood());

    MainWindow second(smallCatalogue(), bench.preferences, std::make_unique<ToldDialogs>());
    second.show();
    auto* secondBar = second.findChild<CautionsBar*>();
    CHECK_FALSE(secondBar->isVisible());
    const auto actions = second.findChild<QMenuBar*>()->actions().back()->menu()->actions();
    const auto cautions = std::find_if(actions.begin(), actions.end(), [](const QAction* action) {
        return action->text().contains(QStringLiteral("Cautions"));
    });
    REQUIRE(cautions != actions.end());
    (*cautions)->trigger();
    CHECK(secondBar->isVisible());
}

TEST_CASE("choosing a finding selects what it is about", "[window][findings]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    auto* panel = bench.window.findChild<FindingsPanel*>();
    QListView& list = panel->list();
    QSignalSpy asked(&bench.window.selection(), &Selection::showRequested);
    list.setCurrentIndex(list.model()->index(0, 0));
    const Finding& first = bench.window.analysis().findings().front();
    const SelectedObjects& selected = bench.window.selection().objects();
    CHECK(selected.parts == std::set<PartId>(first.parts.begin(), first.parts.end()));
    CHECK(selected.wires == std::set<WireId>(first.wires.begin(), first.wires.end()));
    CHECK(asked.count() >= 1);
}

TEST_CASE("a remedy is one click, keeps where parts were moved since, and is one step to undo",
          "[window][findings]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    auto* panel = bench.window.findChild<FindingsPanel*>();
    const auto& findings = bench.window.analysis().findings();
    const auto coil = std::find_if(findings.begin(), findings.end(),
                                   [](const Finding& one) { return one.rule == "coil-without-suppression"; });
    REQUIRE(coil != findings.end());
    REQUIRE_FALSE(coil->parts.empty());
    const PartId relay = coil->parts.front();
    const int row = static_cast<int>(coil - findings.begin());

    Part moved = bench.window.document().circuit().parts.at(relay);
    moved.at.x += 3;
    bench.window.document().apply({"Move", {putPart(relay, moved)}});
    bench.waitForAnalysis();
    const QByteArray before = textOf(bench.window.document().circuit());
    const int steps = bench.window.document().undoStack().count();

    panel->list().setCurrentIndex(panel->list().model()->index(row, 0));
    QPushButton* apply = nullptr;
    for (QPushButton* button : panel->findChildren<QPushButton*>(QStringLiteral("applyRemedy"))) {
        if (button->isVisibleTo(panel)) {
            apply = button;
            break;
        }
    }
    REQUIRE(apply != nullptr);
    REQUIRE(apply->isEnabled());
    apply->click();
    CHECK(bench.window.document().undoStack().count() == steps + 1);
    CHECK(bench.window.document().circuit().parts.at(relay).at == moved.at);
    CHECK(textOf(bench.window.document().circuit()) != before);
    bench.waitForAnalysis();
    const auto& after = bench.window.analysis().findings();
    CHECK(std::none_of(after.begin(), after.end(), [&](const Finding& one) {
        return one.rule == "coil-without-suppression" && one.parts.front() == relay;
    }));
    bench.window.document().undoStack().undo();
    CHECK(textOf(bench.window.document().circuit()) == before);
}

TEST_CASE("a waiver needs a reason and initials, goes into the circuit, and can be taken back",
          "[window][findings]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    auto* panel = bench.window.findChild<FindingsPanel*>();
    panel->list().setCurrentIndex(panel->list().model()->index(0, 0));
    panel->findChild<QPushButton*>(QStringLiteral("openWaiver"))->click();
    auto* waive = panel->findChild<QPushButton*>(QStringLiteral("waive"));
    CHECK_FALSE(waive->isEnabled());
    for (QLineEdit* field : panel->findChildren<QLineEdit*>()) {
        if (field->isVisibleTo(panel)) {
            QTest::keyClicks(field, QStringLiteral("AB 12"));
        }
    }
    REQUIRE(waive->isEnabled());
    waive->click();
    REQUIRE(bench.window.document().circuit().waivers.size() == 1);
    CHECK(bench.window.document().circuit().waivers.front().initials == "AB 12");
    bench.waitForAnalysis();
    bench.window.document().undoStack().undo();
    CHECK(bench.window.document().circuit().waivers.empty());
}

TEST_CASE("an edit of the drive plan simulates anew", "[window][plan]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    const auto before = bench.window.analysis().drive();
    auto* plan = bench.window.findChild<DrivePlanEditor*>();
    QAbstractItemModel& presses = plan->presses().model();
    REQUIRE(presses.rowCount() > 0);
    CHECK(presses.setData(presses.index(0, 2), QStringLiteral("222 N"), Qt::EditRole));
    CHECK(bench.window.document().circuit().plan.presses.front().force_N == Approx(222));
    CHECK(bench.window.analysis().isRunning());
    bench.waitForAnalysis();
    CHECK(bench.window.analysis().drive() != before);
}

TEST_CASE("the chart's cursor is the analysis's cursor", "[window][chart]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    auto* chart = bench.window.findChild<DriveChart*>();
    QSignalSpy moved(&bench.window.analysis(), &Analysis::cursorMoved);
    QTest::keyClick(&chart->lanes(), Qt::Key_End);
    CHECK(moved.count() == 1);
    CHECK(bench.window.analysis().cursor_s() ==
          Approx(bench.window.analysis().drive()->recording.duration_s));
    chart->playback().goToEventBefore();
    CHECK(bench.window.analysis().cursor_s() < bench.window.analysis().drive()->recording.duration_s);
}

TEST_CASE("a row of the event list brings the cursor there, and the list follows the cursor",
          "[window][chart]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    bench.waitForAnalysis();
    auto* chart = bench.window.findChild<DriveChart*>();
    const auto& events = bench.window.analysis().drive()->recording.events;
    chart->playback().goToNextEvent();
    auto* tabs = chart->findChild<QTabWidget*>();
    tabs->setCurrentIndex(1);
    auto* list = qobject_cast<QTableView*>(tabs->currentWidget());
    REQUIRE(list);
    CHECK(list->currentIndex().isValid());
    list->setFocus();
    QTest::keyClick(list, Qt::Key_Down);
    const int row = list->currentIndex().row();
    CHECK(bench.window.analysis().cursor_s() == events[static_cast<std::size_t>(row)].time_s);
    chart->setMark();
    CHECK(chart->mark_s() == bench.window.analysis().cursor_s());
    chart->removeMark();
    CHECK_FALSE(chart->mark_s());
}

TEST_CASE("a second window with the same file says so when it opens it, not when it saves",
          "[window][files]") {
    WindowBench bench;
    const QString path = bench.folder.filePath(QStringLiteral("van.pumpwright"));
    REQUIRE(QFile::copy(kFirstTry, path));
    MainWindow other(smallCatalogue(), bench.preferences, std::make_unique<ToldDialogs>());
    other.show();
    REQUIRE(bench.window.open(path));
    auto* bar = other.findChild<TwiceOpenBar*>();
    CHECK_FALSE(bar->isVisible());
    REQUIRE(other.open(path));
    CHECK(bar->isVisible());
    CHECK_FALSE(bench.window.findChild<TwiceOpenBar*>()->isVisible());
    REQUIRE(other.openSample(kFirstTry));
    CHECK_FALSE(bar->isVisible());
}

TEST_CASE("what is typed into the find field is selected, Return goes on", "[window][find]") {
    WindowBench bench;
    REQUIRE(bench.window.openSample(kFirstTry));
    auto* find = bench.window.findChild<FindField*>();
    QTest::keyClicks(&find->field(), QStringLiteral("K1"));
    REQUIRE(bench.window.selection().objects().parts.size() == 1);
    CHECK(bench.window.document()
              .circuit()
              .parts.at(*bench.window.selection().objects().parts.begin())
              .reference == "K1");
    CHECK(find->state().startsWith(QStringLiteral("1 of ")));
    find->field().clear();
    QTest::keyClicks(&find->field(), QStringLiteral("ground"));
    const SelectedObjects first = bench.window.selection().objects();
    QTest::keyClick(&find->field(), Qt::Key_Return);
    CHECK_FALSE(bench.window.selection().objects() == first);
    QTest::keyClick(&find->field(), Qt::Key_Return, Qt::ShiftModifier);
    CHECK(bench.window.selection().objects() == first);
    QTest::keyClicks(&find->field(), QStringLiteral(" nowhere"));
    CHECK(find->state() == QStringLiteral("nothing found"));
}

TEST_CASE("a search chooses the part that is named so before one whose note holds the number",
          "[window][parts]") {
    Catalogue catalogue = smallCatalogue();
    catalogue.entries.push_back({"fuse-3", "Blade fuse 3 A", "fuse", {{"rating_A", 3}}, {}, 0.4, "page 10"});
    catalogue.entries.push_back(
        {"fuse-10", "Blade fuse 10 A", "fuse", {{"rating_A", 10}}, {}, 0.4, "page 1"});
    PartsDrawer drawer(catalogue);
    QSignalSpy placed(&drawer, &PartsDrawer::placeRequested);
    QTest::keyClicks(&drawer.search(), QStringLiteral("fuse 10"));
    QTest::keyClick(&drawer.search(), Qt::Key_Return);
    REQUIRE(placed.count() == 1);
    CHECK(placed.front().front().value<Part>().catalogue == "fuse-10");
}

TEST_CASE("a search in the Parts drawer and Return put the part on the pointer", "[window][parts]") {
    WindowBench bench;
    auto* drawer = bench.window.findChild<PartsDrawer*>();
    QTest::keyClicks(&drawer->search(), QStringLiteral("relay make"));
    QTest::keyClick(&drawer->search(), Qt::Key_Return);
    CHECK(bench.window.circuitView().activity() == CanvasActivity::Place);
    QTest::mouseMove(bench.window.circuitView().viewport(), {200, 150});
    QTest::mouseClick(bench.window.circuitView().viewport(), Qt::LeftButton, {}, {200, 150});
    REQUIRE(bench.window.document().circuit().parts.size() == 1);
    const Part& part = bench.window.document().circuit().parts.begin()->second;
    CHECK(part.reference == "K1");
    CHECK(part.catalogue == "relay-plain");
    CHECK(part.price == Approx(4.5));
}

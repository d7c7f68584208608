#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/palette.h"
#include "app/desktop/error_bar.h"
#include "app/desktop/file_actions.h"
#include "app/desktop/handbook_window.h"
#include "app/desktop/panels/hand_panel.h"
#include "app/desktop/panels/vacuum_gauge.h"
#include "app/desktop/preferences_window.h"
#include "app/desktop/running_program.h"
#include "app/desktop/theme.h"
#include "app/desktop/toast.h"
#include "app/desktop/windows.h"
#include "core/files/circuit_file.h"
#include "tests/app/window/bench.h"
#include "tests/support/circuit_builder.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDockWidget>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QTextBlock>
#include <QTextBrowser>

#include <thread>

using namespace pumpwright;

namespace {

Circuit switchAndBooster() {
    return CircuitBuilder().part("hand-switch", "S1").part("booster", "A1").build();
}

template <class Widget>
Widget* named(QWidget& in, const QString& accessibleName) {
    for (Widget* widget : in.findChildren<Widget*>()) {
        if (widget->accessibleName() == accessibleName || widget->objectName() == accessibleName) {
            return widget;
        }
    }
    return nullptr;
}

QPushButton* button(QWidget& in, const QString& text) {
    for (QPushButton* one : in.findChildren<QPushButton*>()) {
        if (one->text() == text) {
            return one;
        }
    }
    return nullptr;
}

void choose(QComboBox& box, const QString& value) {
    box.setCurrentIndex(box.findData(value));
    Q_EMIT box.activated(box.currentIndex());
}

} // namespace

TEST_CASE("the circuit is tried by hand from its panel, and what was done becomes the drive plan",
          "[window][hand]") {
    WindowBench bench;
    bench.window.document().startNew(switchAndBooster());
    auto* action = bench.window.findChild<QAction*>(QStringLiteral("tryByHand"));
    REQUIRE(action != nullptr);
    action->trigger();
    HandOperation& hand = bench.window.handOperation();
    REQUIRE(hand.isOn());
    CHECK(action->isChecked());
    auto* panel = bench.window.findChild<HandPanel*>();
    REQUIRE(panel != nullptr);
    auto* box = panel->findChild<QCheckBox*>(QStringLiteral("S1"));
    REQUIRE(box != nullptr);
    box->click();
    CHECK(hand.isSwitchOn({"S1"}));
    button(*panel, QStringLiteral("Press the pedal"))->click();
    CHECK(hand.isPedalPressed());
    REQUIRE(QTest::qWaitFor([&] { return hand.time_s() > 0.4; }, 20000));
    bench.keepPicture(QStringLiteral("window-by-hand.png"));
    button(*panel, QStringLiteral("Release the pedal"))->click();
    REQUIRE(QTest::qWaitFor([&] { return hand.plan().presses.size() == 1; }, 20000));
    button(*panel, QStringLiteral("Keep as drive plan"))->click();
    CHECK_FALSE(hand.isOn());
    CHECK_FALSE(action->isChecked());
    const DrivePlan& plan = bench.window.document().circuit().plan;
    CHECK(plan.presses.size() == 1);
    CHECK(plan.switchMoves.size() == 1);
    CHECK(bench.window.document().undoStack().count() == 1);
}

TEST_CASE("the gauge reads the booster's vacuum in both units", "[window][gauge]") {
    VacuumGauge gauge;
    CHECK(gauge.readout() == QStringLiteral("–"));
    gauge.showVacuum(62'030);
    CHECK(gauge.readout() == QStringLiteral("62.0 kPa (18.3 inHg)"));
    CHECK(gauge.accessibleDescription() == gauge.readout());
    ShownUnits units;
    units.vacuum = "inHg";
    units.secondVacuum = "kPa";
    gauge.setUnits(units);
    CHECK(gauge.readout() == QStringLiteral("18.3 inHg (62.0 kPa)"));
}

TEST_CASE("what is preferred counts at once and in the next window", "[window][preferences]") {
    WindowBench bench;
    PreferencesWindow window(bench.preferences);
    window.show();
    CHECK_FALSE(window.isModal());
    choose(*named<QComboBox>(window, QStringLiteral("Vacuum")), QStringLiteral("inHg"));
    choose(*named<QComboBox>(window, QStringLiteral("Wire sizes")), QStringLiteral("AWG"));
    choose(*named<QComboBox>(window, QStringLiteral("Colour")), QStringLiteral("RD"));
    choose(*named<QComboBox>(window, QStringLiteral("A mouse wheel")), QStringLiteral("scrolls"));
    auto* currency = named<QLineEdit>(window, QStringLiteral("Currency"));
    REQUIRE(currency != nullptr);
    currency->clear();
    QTest::keyClicks(currency, QStringLiteral("gbp"));
    const Preferences again(bench.file("settings.ini"));
    CHECK(again.units().vacuum == "inHg");
    CHECK(again.units().secondVacuum == "kPa");
    CHECK(again.units().wire == "AWG");
    CHECK(again.newWire().colour == "RD");
    CHECK(again.wheelScrolls());
    CHECK(again.newCircuit().currency == "GBP");
    bench.keepPicture(QStringLiteral("window-preferences.png"));

    bench.window.files().newCircuit().trigger();
    CHECK(bench.window.document().circuit().currency == "GBP");
    button(window, QStringLiteral("Back to standard"))->click();
    CHECK(bench.preferences.units() == ShownUnits{});
    CHECK(bench.preferences.newWire() == Wire{});
    CHECK(bench.preferences.newCircuit() == Circuit{});
}

TEST_CASE("limits preferred are those of a new circuit, not of one that is open", "[window][preferences]") {
    WindowBench bench;
    ProjectLimits limits;
    limits.reservePresses = 5;
    limits.voltageDropShare = 0.03;
    bench.preferences.setNewLimits(limits);
    CHECK(bench.window.document().circuit().limits == ProjectLimits{});
    bench.window.files().newCircuit().trigger();
    CHECK(bench.window.document().circuit().limits == limits);
}

TEST_CASE("settings that no sense can be made of count as not said", "[window][preferences]") {
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("settings.ini"));
    {
        QSettings settings(file, QSettings::IniFormat);
        settings.setValue(QStringLiteral("units/vacuum"), QStringLiteral("furlong"));
        settings.setValue(QStringLiteral("units/currency"), QStringLiteral("beads"));
        settings.setValue(QStringLiteral("newWire/area_m2"), QStringLiteral("nan"));
        settings.setValue(QStringLiteral("newWire/length_m"), -4);
        settings.setValue(QStringLiteral("newWire/colour"), QStringLiteral("puce"));
        settings.setValue(QStringLiteral("newWire/insulation"), QStringLiteral("straw"));
        settings.setValue(QStringLiteral("newLimits/reservePresses"), 1e9);
    }
    const Preferences preferences(file);
    CHECK(preferences.units() == ShownUnits{});
    CHECK(preferences.newWire() == Wire{});
    CHECK(preferences.newCircuit() == Circuit{});
}

TEST_CASE("a circuit kept as a template is offered, and begins a circuit without a file",
          "[window][templates]") {
    WindowBench bench;
    bench.window.document().startNew(switchAndBooster());
    QMenu menu;
    bench.window.files().fillTemplates(menu);
    Q_EMIT menu.aboutToShow();
    const auto samples = menu.actions().size();
    REQUIRE(samples > 1);
    bench.dialogs->path = bench.preferences.templatesFolder() + QStringLiteral("/my-start.pumpwright");
    menu.actions().last()->trigger();
    CHECK(bench.dialogs->errors.isEmpty());
    Q_EMIT menu.aboutToShow();
    REQUIRE(menu.actions().size() == samples + 1);
    CHECK(menu.actions().first()->text() == QStringLiteral("My start"));
    bench.window.document().startNew();
    menu.actions().first()->trigger();
    CHECK(bench.window.document().circuit() == switchAndBooster());
    CHECK(bench.window.document().path().isEmpty());
}

TEST_CASE("a file opens in the empty window, another in a window of its own, the same in the same",
          "[window][windows]") {
    const QTemporaryDir folder;
    const QString one = folder.filePath(QStringLiteral("one.pumpwright"));
    const QString other = folder.filePath(QStringLiteral("other.pumpwright"));
    REQUIRE(writeCircuit(switchAndBooster(), one.toStdString()));
    REQUIRE(writeCircuit(switchAndBooster(), other.toStdString()));
    Preferences preferences(folder.filePath(QStringLiteral("settings.ini")));
    Windows windows(smallCatalogue(), preferences);
    MainWindow& first = windows.openNew();
    CHECK(&windows.open(one) == &first);
    CHECK(first.windowTitle().startsWith(QStringLiteral("one")));
    MainWindow& second = windows.open(other);
    CHECK(&second != &first);
    CHECK(&windows.open(one) == &first);
    CHECK(windows.all().size() == 2);
    second.close();
    REQUIRE(QTest::qWaitFor([&] { return windows.all().size() == 1; }, 5000));
    Q_EMIT first.windowRequested();
    CHECK(windows.all().size() == 2);
}

TEST_CASE("a second start hands its file to the program that runs", "[window][windows]") {
    const QTemporaryDir folder;
    const QString socket = folder.filePath(QStringLiteral("program"));
    CHECK_FALSE(RunningProgram::handOver(socket, QStringLiteral("/a.pumpwright"))); // nobody listens
    CHECK_FALSE(RunningProgram::handOver({}, QStringLiteral("/a.pumpwright")));
    RunningProgram program;
    REQUIRE(program.listen(socket));
    const QSignalSpy asked(&program, &RunningProgram::asked);
    const QString file = QStringLiteral("/with space\nand line/größe.pumpwright");
    bool taken = false;
    std::thread secondStart([&] { taken = RunningProgram::handOver(socket, file); });
    static_cast<void>(QTest::qWaitFor([&] { return asked.count() == 1; }, 5000));
    secondStart.join();
    CHECK(taken);
    REQUIRE(asked.count() == 1);
    CHECK(asked.front().front().toString() == file);
}

TEST_CASE("a socket that a killed program left behind is taken over", "[window][windows]") {
    const QTemporaryDir folder;
    const QString socket = folder.filePath(QStringLiteral("program"));
    QFile left(socket);
    REQUIRE(left.open(QIODevice::WriteOnly));
    left.close();
    RunningProgram program;
    CHECK(program.listen(socket));
}

TEST_CASE("saving says so and asks nothing; what fails stands above the work and stops nothing",
          "[window][messages]") {
    const QTemporaryDir folder;
    Preferences preferences(folder.filePath(QStringLiteral("settings.ini")));
    MainWindow window(smallCatalogue(), preferences); // with the dialogs that users get
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    const QString path = folder.filePath(QStringLiteral("van.pumpwright"));
    REQUIRE(writeCircuit(switchAndBooster(), path.toStdString()));
    REQUIRE(window.open(path));
    REQUIRE(window.files().save());
    auto* toast = window.findChild<Toast*>();
    REQUIRE(toast != nullptr);
    CHECK(toast->isVisible());
    CHECK(toast->text() == QStringLiteral("“van.pumpwright” is saved."));
    CHECK_FALSE(window.open(folder.filePath(QStringLiteral("missing.pumpwright")))); // comes back at once
    auto* errors = window.findChild<ErrorBar*>();
    REQUIRE(errors != nullptr);
    CHECK(errors->isVisible());
    CHECK(errors->text().contains(QStringLiteral("missing.pumpwright")));
    CHECK(QApplication::activeModalWidget() == nullptr);
    button(*errors, QStringLiteral("Put away"))->click();
    CHECK_FALSE(errors->isVisible());
}

TEST_CASE("each panel has its help, by its question mark and by F1", "[window][help]") {
    WindowBench bench;
    const auto docks = bench.window.findChildren<QDockWidget*>();
    REQUIRE(docks.size() == 7);
    for (QDockWidget* dock : docks) {
        const QString name = QStringLiteral("Help on: %1 (F1)").arg(dock->windowTitle());
        auto* mark = named<QAbstractButton>(*dock, name);
        REQUIRE(mark != nullptr);
        mark->click();
        auto* handbook = bench.window.findChild<HandbookWindow*>();
        REQUIRE(handbook != nullptr);
        CHECK(handbook->page().textCursor().block().text() == dock->windowTitle());
    }
    bench.window.activateWindow();
    bench.window.circuitView().setFocus();
    QTest::keyClick(&bench.window, Qt::Key_F1);
    CHECK(bench.window.findChild<HandbookWindow*>()->page().textCursor().block().text() ==
          QStringLiteral("Circuit"));
}

TEST_CASE("texts of both themes are read against their grounds", "[window][theme]") {
    for (const Theme theme : {Theme::Light, Theme::Dark}) {
        const QPalette palette = themePalette(theme);
        for (const auto& [text, ground] : {std::pair{QPalette::WindowText, QPalette::Window},
                                           {QPalette::Text, QPalette::Base},
                                           {QPalette::Text, QPalette::AlternateBase},
                                           {QPalette::ButtonText, QPalette::Button},
                                           {QPalette::PlaceholderText, QPalette::Base},
                                           {QPalette::ToolTipText, QPalette::ToolTipBase},
                                           {QPalette::Link, QPalette::Base},
                                           {QPalette::HighlightedText, QPalette::Highlight}}) {
            // WCAG 2.1, success criterion 1.4.3.
            CHECK(contrastRatio(palette.color(text), palette.color(ground)) >= 4.5);
        }
    }
}

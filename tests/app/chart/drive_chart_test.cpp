#include "app/desktop/chart/chart_lanes.h"
#include "app/desktop/chart/chart_palette.h"
#include "app/desktop/chart/event_model.h"
#include "app/desktop/chart/lane_plot.h"
#include "app/desktop/chart/readout_model.h"
#include "app/desktop/circuit/palette.h"
#include "tests/support/catch.h"
#include "tests/support/recording_builder.h"
#include "tests/support/van_circuit.h"

#include <QAbstractItemModelTester>
#include <qcustomplot.h>
#include <QPalette>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

using namespace pumpwright;

namespace {

Circuit van() {
    CircuitBuilder builder = vanVacuumSide();
    return addPumpFeed(builder).build();
}

/// Ten seconds: pump-down, a press at 5 s, and a chatter of the relay between 8 and 9 s.
DriveResult shortDrive() {
    RecordingBuilder::Samples contact{{0, 1}, {4, 0}};
    for (int i = 0; i < 60; ++i) {
        contact.push_back({8 + i / 60.0, i % 2});
    }
    return RecordingBuilder(10)
        .port("A1.vacuum", {{0, 0}, {4, 60e3}, {5, 60e3}, {5.2, 52e3}, {10, 52e3}})
        .port("B1.vacuum", {{0, 0}, {4, 59e3}, {10, 52e3}})
        .part("A1", probe::kAssistAsked, {{0, 0}, {5, 0}, {5.2, 900}, {6.5, 900}, {6.7, 0}, {10, 0}})
        .part("A1", probe::kAssist, {{0, 0}, {5, 0}, {5.2, 800}, {6.5, 800}, {6.7, 0}, {10, 0}})
        .part("M1", probe::kCurrent, {{0, 0}, {0, 12}, {0.2, 5.5}, {4, 5.5}, {4, 0}, {10, 0}})
        .part("K1", probe::kContact, contact)
        .drive();
}

/// A chart on the screen with the short drive.
struct Screen {
    Circuit circuit = van();
    DriveResult drive = shortDrive();
    LanePlot lanes;

    Screen() {
        lanes.resize(640, 400);
        lanes.showLanes(chartLanes(circuit, drive.recording), drive.recording.duration_s, ShownUnits{});
        lanes.show();
        REQUIRE(QTest::qWaitForWindowExposed(&lanes));
        lanes.plot().replot();
    }
    QPoint pointAt(double time_s) {
        auto* rect = lanes.plot().axisRect(0);
        return {static_cast<int>(rect->axis(QCPAxis::atBottom)->coordToPixel(time_s)), rect->center().y()};
    }
};

} // namespace

TEST_CASE("a drive fills lanes for vacuum with set points, assist, current and contacts", "[chart][lanes]") {
    const Circuit circuit = van();
    const DriveResult drive = shortDrive();
    const auto lanes = chartLanes(circuit, drive.recording);
    REQUIRE(lanes.size() == 4);
    CHECK(lanes[0].sort == ChartLane::Sort::Vacuum);
    CHECK(lanes[0].traces.size() == 2);
    REQUIRE(lanes[0].levels.size() == 2);
    CHECK(lanes[0].levels[0].si == Approx(50e3));
    CHECK(lanes[0].levels[1].si == Approx(55e3));
    CHECK(lanes[1].traces[0].role == TraceRole::AssistAsked);
    CHECK(lanes[2].traces.size() == 1);
    REQUIRE(lanes[3].sort == ChartLane::Sort::States);
    CHECK(lanes[3].traces[0].name == QStringLiteral("K1"));
    CHECK(stateText(*lanes[3].traces[0].channel, 1) == QStringLiteral("closed"));
    CHECK(stateText(*lanes[3].traces[0].channel, 5) == QStringLiteral("open"));
}

TEST_CASE("an empty recording fills no lane", "[chart][lanes]") {
    CHECK(chartLanes(van(), Recording{}).empty());
}

TEST_CASE("the read-out gives every line's value at the cursor, vacuum in both units", "[chart][readout]") {
    const Circuit circuit = van();
    const DriveResult drive = shortDrive();
    const auto lanes = chartLanes(circuit, drive.recording);
    ReadoutModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.setLanes(lanes, ChartPalette(QPalette()));
    model.setTime(2);
    REQUIRE(model.rowCount() == 8);
    CHECK(model.index(2, ReadoutModel::Name).data().toString() == QStringLiteral("B1 closes"));
    CHECK(model.index(2, ReadoutModel::Value).data().toString().startsWith(QStringLiteral("50 kPa")));
    // 1 inHg = 3386.389 Pa [NIST SP 811, conventional]: 30 kPa is 8.859 inHg
    CHECK(model.index(0, ReadoutModel::Value).data().toString() == QStringLiteral("30 kPa (8.859 inHg)"));
    CHECK(model.summary().contains(QStringLiteral("K1 closed")));
    model.setUnits({"inHg", "kPa"});
    CHECK(model.index(0, ReadoutModel::Value).data().toString() == QStringLiteral("8.859 inHg (30 kPa)"));
}

TEST_CASE("a click moves the cursor there, a drag of the line takes it along", "[chart][gestures]") {
    Screen screen;
    QSignalSpy asked(&screen.lanes, &LanePlot::cursorRequested);
    QTest::mouseClick(&screen.lanes.plot(), Qt::LeftButton, {}, screen.pointAt(6));
    REQUIRE(asked.count() == 1);
    CHECK(asked.takeFirst().front().toDouble() == Approx(6).margin(0.05));

    screen.lanes.showCursor(6);
    QTest::mousePress(&screen.lanes.plot(), Qt::LeftButton, {}, screen.pointAt(6));
    QTest::mouseMove(&screen.lanes.plot(), screen.pointAt(7));
    QTest::mouseRelease(&screen.lanes.plot(), Qt::LeftButton, {}, screen.pointAt(7));
    REQUIRE(asked.count() >= 1);
    CHECK(asked.last().front().toDouble() == Approx(7).margin(0.05));
    CHECK(screen.lanes.visibleSpan().to_s == Approx(10));
}

TEST_CASE("the wheel zooms at the pointer and a double click shows the whole drive", "[chart][gestures]") {
    Screen screen;
    const QPoint pointer = screen.pointAt(8);
    QWheelEvent turn(pointer, screen.lanes.plot().mapToGlobal(pointer), {}, {0, 480}, Qt::NoButton, {},
                     Qt::NoScrollPhase, false);
    QApplication::sendEvent(&screen.lanes.plot(), &turn);
    const TimeSpan span = screen.lanes.visibleSpan();
    CHECK(span.to_s - span.from_s < 5);
    // What was below the pointer stays there.
    CHECK((8 - span.from_s) / (span.to_s - span.from_s) == Approx(0.8).margin(0.02));
    QTest::mouseDClick(&screen.lanes.plot(), Qt::LeftButton, {}, pointer);
    CHECK(screen.lanes.visibleSpan().from_s == 0);
    CHECK(screen.lanes.visibleSpan().to_s == Approx(10));
}

TEST_CASE("a drag moves the view but never beyond the drive", "[chart][gestures]") {
    Screen screen;
    screen.lanes.showSpan({2, 4});
    screen.lanes.plot().replot();
    QTest::mousePress(&screen.lanes.plot(), Qt::LeftButton, {}, screen.pointAt(3));
    QTest::mouseMove(&screen.lanes.plot(), screen.pointAt(2.5));
    QTest::mouseRelease(&screen.lanes.plot(), Qt::LeftButton, {}, screen.pointAt(2.5));
    CHECK(screen.lanes.visibleSpan().from_s > 2);
    screen.lanes.showSpan({9, 14});
    CHECK(screen.lanes.visibleSpan().to_s == Approx(10));
    CHECK(screen.lanes.visibleSpan().from_s == Approx(5));
}

TEST_CASE("arrow keys move the cursor by a pixel, with Shift by ten", "[chart][gestures]") {
    Screen screen;
    screen.lanes.showCursor(5);
    QSignalSpy asked(&screen.lanes, &LanePlot::cursorRequested);
    QTest::keyClick(&screen.lanes, Qt::Key_Right);
    const double fine_s = asked.takeFirst().front().toDouble() - 5;
    QTest::keyClick(&screen.lanes, Qt::Key_Right, Qt::ShiftModifier);
    CHECK(asked.takeFirst().front().toDouble() - 5 == Approx(10 * fine_s));
    QTest::keyClick(&screen.lanes, Qt::Key_Home);
    CHECK(asked.takeFirst().front().toDouble() == 0);
}

TEST_CASE("a spike of a microsecond among a million samples is drawn at its full height", "[chart][spike]") {
    RecordingBuilder::Samples current;
    for (int i = 0; i < 1'000'000; ++i) {
        current.push_back({i * 1e-3, 1.0});
    }
    current[600'000].second = 40;
    const DriveResult drive = RecordingBuilder(1000).part("M1", probe::kCurrent, current).drive();
    LanePlot lanes;
    lanes.resize(640, 200);
    lanes.showLanes(chartLanes(van(), drive.recording), 1000, ShownUnits{});
    lanes.show();
    REQUIRE(QTest::qWaitForWindowExposed(&lanes));
    lanes.plot().replot();
    const QImage image = lanes.plot().toPixmap().toImage();
    const auto* rect = lanes.plot().axisRect(0);
    const QColor colour = ChartPalette(lanes.palette()).pen(TraceRole::PumpCurrent, 0).color();
    const int top = static_cast<int>(rect->axis(QCPAxis::atLeft)->coordToPixel(38));
    const int middle = static_cast<int>(rect->axis(QCPAxis::atLeft)->coordToPixel(20));
    const int x = static_cast<int>(rect->axis(QCPAxis::atBottom)->coordToPixel(600));
    for (const int y : {top, middle}) {
        bool found = false;
        for (int near = x - 2; near <= x + 2; ++near) {
            const QColor pixel = image.pixelColor(near, y);
            found = found ||
                    std::abs(pixel.red() - colour.red()) + std::abs(pixel.green() - colour.green()) < 120;
        }
        CHECK(found);
    }
}

TEST_CASE("every line of the chart reaches 3 to 1 against a light and a dark ground", "[chart][contrast]") {
    // WCAG 2.1, success criterion 1.4.11: graphical objects at least 3:1
    for (const QColor ground : {QColor(Qt::white), QColor(0x20, 0x20, 0x20)}) {
        QPalette palette;
        palette.setColor(QPalette::Base, ground);
        palette.setColor(QPalette::Text, ground.lightness() > 128 ? Qt::black : Qt::white);
        const ChartPalette colours(palette);
        for (const TraceRole role :
             {TraceRole::BoosterVacuum, TraceRole::SwitchVacuum, TraceRole::AssistAsked,
              TraceRole::AssistDelivered, TraceRole::PumpCurrent, TraceRole::Voltage, TraceRole::State}) {
            CHECK(contrastRatio(colours.pen(role, 0).color(), ground) >= 3);
        }
        CHECK(contrastRatio(colours.level, ground) >= 4.5);
        CHECK(contrastRatio(colours.cursor, ground) >= 3);
    }
}

TEST_CASE("events are listed in order with reference, and the list knows which was the latest",
          "[chart][events]") {
    EventModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.setEvents(van(), {{0.5, Subject::Part, "K1", "contacts close"},
                            {7.25, Subject::Part, "B1", "vacuum switch opens"},
                            {8, Subject::Part, "gone", "contacts open"}});
    REQUIRE(model.rowCount() == 3);
    CHECK(model.index(1, EventModel::Time).data().toString() == QStringLiteral("7.25 s"));
    CHECK(model.index(1, EventModel::Part).data().toString() == QStringLiteral("B1"));
    CHECK(model.index(1, EventModel::What).data().toString() == QStringLiteral("vacuum switch opens"));
    CHECK(model.index(2, EventModel::Part).data().toString() == QStringLiteral("gone"));
    CHECK(model.rowAt(0.4) == -1);
    CHECK(model.rowAt(0.5) == 0);
    CHECK(model.rowAt(9) == 2);
}

TEST_CASE("from a mark the read-out gives the change of every line", "[chart][readout]") {
    const Circuit circuit = van();
    const DriveResult drive = shortDrive();
    ReadoutModel model;
    model.setLanes(chartLanes(circuit, drive.recording), ChartPalette(QPalette()));
    model.setTime(4);
    CHECK(model.index(0, ReadoutModel::Difference).data().toString().isEmpty());
    model.setMark(2);
    CHECK(model.index(0, ReadoutModel::Difference).data().toString() == QStringLiteral("+30 kPa"));
    model.setMark(5);
    model.setTime(5.2);
    CHECK(model.index(0, ReadoutModel::Difference).data().toString() == QStringLiteral("-8 kPa"));
}

TEST_CASE("selected parts and wires get a lane with their currents", "[chart][lanes]") {
    const Circuit circuit = van();
    DriveResult drive = RecordingBuilder(10)
                            .wire("w4", probe::kCurrent, {{0, 0}, {10, 5}})
                            .part("K1", probe::kCoilCurrent, {{0, 0}, {10, 0.1}})
                            .drive();
    CHECK(chartLanes(circuit, drive.recording).empty());
    const auto lanes = chartLanes(circuit, drive.recording, {{{"K1"}}, {{"w4"}, {"gone"}}});
    REQUIRE(lanes.size() == 1);
    CHECK(lanes[0].sort == ChartLane::Sort::Picked);
    REQUIRE(lanes[0].traces.size() == 2);
    CHECK(lanes[0].traces[1].name.endsWith(QStringLiteral(": coil")));
}

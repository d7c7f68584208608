#include "app/desktop/sheet/drive_figure.h"
#include "tests/app/sheet/pump_circuit.h"
#include "tests/support/catch.h"
#include "tests/support/recording_builder.h"

#include <QImage>
#include <QTemporaryDir>

#include <algorithm>

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

DriveResult handmadeDrive() {
    return RecordingBuilder(30)
        .port("A1.vacuum", {{0, 0}, {20, 70e3}, {30, 60e3}})
        .port("B1.vacuum", {{0, 0}, {20, 69e3}, {30, 60e3}})
        .part("M1", probe::kCurrent, {{0, 12}, {1, 5.5}, {20, 5.5}, {20, 0}, {30, 0}})
        .part("K1", probe::kContact, {{0, 1}, {20, 0}, {25, 1}, {26, 0}})
        .part("A1", probe::kAssist, {{0, 0}, {15, 0}, {15.2, 500}, {16.5, 500}, {16.7, 0}})
        .drive();
}

const DriveFigure::Lane& laneCalled(const DriveFigure& figure, const QString& begin) {
    for (const DriveFigure::Lane& lane : figure.lanes) {
        if (lane.title.startsWith(begin)) {
            return lane;
        }
    }
    FAIL("no lane " << begin.toStdString());
    return figure.lanes.front();
}

/// Pixels darker than mid-grey.
int darkPixels(const QImage& image) {
    int dark = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            dark += qGray(image.pixel(x, y)) < 128 ? 1 : 0;
        }
    }
    return dark;
}

} // namespace

TEST_CASE("the figure shows vacuum at booster and switch in kilopascals, with both switching levels",
          "[sheet][figure]") {
    const DriveFigure figure = driveFigure(pumpCircuit(), handmadeDrive());
    const DriveFigure::Lane& lane = laneCalled(figure, QStringLiteral("Vacuum"));
    CHECK(lane.title == QStringLiteral("Vacuum [kPa]"));
    REQUIRE(lane.curves.size() == 2);
    CHECK_THAT(lane.curves[0].samples[1].y(), WithinAbs(70, 1e-4));
    // The vacuum switch's own values: 50 kPa and 5 kPa more.
    REQUIRE(lane.levels.size() == 2);
    CHECK_THAT(lane.levels[0].value, WithinAbs(50, 1e-9));
    CHECK_THAT(lane.levels[1].value, WithinAbs(55, 1e-9));
}

TEST_CASE("the figure shows assist, motor current, presses and when contacts were closed",
          "[sheet][figure]") {
    const DriveFigure figure = driveFigure(pumpCircuit(), handmadeDrive());
    CHECK(laneCalled(figure, QStringLiteral("Assist")).curves.size() == 1);
    CHECK(laneCalled(figure, QStringLiteral("Motor")).curves.size() == 1);
    REQUIRE(figure.presses.size() == 2);
    CHECK_THAT(figure.presses[0].to_s, WithinAbs(16.7, 1e-9));
    REQUIRE(figure.bars.size() == 1);
    CHECK(figure.bars[0].name == QStringLiteral("K1"));
    CHECK(figure.bars[0].closed == QList<QPointF>{{0, 20}, {25, 26}});
}

TEST_CASE("a contact that is closed at the end is closed up to the end", "[sheet][figure]") {
    const DriveResult drive = RecordingBuilder(30).part("K1", probe::kContact, {{0, 0}, {20, 1}}).drive();
    CHECK(driveFigure(pumpCircuit(), drive).bars.at(0).closed == QList<QPointF>{{20, 30}});
}

TEST_CASE("quantities that nothing recorded get no lane", "[sheet][figure]") {
    const DriveFigure figure = driveFigure(pumpCircuit(), RecordingBuilder(30).drive());
    CHECK(figure.lanes.isEmpty());
    CHECK(figure.bars.isEmpty());
}

TEST_CASE("the drive chart is written as a picture that shows something", "[sheet][figure]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("chart.png"));
    REQUIRE(writeDriveChart(path, handmadeDrive(), pumpCircuit()));
    const QImage image(path);
    REQUIRE(image.size() == QSize(1800, 1200));
    const QString emptyPath = folder.filePath(QStringLiteral("empty.png"));
    REQUIRE(writeDriveChart(emptyPath, RecordingBuilder(0).drive(), pumpCircuit()));
    CHECK(darkPixels(image) > 10 * darkPixels(QImage(emptyPath)));
}

TEST_CASE("a picture that can't be written says where", "[sheet][figure]") {
    const Result<void> written =
        writeDriveChart(QStringLiteral("/nowhere/at/all/chart.png"), handmadeDrive(), pumpCircuit());
    REQUIRE_FALSE(written);
    CHECK(written.error().code == ErrorCode::FileUnwritable);
    CHECK(written.error().place.file == "/nowhere/at/all/chart.png");
}

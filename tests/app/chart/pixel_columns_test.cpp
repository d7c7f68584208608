#include "app/desktop/chart/chart_lanes.h"
#include "app/desktop/chart/chart_palette.h"
#include "app/desktop/chart/lane_plot.h"
#include "tests/support/catch.h"
#include "tests/support/recording_builder.h"
#include "tests/support/test_seed.h"
#include "tests/support/van_circuit.h"

#include <qcustomplot.h>
#include <QTest>

#include <algorithm>
#include <cmath>
#include <random>

using namespace pumpwright;

namespace {

constexpr double kHour_s = 3600;
constexpr int kSlack_px = 3; ///< a line two pixels wide, smoothed, with its joins

/// An hour of the pump's current: a slow walk, with pauses from a microsecond to a second between the
/// samples, and now and then a sample that leaps.
RecordingBuilder::Samples leapingCurrent(std::mt19937_64& random) {
    std::uniform_real_distribution<double> share(0, 1);
    RecordingBuilder::Samples samples;
    double time_s = 0;
    double level_A = 10;
    while (time_s < kHour_s) {
        level_A = std::clamp(level_A + 0.4 * (share(random) - 0.5), 5.0, 15.0);
        const bool leaps = share(random) < 0.002;
        samples.emplace_back(time_s, leaps ? 40 * share(random) : level_A);
        time_s += std::pow(10.0, -6 + 6 * share(random)) * (leaps ? 1e-3 : 1);
    }
    samples.emplace_back(kHour_s, level_A);
    return samples;
}

/// The pump's current as it is drawn.
class Picture {
public:
    explicit Picture(const RecordingBuilder::Samples& samples)
        : m_drive(RecordingBuilder(kHour_s).part("M1", probe::kCurrent, samples).drive()) {
        CircuitBuilder builder = vanVacuumSide();
        m_lanes.resize(640, 300);
        m_lanes.showLanes(chartLanes(addPumpFeed(builder).build(), m_drive.recording), kHour_s, ShownUnits{});
        m_lanes.show();
        REQUIRE(QTest::qWaitForWindowExposed(&m_lanes));
    }

    LanePlot& lanes() { return m_lanes; }

    /// Draws this stretch of the hour and compares each column of pixels with the samples that fall into it.
    void check(TimeSpan span) {
        m_lanes.showSpan(span);
        m_lanes.showCursor(0); // out of the way, unless the stretch begins there
        m_lanes.plot().replot();
        m_image = m_lanes.plot().toPixmap().toImage();
        const QRect rect = m_lanes.plot().axisRect(0)->rect();
        m_top = rect.top();
        m_bottom = rect.bottom();
        int wrong = 0;
        for (int x = rect.left() + 4; x < rect.right() - 4; ++x) {
            wrong += isTrue(x) ? 0 : 1;
        }
        INFO("from " << span.from_s << " s to " << span.to_s << " s");
        CHECK(wrong == 0);
    }

private:
    QCPAxis& times() { return *m_lanes.plot().axisRect(0)->axis(QCPAxis::atBottom); }
    QCPAxis& values() { return *m_lanes.plot().axisRect(0)->axis(QCPAxis::atLeft); }

    /// Lowest and highest of the curve between two columns' edges, by all samples of the recording.
    Extremes raw(int fromX, int toX) {
        const Channel& current = *m_drive.recording.part({"M1"}, probe::kCurrent);
        return current.extremes(times().pixelToCoord(fromX), times().pixelToCoord(toX));
    }

    /// Rows of a column in which the line is drawn.
    std::vector<int> painted(int x) const {
        const QColor ink = ChartPalette(m_lanes.palette()).pen(TraceRole::PumpCurrent, 0).color();
        std::vector<int> rows;
        for (int y = m_top; y <= m_bottom; ++y) {
            const QColor pixel = m_image.pixelColor(x, y);
            const int distance = std::abs(pixel.red() - ink.red()) + std::abs(pixel.green() - ink.green()) +
                                 std::abs(pixel.blue() - ink.blue());
            if (distance < 200) {
                rows.push_back(y);
            }
        }
        return rows;
    }

    bool isTrue(int x) {
        const Extremes here = raw(x, x + 1);
        const Extremes around = raw(x - 2, x + 3);
        std::vector<int> rows;
        for (int near = x - 1; near <= x + 1; ++near) {
            const std::vector<int> one = painted(near);
            rows.insert(rows.end(), one.begin(), one.end());
        }
        if (rows.empty()) {
            return false;
        }
        const auto [top, bottom] = std::minmax_element(rows.begin(), rows.end());
        const bool reachesAll = *top <= values().coordToPixel(here.highest) + kSlack_px &&
                                *bottom >= values().coordToPixel(here.lowest) - kSlack_px;
        const bool addsNothing = *top >= values().coordToPixel(around.highest) - kSlack_px &&
                                 *bottom <= values().coordToPixel(around.lowest) + kSlack_px;
        return reachesAll && addsNothing;
    }

    DriveResult m_drive;
    LanePlot m_lanes;
    QImage m_image;
    int m_top = 0; ///< rows of the lane; its title above is none of its line
    int m_bottom = 0;
};

} // namespace

TEST_CASE("each column of pixels shows the true lowest and highest value, from an hour to a microsecond",
          "[chart][columns]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    const RecordingBuilder::Samples samples = leapingCurrent(random);
    Picture picture(samples);
    picture.check({0.001, kHour_s});
    std::uniform_real_distribution<double> where(0.01, 0.9);
    for (const double length_s : {600.0, 60.0, 7.0, 0.5, 1e-2, 1e-4, 1e-6}) {
        const double from_s = where(random) * kHour_s;
        picture.check({from_s, from_s + length_s});
    }
}

TEST_CASE("the wheel goes from an hour to a microsecond and back, at the same instant", "[chart][columns]") {
    LanePlot lanes;
    const DriveResult drive =
        RecordingBuilder(kHour_s).part("M1", probe::kCurrent, {{0, 1}, {1800, 2}, {kHour_s, 1}}).drive();
    CircuitBuilder builder = vanVacuumSide();
    lanes.resize(640, 300);
    lanes.showLanes(chartLanes(addPumpFeed(builder).build(), drive.recording), kHour_s, ShownUnits{});
    lanes.show();
    REQUIRE(QTest::qWaitForWindowExposed(&lanes));
    lanes.showCursor(1234.5);
    for (int i = 0; i < 80; ++i) {
        lanes.zoom(2);
    }
    const TimeSpan closest = lanes.visibleSpan();
    CHECK(closest.to_s - closest.from_s <= 1.01e-6);
    CHECK(closest.from_s <= 1234.5);
    CHECK(closest.to_s >= 1234.5);
    for (int i = 0; i < 80; ++i) {
        lanes.zoom(0.5);
    }
    CHECK(lanes.visibleSpan().from_s == 0);
    CHECK(lanes.visibleSpan().to_s == Approx(kHour_s));
}

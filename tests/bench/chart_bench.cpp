// Prints how long panning and zooming a Drive chart of twelve lanes over an hour takes, frame by frame. The
// peer is a bare plot of the same lines. QT_SCALE_FACTOR=2 asks for a screen of twice the density.

#include "app/desktop/chart/lane_plot.h"

#include <QApplication>
#include <qcustomplot.h>
#include <QElapsedTimer>
#include <QTest>

#include <fmt/core.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <vector>

using namespace pumpwright;

namespace {

constexpr int kLanes = 12;
constexpr int kSamples = 20'000; ///< of each lane
constexpr double kHour_s = 3600;
constexpr int kFrames = 60;

Channel newChannel(int lane) {
    Channel channel;
    channel.key = {Subject::Part, "M" + std::to_string(lane), "current"};
    channel.probe = {"current", "current", QuantityKind::Current, false, 1e-3};
    for (int i = 0; i < kSamples; ++i) {
        channel.times_s.push_back(kHour_s * i / (kSamples - 1));
        channel.values.push_back(
            static_cast<float>(10 + 5 * std::sin(0.01 * i * (lane + 1)) + 0.01 * (i % 97)));
    }
    return channel;
}

struct Percentiles {
    double median_ms;
    double p95_ms;
};

Percentiles timed(const std::function<void(int)>& frame) {
    std::vector<double> times_ms;
    QElapsedTimer clock;
    for (int i = 0; i < kFrames; ++i) {
        clock.start();
        frame(i);
        times_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    std::sort(times_ms.begin(), times_ms.end());
    return {times_ms[kFrames / 2], times_ms[kFrames * 95 / 100]};
}

/// Pans over the hour in the first frames, zooms to a microsecond and back in the rest.
TimeSpan spanOf(int frame, bool zooms) {
    if (!zooms) {
        const double from_s = 1500.0 * frame / kFrames;
        return {from_s, from_s + 1800};
    }
    const double depth = 1 - std::abs(2.0 * frame / kFrames - 1);
    const double length_s = kHour_s * std::pow(1e-6 / kHour_s, depth);
    return {1800 - length_s / 2, 1800 + length_s / 2};
}

void print(const char* what, const Percentiles& own, const Percentiles& peer, double goal_ms) {
    fmt::print("  {:<28} median {:6.1f} ms, p95 {:6.1f} ms   peer {:6.1f} ms, {:6.1f} ms; goal p95 {} ms\n",
               what, own.median_ms, own.p95_ms, peer.median_ms, peer.p95_ms, goal_ms);
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    std::vector<Channel> channels;
    for (int lane = 0; lane < kLanes; ++lane) {
        channels.push_back(newChannel(lane));
    }
    std::vector<ChartLane> lanes;
    for (const Channel& channel : channels) {
        lanes.push_back({ChartLane::Sort::Current,
                         QStringLiteral("Current"),
                         QuantityKind::Current,
                         {{QStringLiteral("M"), TraceRole::PumpCurrent, &channel}},
                         {}});
    }
    LanePlot chart;
    chart.resize(1000, 900);
    chart.showLanes(lanes, kHour_s, ShownUnits{});
    chart.show();
    QCustomPlot bare;
    bare.resize(1000, 900);
    for (const Channel& channel : channels) {
        QVector<QCPGraphData> points;
        for (std::size_t i = 0; i < channel.times_s.size(); ++i) {
            points.append({channel.times_s[i], static_cast<double>(channel.values[i])});
        }
        bare.addGraph()->data()->set(points, true);
    }
    bare.yAxis->setRange(0, 20);
    bare.show();
    static_cast<void>(QTest::qWaitForWindowExposed(&chart));
    static_cast<void>(QTest::qWaitForWindowExposed(&bare));
    const double goal_ms = chart.devicePixelRatioF() > 1.5 ? 16 : 8;
    fmt::print("chart, {} lanes of {} samples over an hour, at {:.0f} %\n", kLanes, kSamples,
               100 * chart.devicePixelRatioF());
    for (const bool zooms : {false, true}) {
        const auto own = timed([&](int frame) {
            chart.showSpan(spanOf(frame, zooms));
            chart.plot().replot();
            chart.repaint();
        });
        const auto peer = timed([&](int frame) {
            const TimeSpan span = spanOf(frame, zooms);
            bare.xAxis->setRange(span.from_s, span.to_s);
            bare.replot();
            bare.repaint();
        });
        print(zooms ? "zoom, hour to microsecond" : "pan", own, peer, goal_ms);
    }
    const auto cursor = timed([&](int frame) {
        chart.showCursor(1800.0 + frame);
        chart.repaint();
    });
    fmt::print("  cursor                       median {:6.1f} ms, p95 {:6.1f} ms\n", cursor.median_ms,
               cursor.p95_ms);
    return 0;
}

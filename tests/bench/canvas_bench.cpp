// Prints how long panning, zooming and scrubbing the canvas takes, frame by frame, with a thousand parts and
// two thousand wires in view. The peer is a bare QGraphicsView with as many simple items. QT_SCALE_FACTOR=2
// asks for a screen of twice the density. With a CIRCUIT, scrubbing of that over its drive too.

#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/document/analysis.h"
#include "app/desktop/document/document.h"
#include "app/desktop/document/selection.h"
#include "core/parts/part_kind.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QGraphicsItem>
#include <QScrollBar>
#include <QTest>

#include <fmt/core.h>

#include <algorithm>
#include <functional>
#include <vector>

using namespace pumpwright;

namespace {

constexpr int kColumns = 40;
constexpr int kRows = 25;
constexpr int kFrames = 60;
constexpr double kSwitched_s = 1;
constexpr QSize kView(1280, 800);

Wire newWire(int number, const End& from, const End& to) {
    Wire wire;
    wire.reference = "W" + std::to_string(number);
    wire.from = from;
    wire.to = to;
    wire.area_m2 = 2.5e-6;
    wire.colour = number % 3 == 0 ? "RD" : "BK";
    return wire;
}

PartId lampId(int column, int row) {
    return {fmt::format("lamp{:02}{:02}", row, column)};
}

/// Rows of lamps side by side on two wires each. Every third row comes after a switch, the others before it.
Circuit manyLamps() {
    Circuit circuit;
    const auto add = [&](const char* kind, const char* id, GridPoint at) {
        circuit.parts[PartId{id}] = newPart(*findPartKind(kind), id, at);
    };
    add("supply", "G1", {-20, 0});
    add("hand-switch", "S1", {-20, -10});
    int number = 0;
    const auto join = [&](const End& from, const End& to) {
        circuit.wires[{"w" + std::to_string(++number)}] = newWire(number, from, to);
    };
    join({{"G1"}, "30"}, {{"S1"}, "1"});
    for (int row = 0; row < kRows; ++row) {
        for (int column = 0; column < kColumns; ++column) {
            const PartId id = lampId(column, row);
            Part lamp = newPart(*findPartKind("lamp"), "P" + id.text.substr(4), {8 * column, 10 * row});
            lamp.values["ratedPower_W"] = 0.1;
            circuit.parts[id] = lamp;
            if (column > 0) {
                join({lampId(column - 1, row), "1"}, {id, "1"});
                join({lampId(column - 1, row), "2"}, {id, "2"});
            }
        }
        join(row % 3 == 0 ? End{{"S1"}, "2"} : End{{"G1"}, "30"}, {lampId(0, row), "1"});
        join({{"G1"}, "31"}, {lampId(0, row), "2"});
    }
    circuit.plan.duration_s = 2 * kSwitched_s;
    circuit.plan.switchMoves = {{kSwitched_s, {"S1"}, true, {}}};
    return circuit;
}

/// Counts paints, so that a frame in which nothing was painted shows.
class PaintCounter final : public QObject {
public:
    explicit PaintCounter(QWidget& watched) { watched.installEventFilter(this); }
    bool eventFilter(QObject*, QEvent* event) override {
        paints += event->type() == QEvent::Paint ? 1 : 0;
        return false;
    }
    int paints = 0;
};

struct Figures {
    double median_ms = 0;
    double p95_ms = 0;
    int paints = 0;
};

Figures timed(QGraphicsView& view, int frames, const std::function<void(int)>& change) {
    PaintCounter counter(*view.viewport());
    std::vector<double> times_ms;
    QElapsedTimer clock;
    for (int frame = 0; frame < frames; ++frame) {
        clock.start();
        change(frame);
        QCoreApplication::processEvents();
        times_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    std::sort(times_ms.begin(), times_ms.end());
    const std::size_t count = times_ms.size();
    return {times_ms[count / 2], times_ms[count * 95 / 100], counter.paints};
}

void print(const char* what, const Figures& own, const Figures& peer, double goal_ms) {
    fmt::print(
        "  {:<8} median {:6.1f} ms, p95 {:6.1f} ms   peer {:6.1f} ms, {:6.1f} ms: p95 {:.2f} times the "
        "peer; goal p95 {} ms ({} paints, {} of the peer)\n",
        what, own.median_ms, own.p95_ms, peer.median_ms, peer.p95_ms, own.p95_ms / peer.p95_ms, goal_ms,
        own.paints, peer.paints);
}

/// A box with a ring, as simple as a symbol can be.
class SimplePart final : public QGraphicsItem {
public:
    QRectF boundingRect() const override { return {-40, -40, 80, 80}; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override {
        painter->setPen(QPen(on ? Qt::red : Qt::black, 2));
        painter->drawRect(-20, -20, 40, 40);
        painter->drawEllipse(-15, -15, 30, 30);
    }
    bool on = false;
};

/// As many items as the circuit has, with Qt's defaults.
class Peer {
public:
    Peer() {
        for (int i = 0; i < kColumns * kRows; ++i) {
            const QPointF at(160 * (i % kColumns), 200 * (i / kColumns)); // NOLINT: whole rows
            auto* part = new SimplePart;
            part->setPos(at);
            m_scene.addItem(part);
            m_parts.push_back(part);
            for (const double y : {-40.0, 40.0}) {
                auto* wire = m_scene.addLine({at + QPointF(0, y), at + QPointF(160, y)}, QPen(Qt::black, 3));
                m_wires.push_back(wire);
            }
        }
        view.setScene(&m_scene);
        view.setRenderHint(QPainter::Antialiasing);
        view.resize(kView);
        view.show();
        view.fitInView(m_scene.sceneRect(), Qt::KeepAspectRatio);
        m_scene.setSceneRect(m_scene.sceneRect().adjusted(-2000, -2000, 2000, 2000));
        view.centerOn(m_scene.itemsBoundingRect().center());
    }

    void change(int frame) {
        for (std::size_t i = 0; i < m_parts.size(); i += 3) {
            m_parts[i]->on = frame % 2 == 0;
            m_parts[i]->update();
            for (const std::size_t wire : {2 * i, 2 * i + 1}) {
                m_wires[wire]->setPen(QPen(frame % 2 == 0 ? Qt::red : Qt::black, 3));
            }
        }
    }

    QGraphicsView view;

private:
    QGraphicsScene m_scene;
    std::vector<SimplePart*> m_parts;
    std::vector<QGraphicsLineItem*> m_wires;
};

void scrollBy(QGraphicsView& view, int frame) {
    QScrollBar& bar = *view.horizontalScrollBar();
    bar.setValue(bar.value() + (frame % 2 == 0 ? 6 : -6));
}

void measureMany(double goal_ms) {
    Document document;
    Selection selection;
    Analysis analysis{document};
    CircuitView view{document, selection, analysis};
    view.resize(kView);
    view.show();
    document.startNew(manyLamps());
    static_cast<void>(QTest::qWaitFor([&] { return !analysis.isRunning(); }, 300000));
    static_cast<void>(QTest::qWaitForWindowExposed(&view));
    view.fit();
    Peer peer;
    static_cast<void>(QTest::qWaitForWindowExposed(&peer.view));
    QTest::qWait(200);
    fmt::print("canvas, {} parts and {} wires at {:.0f} % of the screen's size, zoom {:.2f}\n",
               document.circuit().parts.size(), document.circuit().wires.size(),
               100 * view.devicePixelRatioF(), view.zoom());
    print("pan", timed(view, kFrames, [&](int frame) { scrollBy(view, frame); }),
          timed(peer.view, kFrames, [&](int frame) { scrollBy(peer.view, frame); }), goal_ms);
    print("scrub", timed(view, kFrames, [&](int frame) { analysis.setCursor(frame % 2 == 0 ? 1.5 : 0.5); }),
          timed(peer.view, kFrames, [&](int frame) { peer.change(frame); }), goal_ms);
    print("zoom", timed(view, kFrames, [&](int frame) { frame % 2 == 0 ? view.zoomOut() : view.zoomIn(); }),
          timed(peer.view, kFrames,
                [&](int frame) {
                    const double factor = frame % 2 == 0 ? 0.8 : 1.25;
                    peer.view.scale(factor, factor);
                }),
          goal_ms);
}

void measureDrive(const QString& file) {
    Document document;
    Selection selection;
    Analysis analysis{document};
    CircuitView view{document, selection, analysis};
    view.resize(kView);
    view.show();
    if (const Result<void> opened = document.open(file); !opened) {
        fmt::print("{}\n", opened.error().text);
        return;
    }
    static_cast<void>(QTest::qWaitFor([&] { return !analysis.isRunning() && analysis.drive(); }, 120000));
    QTest::qWait(200);
    constexpr int kSteps = 600;
    const double step_s = analysis.drive()->recording.duration_s / kSteps;
    const Figures own = timed(view, kSteps, [&](int frame) { analysis.setCursor(frame * step_s); });
    fmt::print("  scrub of {}: median {:.2f} ms, p95 {:.2f} ms; goal p95 2 ms ({} paints of {})\n",
               file.toStdString(), own.median_ms, own.p95_ms, own.paints, kSteps);
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    measureMany(application.devicePixelRatio() > 1.5 ? 16 : 8);
    if (argc > 1) {
        measureDrive(QString::fromLocal8Bit(argv[1]));
    }
    return 0;
}

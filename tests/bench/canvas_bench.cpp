// Prints how long a frame of the canvas takes while a circuit of a thousand parts and two thousand wires, all
// in view, is panned, zoomed, and gone through by the cursor, at each step of which a third of all changes
// state. The peer is a plain view with as many plain items. Then the cursor goes through the drive of a
// circuit from a file, up to the repaint. QT_SCALE_FACTOR=2 asks for a screen of twice the density. Use:
// bench_canvas CIRCUIT

#include "app/desktop/circuit/circuit_scene.h"
#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/circuit/live_state.h"
#include "app/desktop/document/analysis.h"
#include "core/parts/part_kind.h"
#include "core/parts/placement.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QGraphicsPathItem>
#include <QGraphicsView>
#include <QPainterPath>
#include <QScrollBar>
#include <QTest>
#include <QWheelEvent>

#include <fmt/core.h>

#include <algorithm>
#include <functional>
#include <vector>

using namespace pumpwright;

namespace {

constexpr int kAcross = 25; ///< cells of four parts and eight wires
constexpr int kDown = 10;
constexpr int kFrames = 60;
constexpr double kDuration_s = kFrames;

std::string named(const char* letter, int number) {
    return letter + std::to_string(number);
}

/// Cells of supply, switch, relay and lamp, each joined to its neighbour.
class LargeCircuit {
public:
    LargeCircuit() {
        for (int cell = 0; cell < kAcross * kDown; ++cell) {
            addCell(cell);
        }
        std::sort(recording.channels.begin(), recording.channels.end(),
                  [](const Channel& a, const Channel& b) { return a.key < b.key; });
        recording.duration_s = kDuration_s;
    }

    Circuit circuit;
    Recording recording;

private:
    void addCell(int cell) {
        const GridPoint at{26 * (cell % kAcross), 26 * (cell / kAcross)};
        const int next = (cell + 1) % (kAcross * kDown);
        const auto end = [](const char* letter, int number, const char* terminal) {
            return End{{named(letter, number)}, terminal};
        };
        addPart("supply", "G", cell, at);
        addPart("hand-switch", "S", cell, {at.x + 8, at.y});
        addPart("relay", "K", cell, {at.x + 18, at.y + 8});
        addPart("lamp", "P", cell, {at.x + 18, at.y + 20});
        addWire(end("G", cell, "30"), end("S", cell, "1"), cell);
        addWire(end("S", cell, "2"), end("K", cell, "86"), cell);
        addWire(end("K", cell, "85"), end("G", cell, "31"), cell);
        addWire(end("G", cell, "30"), end("K", cell, "30"), cell);
        addWire(end("K", cell, "87"), end("P", cell, "1"), cell);
        addWire(end("P", cell, "2"), end("G", cell, "31"), cell);
        addWire(end("G", cell, "30"), end("G", next, "30"), cell);
        addWire(end("G", cell, "31"), end("G", next, "31"), cell);
    }

    void addPart(const char* kind, const char* letter, int cell, GridPoint at) {
        const PartId id{named(letter, cell)};
        circuit.parts[id] = newPart(*findPartKind(kind), id.text, at);
        addChannel({Subject::Part, id.text, std::string(probe::kContact)}, cell, 1, true);
        addChannel({Subject::Part, id.text, std::string(probe::kEnergised)}, cell, 1, true);
    }

    void addWire(const End& from, const End& to, int cell) {
        const WireId id{named("w", static_cast<int>(circuit.wires.size()))};
        Wire wire;
        wire.reference = "W" + id.text.substr(1);
        wire.from = from;
        wire.to = to;
        wire.colour = cell % 2 == 0 ? "RD" : "BKYE";
        wire.bends = {{circuit.parts[to.part].at.x - 4, circuit.parts[from.part].at.y + 4}};
        circuit.wires[id] = wire;
        addChannel({Subject::Wire, id.text, std::string(probe::kCurrent)}, cell, 5, false);
    }

    /// Every third cell changes from second to second.
    void addChannel(ChannelKey key, int cell, float value, bool stepped) {
        Channel channel{std::move(key), {}, {}, {}};
        channel.probe.stepped = stepped;
        for (int i = 0; i < kFrames; ++i) {
            const bool on = cell % 3 != 0 ? cell % 2 == 0 : i % 2 == 0;
            channel.times_s.insert(channel.times_s.end(), {double(i), i + 1.0});
            channel.values.insert(channel.values.end(), 2, on ? value : 0.0F);
        }
        recording.channels.push_back(channel);
    }
};

struct Percentiles {
    double median_ms;
    double p95_ms;
};

/// Each frame up to the end of the repaint that it causes.
Percentiles timed(const std::function<void(int)>& frame) {
    std::vector<double> times_ms;
    QElapsedTimer clock;
    for (int i = 0; i < kFrames; ++i) {
        clock.start();
        frame(i);
        QCoreApplication::processEvents();
        times_ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    std::sort(times_ms.begin(), times_ms.end());
    return {times_ms[kFrames / 2], times_ms[kFrames * 95 / 100]};
}

void pan(QGraphicsView& view, int frame) {
    const int step = frame < kFrames / 2 ? 3 : -3;
    view.horizontalScrollBar()->setValue(view.horizontalScrollBar()->value() + step);
    view.verticalScrollBar()->setValue(view.verticalScrollBar()->value() + step);
}

/// A tenth of a notch of the wheel, out and back in.
void zoom(CircuitView& view, int frame) {
    const QPointF at = view.viewport()->rect().center();
    QWheelEvent wheel(at, view.viewport()->mapToGlobal(at), {}, {0, frame < kFrames / 2 ? -12 : 12},
                      Qt::NoButton, Qt::ControlModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(view.viewport(), &wheel);
}

void zoomPeer(QGraphicsView& view, int frame) {
    const double factor = frame < kFrames / 2 ? 0.986 : 1 / 0.986;
    view.scale(factor, factor);
}

/// A plain item for each part and wire, where the canvas has them.
struct Peer {
    QGraphicsScene scene;
    QGraphicsView view{&scene};
    std::vector<QAbstractGraphicsShapeItem*> items;

    explicit Peer(const CircuitScene& canvas) {
        for (const auto& [id, picture] : canvas.layout().parts) {
            items.push_back(scene.addRect(picture.body.translated(picture.origin()), QPen(Qt::black, 2)));
        }
        for (const auto& [id, picture] : canvas.layout().wires) {
            QPainterPath path;
            path.addPolygon(picture.path);
            items.push_back(scene.addPath(path, QPen(Qt::red, 3)));
        }
        view.setRenderHint(QPainter::Antialiasing);
        view.setTransformationAnchor(QGraphicsView::AnchorViewCenter);
    }

    void changeEveryThird(int frame) {
        for (std::size_t i = 0; i < items.size(); i += 3) {
            QPen pen = items[i]->pen();
            pen.setColor(frame % 2 == 0 ? Qt::blue : Qt::red);
            items[i]->setPen(pen);
        }
    }
};

void print(const char* what, const Percentiles& own, const Percentiles& peer, double goal_ms) {
    fmt::print(
        "  {:<6} median {:6.1f} ms, p95 {:6.1f} ms   peer {:6.1f} ms, {:6.1f} ms; p95 {:.2f} of the peer's, "
        "goal {} ms\n",
        what, own.median_ms, own.p95_ms, peer.median_ms, peer.p95_ms, own.p95_ms / peer.p95_ms, goal_ms);
}

void benchLargeCircuit() {
    const LargeCircuit large;
    Document document;
    Document idle; // so that nothing is computed beside
    Selection selection;
    Analysis analysis(idle);
    CircuitView view(document, selection, analysis);
    view.resize(1280, 800);
    view.show();
    static_cast<void>(QTest::qWaitForWindowExposed(&view));
    document.startNew(large.circuit);
    view.fit();
    auto& scene = *static_cast<CircuitScene*>(view.scene());
    Peer peer(scene);
    peer.view.resize(1280, 800);
    peer.view.show();
    static_cast<void>(QTest::qWaitForWindowExposed(&peer.view));
    peer.view.setSceneRect(view.sceneRect());
    peer.view.setTransform(view.transform());
    QTest::qWait(200);
    const double goal_ms = view.devicePixelRatioF() > 1.5 ? 16 : 8;
    fmt::print("canvas, {} parts and {} wires, at {:.0f} %\n", large.circuit.parts.size(),
               large.circuit.wires.size(), 100 * view.devicePixelRatioF());
    print("pan", timed([&](int frame) { pan(view, frame); }),
          timed([&](int frame) { pan(peer.view, frame); }), goal_ms);
    print("zoom", timed([&](int frame) { zoom(view, frame); }),
          timed([&](int frame) { zoomPeer(peer.view, frame); }), goal_ms);
    print("scrub",
          timed([&](int frame) { scene.showLive(liveState(large.circuit, large.recording, frame + 0.5)); }),
          timed([&](int frame) { peer.changeEveryThird(frame); }), goal_ms);
}

void benchFile(const char* path) {
    Document document;
    Selection selection;
    Analysis analysis(document);
    CircuitView view(document, selection, analysis);
    view.resize(1280, 800);
    view.show();
    static_cast<void>(QTest::qWaitForWindowExposed(&view));
    if (!document.open(QString::fromLocal8Bit(path))) {
        fmt::print(stderr, "cannot open {}\n", path);
        return;
    }
    static_cast<void>(QTest::qWaitFor([&] { return !analysis.isRunning(); }, 120000));
    QTest::qWait(200);
    const double duration_s = analysis.drive()->recording.duration_s;
    const Percentiles scrub = timed([&](int frame) { analysis.setCursor(duration_s * frame / kFrames); });
    fmt::print("  cursor to repaint, {}: median {:.1f} ms, p95 {:.1f} ms; goal 2 ms\n", path, scrub.median_ms,
               scrub.p95_ms);
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    if (argc < 2) {
        return 2;
    }
    benchLargeCircuit();
    benchFile(argv[1]);
    return 0;
}

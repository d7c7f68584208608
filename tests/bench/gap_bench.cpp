// Prints how long the window's thread is busy without a break while a session of panning, zooming, scrubbing
// and editing is played to it: at rest, the peer, and while a spread of ten thousand drives runs. Use:
// bench_gap CIRCUIT

#include "app/desktop/circuit/circuit_view.h"
#include "app/desktop/data_files.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"
#include "app/desktop/studies/studies_panel.h"
#include "app/desktop/studies/study_page.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QSpinBox>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <fmt/core.h>

#include <algorithm>
#include <vector>

using namespace pumpwright;

namespace {

constexpr int kSession_ms = 8000;
constexpr int kAct_ms = 40;
constexpr double kTick_ms = 1;

/// Time between the ticks of a timer that is due each millisecond, less that millisecond.
class GapRecorder {
public:
    GapRecorder() {
        m_timer.setTimerType(Qt::PreciseTimer);
        QObject::connect(&m_timer, &QTimer::timeout, &m_timer, [this] {
            const double gap_ms = static_cast<double>(m_clock.nsecsElapsed()) / 1e6 - kTick_ms;
            m_clock.start();
            m_gaps_ms.push_back(std::max(0.0, gap_ms));
        });
        m_clock.start();
        m_timer.start(static_cast<int>(kTick_ms));
    }

    void print(const char* what) {
        m_timer.stop();
        std::sort(m_gaps_ms.begin(), m_gaps_ms.end());
        const auto longer = [&](double than_ms) {
            return m_gaps_ms.end() - std::upper_bound(m_gaps_ms.begin(), m_gaps_ms.end(), than_ms);
        };
        fmt::print("  {:<24} p99 {:6.1f} ms, longest {:6.1f} ms, {} of {} over 16 ms; goals 8 ms and 16 ms\n",
                   what, m_gaps_ms[m_gaps_ms.size() * 99 / 100], m_gaps_ms.back(), longer(16),
                   m_gaps_ms.size());
    }

private:
    QTimer m_timer;
    QElapsedTimer m_clock;
    std::vector<double> m_gaps_ms;
};

/// One thing after the other that a user does.
void act(MainWindow& window, int step) {
    CircuitView& view = window.circuitView();
    switch (step % 4) {
    case 0:
        step % 8 == 0 ? view.zoomIn() : view.zoomOut();
        break;
    case 1:
        window.analysis().setCursor(0.1 * (step % 600));
        break;
    case 2:
        QTest::keyClick(&view, step % 8 == 2 ? Qt::Key_Left : Qt::Key_Right);
        break;
    default:
        view.selectAll();
        view.nudgeSelection(step % 8 == 3 ? 1 : -1, 0);
        break;
    }
}

void playSession(MainWindow& window, const char* what) {
    GapRecorder gaps;
    QElapsedTimer clock;
    clock.start();
    for (int step = 0; clock.elapsed() < kSession_ms; ++step) {
        act(window, step);
        QTest::qWait(kAct_ms);
    }
    gaps.print(what);
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    if (argc < 2) {
        return 2;
    }
    const QTemporaryDir folder;
    Preferences preferences(folder.filePath(QStringLiteral("settings.ini")));
    MainWindow window(readCatalogue(cataloguePaths()).value_or(Catalogue{}), preferences);
    window.resize(1280, 800);
    window.show();
    if (!window.open(QString::fromLocal8Bit(argv[1]))) {
        return 1;
    }
    static_cast<void>(QTest::qWaitFor([&] { return !window.analysis().isRunning(); }, 120000));
    QTest::qWait(500);
    fmt::print("busy window, {}\n", argv[1]);
    playSession(window, "at rest (peer)");
    StudyPage& spread = window.findChild<StudiesPanel*>()->spread();
    if (auto* cars = spread.findChild<QSpinBox*>()) {
        cars->setValue(cars->maximum());
    }
    spread.run();
    playSession(window, "while a spread runs");
    fmt::print("  the spread was {} at the end\n", spread.isRunning() ? "still running" : "done");
    window.handOperation().begin();
    playSession(window, "while operated by hand");
    return 0;
}

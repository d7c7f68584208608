// Prints how long the window takes to its first paint, empty and with a circuit, when findings and drive are
// there, how soon both follow an edit, and the memory it has then. The empty window is the peer; compare
// ratios within one run.

#include "app/desktop/data_files.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"
#include "core/circuit/edit.h"
#include "tests/bench/measures.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <fmt/core.h>

#include <algorithm>
#include <vector>

using namespace pumpwright;

namespace {

struct Times {
    double painted_ms = 0;
    double findings_ms = 0;
    double drive_ms = 0;
    double editToFindings_ms = 0;
    double editToDrive_ms = 0;
    double peak_MiB = 0;
};

double milliseconds(const QElapsedTimer& clock) {
    return static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

/// One more digit typed into the length of a wire.
Edit typedEdit(const Circuit& circuit, int digit) {
    const auto& [id, wire] = *circuit.wires.begin();
    Wire longer = wire;
    longer.length_m += 0.001 * (1 + digit);
    return {"Type", {putWire(id, longer)}};
}

/// Findings: median over keystrokes, each of which overtakes the drive of the one before. Drive: after the
/// last.
void timeKeystrokes(MainWindow& window, Times& times) {
    constexpr int kKeystrokes = 9;
    std::vector<double> findings;
    QElapsedTimer clock;
    for (int i = 0; i < kKeystrokes; ++i) {
        QSignalSpy found(&window.analysis(), &Analysis::findingsChanged);
        clock.start();
        window.document().apply(typedEdit(window.document().circuit(), i));
        static_cast<void>(found.wait(60000));
        findings.push_back(milliseconds(clock));
    }
    std::sort(findings.begin(), findings.end());
    times.editToFindings_ms = findings[kKeystrokes / 2];
    static_cast<void>(QTest::qWaitFor([&] { return !window.analysis().isRunning(); }, 60000));
    QSignalSpy driven(&window.analysis(), &Analysis::driveChanged);
    clock.start();
    window.document().apply(typedEdit(window.document().circuit(), 0));
    static_cast<void>(driven.wait(60000));
    times.editToDrive_ms = milliseconds(clock);
}

Times openWindow(const Catalogue& catalogue, const QString& file) {
    const QTemporaryDir folder;
    Preferences preferences(folder.filePath(QStringLiteral("settings.ini")));
    Times times;
    QElapsedTimer clock;
    clock.start();
    MainWindow window(catalogue, preferences);
    QObject::connect(&window.analysis(), &Analysis::findingsChanged, &window, [&] {
        times.findings_ms = times.findings_ms > 0 ? times.findings_ms : milliseconds(clock);
    });
    if (!file.isEmpty()) {
        window.open(file);
    }
    window.resize(1280, 800);
    window.show();
    static_cast<void>(QTest::qWaitForWindowExposed(&window));
    window.grab();
    times.painted_ms = milliseconds(clock);
    static_cast<void>(QTest::qWaitFor([&] { return !window.analysis().isRunning(); }, 60000));
    times.drive_ms = milliseconds(clock);
    times.peak_MiB = peakMebibytes();
    if (!file.isEmpty()) {
        timeKeystrokes(window, times);
    }
    return times;
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    if (argc < 2) {
        return 2;
    }
    const Result<Catalogue> catalogue = readCatalogue(cataloguePaths());
    const Catalogue parts = catalogue.value_or(Catalogue{});
    openWindow(parts, {}); // fonts and styles are loaded once
    const Times empty = openWindow(parts, {});
    const Times full = openWindow(parts, QString::fromLocal8Bit(argv[1]));
    fmt::print("window, {}\n", argv[1]);
    fmt::print("  first paint, empty (peer)    {:9.1f} ms\n", empty.painted_ms);
    fmt::print(
        "  first paint, circuit         {:9.1f} ms   {:.1f} times the peer; goal 2.5 times and 120 ms\n",
        full.painted_ms, full.painted_ms / empty.painted_ms);
    fmt::print("  first findings               {:9.1f} ms   goal 50 ms after the first paint\n",
               full.findings_ms);
    fmt::print("  drive and all findings       {:9.1f} ms\n", full.drive_ms);
    fmt::print("  edit to new findings         {:9.1f} ms   goal 16 ms, a drive to be cancelled included\n",
               full.editToFindings_ms);
    fmt::print("  edit to new chart            {:9.1f} ms   {:.1f} times the above; goal 60 ms\n",
               full.editToDrive_ms, full.editToDrive_ms / full.editToFindings_ms);
    fmt::print("  peak memory, empty (peer)    {:9.0f} MiB\n", empty.peak_MiB);
    fmt::print("  peak memory, circuit         {:9.0f} MiB  {:.1f} times the peer; goal 100 MiB\n",
               full.peak_MiB, full.peak_MiB / empty.peak_MiB);
    return 0;
}

// Prints how long the window takes to its first paint, empty and with a circuit, and when findings and drive
// are there (P1), and the memory it has then (P11). The empty window is the peer; compare ratios within one
// run.

#include "app/desktop/data_files.h"
#include "app/desktop/dialogs.h"
#include "app/desktop/main_window.h"
#include "app/desktop/preferences.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>

#include <fmt/core.h>
#include <sys/resource.h>

using namespace pumpwright;

namespace {

struct Times {
    double painted_ms = 0;
    double findings_ms = 0;
    double drive_ms = 0;
};

double milliseconds(const QElapsedTimer& clock) {
    return static_cast<double>(clock.nsecsElapsed()) / 1e6;
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
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    fmt::print("window, {}\n", argv[1]);
    fmt::print("  first paint, empty (peer)    {:9.1f} ms\n", empty.painted_ms);
    fmt::print(
        "  first paint, circuit (P1)    {:9.1f} ms   {:.1f} times the empty one, goal 2.5 times and 120 ms\n",
        full.painted_ms, full.painted_ms / empty.painted_ms);
    fmt::print("  first findings               {:9.1f} ms   goal 50 ms after the first paint\n",
               full.findings_ms);
    fmt::print("  drive and all findings       {:9.1f} ms\n", full.drive_ms);
    fmt::print("  peak memory (P11)            {:9.0f} MiB  goal 100 MiB\n",
               static_cast<double>(usage.ru_maxrss) / 1024);
    return 0;
}

// Prints what reading, checking and driving the samples costs. Times are wall-clock and depend on the
// machine; compare ratios within one run.

#include "core/checks/rule.h"
#include "core/files/circuit_file.h"
#include "core/simulate/drive.h"
#include "tests/bench/measures.h"

#include <fmt/core.h>

using namespace pumpwright;

namespace {

void benchFile(const char* path) {
    const auto circuit = readCircuit(path);
    if (!circuit) {
        fmt::print("{}: {}\n", path, circuit.error().text);
        return;
    }
    DriveResult drive;
    Nets nets;
    const double read = milliseconds(5, [&] { static_cast<void>(readCircuit(path)); });
    const double check = milliseconds(5, [&] {
        nets = findNets(*circuit);
        static_cast<void>(checkCircuit({*circuit, nets, nullptr}));
    });
    const double run = milliseconds(3, [&] { drive = simulateDrive(*circuit); });
    const double checkDriven = milliseconds(3, [&] {
        static_cast<void>(checkCircuit({*circuit, nets, &drive}));
    });
    fmt::print("{}\n  {} parts, {} wires, {} unknowns\n", path, circuit->parts.size(), circuit->wires.size(),
               drive.statistics.unknowns);
    fmt::print("  read                         {:9.2f} ms\n", read);
    fmt::print("  check without drive         {:9.2f} ms   goal 16 ms from the keystroke\n", check);
    fmt::print("  drive of {:5.0f} s            {:9.2f} ms   goal 60 ms; {} steps, {} events, {:.0f} KiB "
               "recorded\n",
               circuit->plan.duration_s, run, drive.statistics.steps, drive.statistics.events,
               static_cast<double>(drive.recording.bytes()) / 1024);
    fmt::print("  check with drive             {:9.2f} ms\n", checkDriven);
    fmt::print("  drive : check without drive  {:9.0f} times\n", run / check);
}

/// A day's drive in bounded memory.
void benchDay(const char* path) {
    auto circuit = readCircuit(path);
    if (!circuit) {
        return;
    }
    circuit->plan.duration_s = 86400;
    const double before = peakMebibytes();
    DriveResult drive;
    const double run = milliseconds(1, [&] { drive = simulateDrive(*circuit); });
    fmt::print("a day of {}\n  {:.2f} s, recording {:.1f} MiB (goal 64), peak {:.0f} MiB (goal 200), before "
               "{:.0f} MiB\n",
               path, run / 1000, static_cast<double>(drive.recording.bytes()) / (1 << 20), peakMebibytes(),
               before);
}

} // namespace

int main(int argc, char** argv) {
    for (int i = 1; i < argc; ++i) {
        benchFile(argv[i]);
    }
    if (argc > 1) {
        benchDay(argv[1]);
    }
    return argc > 1 ? 0 : 2;
}

// Prints how the cost of a drive grows with its length and with what happens in it, and what the same drive
// costs CVODE of SUNDIALS on equations that were written out by hand. Times depend on the machine; compare
// within one run.

#include "core/simulate/drive.h"
#include "tests/bench/measures.h"
#include "tests/support/van_by_hand.h"
#include "tests/support/van_circuit.h"

#include <fmt/core.h>

#include <cmath>
#include <cstdio>
#include <functional>
#include <vector>

using namespace pumpwright;
using namespace pumpwright::test;

namespace {

std::vector<Press> pressesEvery(double period_s, double duration_s) {
    std::vector<Press> presses;
    for (double at_s = 30; at_s + 5 < duration_s; at_s += period_s) {
        presses.push_back({at_s, 1.5, 150, 0.2, {}});
    }
    return presses;
}

Circuit van(double duration_s, std::vector<Press> presses, double differential_Pa = 8e3) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", differential_Pa}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6);
    DrivePlan plan = standingPlan(duration_s);
    plan.presses = std::move(presses);
    return builder.plan(plan).build();
}

/// Slope of the straight line through log cost over log size.
double exponent(const std::vector<double>& sizes, const std::vector<double>& costs) {
    double x = 0;
    double y = 0;
    double xx = 0;
    double xy = 0;
    const auto count = static_cast<double>(sizes.size());
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const double a = std::log(sizes[i]);
        const double b = std::log(costs[i]);
        x += a / count;
        y += b / count;
        xx += a * a / count;
        xy += a * b / count;
    }
    return (xy - x * y) / (xx - x * x);
}

/// Prints a row for each size and returns the exponent.
double fit(const char* what, const std::vector<double>& sizes,
           const std::function<Circuit(double)>& circuitOf) {
    std::vector<double> costs;
    for (const double size : sizes) {
        const Circuit circuit = circuitOf(size);
        DriveResult drive;
        costs.push_back(milliseconds(2, [&] { drive = simulateDrive(circuit); }));
        fmt::print("  {:8.0f} {}  {:10.1f} ms, {} steps, {} events, {:.1f} MiB recorded\n", size, what,
                   costs.back(), drive.statistics.steps, drive.statistics.events,
                   static_cast<double>(drive.recording.bytes()) / (1 << 20));
        if (drive.status != DriveStatus::Finished) {
            fmt::print("  {}\n", drive.message);
        }
    }
    return exponent(sizes, costs);
}

/// At 1e-6 CVODE does not come to the end of the ten minutes.
constexpr double kPeerTolerance = 1e-8;

void printAgainstHand(const char* what, VanByHand hand) {
    const Circuit drawn = van(hand.duration_s, hand.presses, hand.differential_Pa);
    VanByHand::Drive drive;
    const double ours = milliseconds(3, [&] { static_cast<void>(simulateDrive(drawn)); });
    const double peer = milliseconds(3, [&] { drive = hand.drive(kPeerTolerance); });
    fmt::print("  {}: drawn {:.1f} ms, by hand with CVODE at {:.0e} {:.1f} ms ({} steps), ratio {:.2f}\n",
               what, ours, kPeerTolerance, peer, drive.steps, ours / peer);
}

} // namespace

int main() {
    std::setvbuf(stdout, nullptr, _IOLBF, BUFSIZ);
    fmt::print("A press each minute, length of the drive (goal: exponent 1.05 or less)\n");
    const double length =
        fit("s", {60, 600, 3600, 14400}, [](double size) { return van(size, pressesEvery(60, size)); });
    fmt::print("  exponent {:.2f}\n", length);
    fmt::print("Ten minutes, number of presses\n");
    const double events =
        fit("presses", {10, 20, 40, 80}, [](double size) { return van(600, pressesEvery(560 / size, 600)); });
    fmt::print("  exponent {:.2f}\n", events);
    fmt::print("Against the same circuit written out by hand (19 differential equations)\n");
    VanByHand hand;
    hand.differential_Pa = 8e3;
    hand.duration_s = 600;
    hand.presses = pressesEvery(55, 600);
    printAgainstHand("ten minutes, ten presses", hand);
    hand = {};
    hand.duration_s = 60;
    printAgainstHand("a chattering minute", hand);
    fmt::print("Peak memory of all that {:.0f} MiB (goal 200)\n", peakMebibytes());
    return 0;
}

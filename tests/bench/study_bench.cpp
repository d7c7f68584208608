// Prints what studies cost: a spread on one thread and on two, with the same bytes or not; breakdowns of the
// typical circuit; a sweep. Times are wall-clock and depend on the machine; compare ratios within one run.

#include "core/files/circuit_file.h"
#include "core/files/spread_rows.h"
#include "core/study/breakdowns.h"
#include "core/study/made_plan.h"
#include "core/study/spread.h"
#include "core/study/sweep.h"

#include <fmt/core.h>
#include <sys/resource.h>

#include <chrono>
#include <cstdlib>

using namespace pumpwright;

namespace {

using Clock = std::chrono::steady_clock;

double secondsSince(Clock::time_point begin) {
    return std::chrono::duration<double>(Clock::now() - begin).count();
}

double peakMebibytes() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024;
}

struct TimedSpread {
    std::string rows;
    double seconds = 0;
    double first_s = 0; ///< until the first car
};

TimedSpread spread(const Circuit& circuit, unsigned threads, std::size_t cars) {
    TimedSpread timed;
    SpreadOptions options;
    options.threads = threads;
    options.count = cars;
    const auto begin = Clock::now();
    options.partial = [&](const SpreadCar& car, const SpreadTally&) {
        timed.first_s = timed.rows.empty() ? secondsSince(begin) : timed.first_s;
        timed.rows += spreadRow({"", options.seed}, car);
    };
    static_cast<void>(runSpread(circuit, options));
    timed.seconds = secondsSince(begin);
    return timed;
}

void benchSpread(const Circuit& circuit, std::size_t cars) {
    const double goalCars = 10000;
    const TimedSpread one = spread(circuit, 1, cars);
    const double peakBefore = peakMebibytes();
    const TimedSpread two = spread(circuit, 2, cars);
    const double each_ms = 1000 * two.seconds / static_cast<double>(cars);
    fmt::print("spread of {} cars, {:.0f} s each\n", cars, circuit.plan.duration_s);
    fmt::print("  one thread                  {:9.2f} s\n", one.seconds);
    fmt::print("  two threads                 {:9.2f} s   {:.2f} times as fast, goal 1.9\n", two.seconds,
               one.seconds / two.seconds);
    fmt::print("  a car on two threads        {:9.2f} ms  10,000 cars in {:.0f} s, goal 25\n", each_ms,
               each_ms * goalCars / 1000);
    fmt::print("  first car after             {:9.3f} s   goal for a first band 0.5\n", two.first_s);
    fmt::print("  same bytes                  {:>9}\n", one.rows == two.rows ? "yes" : "NO");
    fmt::print("  peak memory                 {:9.0f} MiB after one run, {:.0f} after two\n", peakBefore,
               peakMebibytes());
}

/// Cars that take no time, to see whether memory grows with their number.
void benchTally(const Circuit& circuit) {
    constexpr std::uint64_t kCars = 10'000'000;
    SpreadTally tally(circuit, 1);
    SpreadCar car{0, DriveStatus::Finished, {}};
    car.numbers.lowestVacuum_Pa = 50e3;
    for (; car.number < kCars / 100; ++car.number) {
        tally.add(car);
    }
    const double before = peakMebibytes();
    const auto begin = Clock::now();
    for (; car.number < kCars; ++car.number) {
        tally.add(car);
    }
    fmt::print("  adding up 9.9 million cars  {:9.2f} s   memory grows by {:.1f} MiB\n", secondsSince(begin),
               peakMebibytes() - before);
}

void benchBreakdowns(const Circuit& circuit) {
    const auto begin = Clock::now();
    const BreakdownStudy study = runBreakdowns(circuit);
    fmt::print("breakdowns of {} parts over {:.0f} s\n", circuit.parts.size(), circuit.plan.duration_s);
    fmt::print("  {:4} drives                 {:9.2f} s   goal 2\n", study.total, secondsSince(begin));
}

void benchSweep(const Circuit& circuit) {
    for (const Adjustable& what : adjustables(circuit)) {
        if (what.spec->key != "differential_Pa") {
            continue;
        }
        SweepOptions options;
        options.measure = findMeasure("chatter");
        options.goal = 0;
        const auto begin = Clock::now();
        const SweepStudy study = runSweep(circuit, {{what, 200, 10000, 21}}, options);
        fmt::print("sweep of {}, 21 points, {} thresholds {:9.2f} s\n", what.label, study.thresholds.size(),
                   secondsSince(begin));
        return;
    }
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        return 2;
    }
    constexpr std::size_t kCars = 200;
    const auto circuit = readCircuit(argv[1]);
    if (!circuit) {
        fmt::print("{}: {}\n", argv[1], circuit.error().text);
        return 2;
    }
    Circuit tenMinutes = *circuit;
    if (const auto plan = madePlan(*circuit, *findDriveSort("city"), 1, 600)) {
        tenMinutes.plan = *plan;
    }
    fmt::print("{}\n", argv[1]);
    benchSpread(tenMinutes, argc > 2 ? static_cast<std::size_t>(std::atol(argv[2])) : kCars);
    benchTally(tenMinutes);
    benchBreakdowns(*circuit);
    benchSweep(*circuit);
    return 0;
}

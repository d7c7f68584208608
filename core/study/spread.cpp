#include "core/study/spread.h"

#include "core/study/varied_circuit.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

SpreadCar drivenCar(const Circuit& circuit, std::uint64_t seed, std::uint64_t number,
                    const std::atomic<bool>& stop) {
    const Circuit car = variedCircuit(circuit, seed, number);
    DriveOptions options;
    options.cancel = &stop;
    options.balances = false;
    const DriveResult drive = simulateDrive(car, options);
    return {number, drive.status, driveNumbers(car, drive.recording)};
}

} // namespace

std::optional<Percentiles> percentilesOf(std::vector<double> values) {
    if (values.empty()) {
        return std::nullopt;
    }
    std::ranges::sort(values);
    const auto at = [&](double share) {
        const double place = share * static_cast<double>(values.size() - 1);
        const auto below = static_cast<std::size_t>(place);
        const std::size_t above = std::min(below + 1, values.size() - 1);
        return std::lerp(values[below], values[above], place - std::floor(place));
    };
    return Percentiles{at(0.05), at(0.5), at(0.95)};
}

SpreadSummary runSpread(const Circuit& circuit, const SpreadOptions& options) {
    SpreadSummary summary;
    std::vector<double> vacuums_Pa;
    std::vector<double> shares;
    OrderedRun<SpreadCar>::run(
        options.count, options,
        [&](std::size_t index, const std::atomic<bool>& stop) {
            return drivenCar(circuit, options.seed, options.from + index, stop);
        },
        [&](std::size_t, const SpreadCar& car) {
            const bool finished = car.status == DriveStatus::Finished;
            summary.finished += finished ? 1 : 0;
            summary.stopped += finished ? 0 : 1;
            summary.chattering += finished && car.numbers.chatters ? 1 : 0;
            summary.lacking += finished && car.numbers.lackingPresses > 0 ? 1 : 0;
            if (finished && car.numbers.lowestVacuum_Pa) {
                vacuums_Pa.push_back(*car.numbers.lowestVacuum_Pa);
                shares.push_back(car.numbers.leastAssistShare);
            }
            if (options.partial) {
                options.partial(car);
            }
            return true;
        });
    summary.chatters = proportion(summary.chattering, summary.finished);
    summary.lacks = proportion(summary.lacking, summary.finished);
    summary.lowestVacuum_Pa = percentilesOf(std::move(vacuums_Pa));
    summary.leastAssistShare = percentilesOf(std::move(shares));
    return summary;
}

} // namespace pumpwright

#include "core/study/spread.h"

#include "core/study/varied_circuit.h"

namespace pumpwright {
namespace {

constexpr std::uint64_t kLookEvery = 100; ///< cars

SpreadCar drivenCar(const Circuit& car, std::uint64_t number, const std::atomic<bool>& stop) {
    DriveOptions options;
    options.cancel = &stop;
    options.balances = false;
    const DriveResult drive = simulateDrive(car, options);
    return {number, drive.status, driveNumbers(car, drive.recording)};
}

} // namespace

SpreadSummary runSpread(const Circuit& circuit, const SpreadOptions& options) {
    const std::vector<VariedValue> values = variedValues(circuit);
    SpreadTally tally(circuit, options.seed);
    bool isEnough = false;
    OrderedRun<SpreadCar>::run(
        options.count, options,
        [&](std::size_t index, const std::atomic<bool>& stop) {
            const std::uint64_t number = options.from + index;
            return drivenCar(variedCircuit(circuit, values, options.seed, number), number, stop);
        },
        [&](std::size_t index, const SpreadCar& car) {
            tally.add(car);
            if (options.partial) {
                options.partial(car, tally);
            }
            isEnough = options.sureTo > 0 && (index + 1) % kLookEvery == 0 && tally.isSureTo(options.sureTo);
            return !isEnough;
        });
    SpreadSummary summary = tally.summary();
    summary.endedSure = isEnough;
    return summary;
}

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"
#include "core/simulate/drive.h"
#include "core/study/drive_numbers.h"
#include "core/study/proportion.h"
#include "core/study/study_run.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace pumpwright {

/// One of many cars built after the same circuit, each with parts that lie differently within their
/// tolerances.
struct SpreadCar {
    std::uint64_t number = 0;
    DriveStatus status = DriveStatus::Finished;
    DriveNumbers numbers;
    friend bool operator==(const SpreadCar&, const SpreadCar&) = default;
};

struct SpreadOptions : StudyOptions {
    std::uint64_t seed = 1;
    std::uint64_t from = 0;  ///< number of the first car, so that a study can be split over machines
    std::size_t count = 200; ///< of cars
    std::function<void(const SpreadCar&)> partial; ///< called with each car, in order of their numbers
};

/// Values below which 5, 50 and 95 % of the cars lie.
struct Percentiles {
    double p5 = 0;
    double p50 = 0;
    double p95 = 0;
};

/// What the cars come to. Cars whose drive could not be finished count in `stopped` alone.
struct SpreadSummary {
    std::size_t finished = 0;
    std::size_t stopped = 0;
    std::size_t chattering = 0;
    std::size_t lacking = 0; ///< with a press without full assist
    Proportion chatters;
    Proportion lacks;
    std::optional<Percentiles> lowestVacuum_Pa; ///< nothing without a press
    std::optional<Percentiles> leastAssistShare;
};

/// Drives cars `from` to `from` + `count` − 1; the same on any number of threads. Keeps a few numbers for
/// each car.
SpreadSummary runSpread(const Circuit& circuit, const SpreadOptions& options = {});

/// By straight lines between the values in order, the least at 0 % and the greatest at 100 %. Nothing of no
/// values.
std::optional<Percentiles> percentilesOf(std::vector<double> values);

} // namespace pumpwright

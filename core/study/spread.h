#pragma once

#include "core/study/spread_tally.h"
#include "core/study/study_run.h"

#include <cstdint>
#include <functional>

namespace pumpwright {

struct SpreadOptions : StudyOptions {
    std::uint64_t seed = 1;
    std::uint64_t from = 0;  ///< number of the first car, so that a study can be split over machines
    std::size_t count = 200; ///< of cars, at most
    /// The study ends early once both shares are known to ± this; 0: never. Looked at after every hundred
    /// cars, so that it ends at the same car on any number of threads.
    double sureTo = 0;
    /// Called with each car, in order of their numbers, and what all cars up to it come to.
    std::function<void(const SpreadCar&, const SpreadTally&)> partial;
};

/// Drives cars `from` to `from` + `count` − 1; the same on any number of threads. Takes the same memory for
/// any number of cars.
SpreadSummary runSpread(const Circuit& circuit, const SpreadOptions& options = {});

} // namespace pumpwright

#pragma once

#include "core/study/adjustable.h"
#include "core/study/measure.h"
#include "core/study/study_run.h"

#include <functional>
#include <optional>
#include <vector>

namespace pumpwright {

/// A value of the circuit that goes from one end to the other in even steps.
struct SweepAxis {
    Adjustable what;
    double from = 0; ///< [SI] within the range of the value; `to` may be below it
    double to = 0;
    int points = 21; ///< both ends included; at least 2

    double at(int point) const;
};

inline constexpr int kMostSweepPoints = 1000; ///< on one axis
inline constexpr int kMostMapPoints = 10000;  ///< on both together

struct SweepOptions : StudyOptions {
    const Measure* measure = nullptr; ///< must be given
    std::optional<double> goal;       ///< what is good enough [SI]; without it no threshold is looked for
    double resolution = 0; ///< [SI] how finely a threshold is found; 0: a thousandth of the first axis
    std::function<void(const struct SweepStudy&)> partial; ///< called with all so far, after each point
};

/// The circuit driven with one value, or two.
struct SweepPoint {
    std::vector<double> at; ///< [SI], one for each axis
    DriveOutcome outcome;
};

/// Where the result turns from bad to good along the first axis. The truth lies between the two, which are
/// no further apart than the resolution.
struct SweepThreshold {
    std::optional<double> second; ///< value on the second axis
    double bad = 0;
    double good = 0;
};

struct SweepStudy {
    std::vector<SweepAxis> axes;            ///< one or two
    std::vector<SweepPoint> points;         ///< the first axis runs fastest; fewer after a cancel
    std::vector<SweepThreshold> thresholds; ///< fewer than `turns` after a cancel
    std::size_t turns = 0;                  ///< neighbours on the first axis of which one is good
    std::size_t total = 0;
    double resolution = 0;
    bool isComplete() const { return points.size() == total; }
};

/// Drives the circuit at every point of one axis or two, then halves each interval in which the result turns
/// good. A drive that could not be finished is not good. The same on any number of threads.
SweepStudy runSweep(const Circuit& circuit, const std::vector<SweepAxis>& axes, const SweepOptions& options);

/// The result at a point; nothing where the drive could not be finished.
std::optional<double> sweepValue(const SweepPoint& point, const Measure& measure);

/// The usual resolution of a threshold on this axis.
double usualResolution(const SweepAxis& axis);

} // namespace pumpwright

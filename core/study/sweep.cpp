#include "core/study/sweep.h"

#include <cmath>
#include <numeric>

namespace pumpwright {
namespace {

/// Of the first axis: finer than any part is sold.
constexpr double kUsualShare = 1e-3;

SweepPoint drivenPoint(Circuit circuit, const std::vector<SweepAxis>& axes, std::vector<double> at,
                       const std::atomic<bool>& stop) {
    for (std::size_t i = 0; i < axes.size(); ++i) {
        setValue(circuit, axes[i].what, at[i]);
    }
    return {std::move(at), driveOutcome(circuit, stop)};
}

std::vector<double> placeOf(const std::vector<SweepAxis>& axes, std::size_t index) {
    std::vector<double> at;
    for (const SweepAxis& axis : axes) {
        const auto points = static_cast<std::size_t>(axis.points);
        at.push_back(axis.at(static_cast<int>(index % points)));
        index /= points;
    }
    return at;
}

/// Two neighbours on the first axis of which one is good.
struct Turn {
    std::vector<double> bad;
    std::vector<double> good;
};

std::vector<Turn> turnsOf(const SweepStudy& study, const Measure& measure, double goal) {
    const auto row = static_cast<std::size_t>(study.axes.front().points);
    std::vector<Turn> turns;
    for (std::size_t i = 1; i < study.points.size(); ++i) {
        const bool before = isGood(measure, sweepValue(study.points[i - 1], measure), goal);
        const bool after = isGood(measure, sweepValue(study.points[i], measure), goal);
        if (i % row != 0 && before != after) {
            const std::vector<double>& first = study.points[i - 1].at;
            const std::vector<double>& second = study.points[i].at;
            turns.push_back(before ? Turn{second, first} : Turn{first, second});
        }
    }
    return turns;
}

SweepThreshold halved(const Circuit& circuit, const std::vector<SweepAxis>& axes, Turn turn,
                      double resolution, const SweepOptions& options, const std::atomic<bool>& stop) {
    while (std::abs(turn.good.front() - turn.bad.front()) > resolution && !stop) {
        std::vector<double> middle = turn.good;
        middle.front() = std::midpoint(turn.good.front(), turn.bad.front());
        const SweepPoint point = drivenPoint(circuit, axes, middle, stop);
        const bool good = isGood(*options.measure, sweepValue(point, *options.measure), *options.goal);
        (good ? turn.good : turn.bad) = std::move(middle);
    }
    return {turn.good.size() > 1 ? std::optional(turn.good[1]) : std::nullopt, turn.bad.front(),
            turn.good.front()};
}

void findThresholds(const Circuit& circuit, SweepStudy& study, const SweepOptions& options) {
    const std::vector<Turn> turns = turnsOf(study, *options.measure, *options.goal);
    study.turns = turns.size();
    StudyOptions further = options;
    if (options.progress) {
        further.progress = [&](std::size_t done, std::size_t) {
            options.progress(study.total + done, study.total + turns.size());
        };
    }
    OrderedRun<SweepThreshold>::run(
        turns.size(), further,
        [&](std::size_t index, const std::atomic<bool>& stop) {
            return halved(circuit, study.axes, turns[index], study.resolution, options, stop);
        },
        [&](std::size_t, SweepThreshold threshold) {
            study.thresholds.push_back(threshold);
            return true;
        });
}

} // namespace

double SweepAxis::at(int point) const {
    return std::lerp(from, to, static_cast<double>(point) / (points - 1));
}

std::optional<double> sweepValue(const SweepPoint& point, const Measure& measure) {
    return point.outcome.status == DriveStatus::Finished ? measure.value(point.outcome) : std::nullopt;
}

double usualResolution(const SweepAxis& axis) {
    return kUsualShare * std::abs(axis.to - axis.from);
}

SweepStudy runSweep(const Circuit& circuit, const std::vector<SweepAxis>& axes, const SweepOptions& options) {
    SweepStudy study;
    study.axes = axes;
    study.total = 1;
    for (const SweepAxis& axis : axes) {
        study.total *= static_cast<std::size_t>(axis.points);
    }
    study.resolution = options.resolution > 0 ? options.resolution : usualResolution(axes.front());
    OrderedRun<SweepPoint>::run(
        study.total, options,
        [&](std::size_t index, const std::atomic<bool>& stop) {
            return drivenPoint(circuit, axes, placeOf(axes, index), stop);
        },
        [&](std::size_t, SweepPoint point) {
            study.points.push_back(std::move(point));
            if (options.partial) {
                options.partial(study);
            }
            return true;
        });
    if (options.goal && study.isComplete()) {
        findThresholds(circuit, study, options);
    }
    return study;
}

} // namespace pumpwright

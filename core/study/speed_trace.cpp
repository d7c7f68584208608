#include "core/study/speed_trace.h"

#include "core/study/brake_force.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

// Common practice, no published source.
constexpr double kSlopeWindow_s = 0.5; ///< to both sides
constexpr double kBegins_mps2 = 0.4;   ///< of the brakes: less is not told from the engine's drag
constexpr double kEnds_mps2 = 0.2;
constexpr double kShortest_s = 0.3;
constexpr double kRise_s = 0.25;

/// By the straight line through the samples within the window that fits best; through the neighbours where
/// there are too few.
double slopeAt(const SpeedTrace& trace, std::size_t index) {
    const std::vector<double>& times = trace.times_s;
    std::size_t begin = index;
    std::size_t end = index + 1;
    while (begin > 0 && (times[index] - times[begin - 1] <= kSlopeWindow_s || begin == index)) {
        --begin;
    }
    while (end < times.size() && (times[end] - times[index] <= kSlopeWindow_s || end == index + 1)) {
        ++end;
    }
    const auto count = static_cast<double>(end - begin);
    double time = 0;
    double speed = 0;
    for (std::size_t i = begin; i < end; ++i) {
        time += times[i] / count;
        speed += trace.speeds_mps[i] / count;
    }
    double numerator = 0;
    double denominator = 0;
    for (std::size_t i = begin; i < end; ++i) {
        numerator += (times[i] - time) * (trace.speeds_mps[i] - speed);
        denominator += (times[i] - time) * (times[i] - time);
    }
    return denominator > 0 ? numerator / denominator : 0;
}

} // namespace

std::vector<Braking> brakingsOf(const SpeedTrace& trace, const CoastingDrag& drag) {
    std::vector<Braking> brakings;
    bool isOn = false;
    for (std::size_t i = 0; i < trace.times_s.size(); ++i) {
        const double brakes_mps2 = -slopeAt(trace, i) - drag.at(trace.speeds_mps[i]);
        if (!isOn && brakes_mps2 > kBegins_mps2) {
            brakings.push_back({trace.times_s[i], trace.times_s[i], brakes_mps2});
        }
        isOn = brakes_mps2 > (isOn ? kEnds_mps2 : kBegins_mps2);
        if (isOn) {
            brakings.back().to_s = trace.times_s[i];
            brakings.back().deceleration_mps2 = std::max(brakings.back().deceleration_mps2, brakes_mps2);
        }
    }
    std::erase_if(brakings, [](const Braking& one) { return one.to_s - one.from_s < kShortest_s; });
    return brakings;
}

DrivePlan withDuration(DrivePlan plan, double duration_s) {
    for (ChargingSpan& span : plan.charging) {
        span.to_s = span.to_s >= plan.duration_s ? duration_s : span.to_s;
    }
    std::erase_if(plan.charging, [&](const ChargingSpan& span) { return span.from_s >= duration_s; });
    std::erase_if(plan.presses, [&](const Press& press) { return press.at_s > duration_s; });
    std::erase_if(plan.switchMoves, [&](const SwitchMove& move) { return move.at_s > duration_s; });
    for (ChargingSpan& span : plan.charging) {
        span.to_s = std::min(span.to_s, duration_s);
    }
    plan.duration_s = duration_s;
    return plan;
}

Result<DrivePlan> planFromTrace(const Circuit& circuit, const SpeedTrace& trace, const CoastingDrag& drag) {
    const Part* booster = firstBooster(circuit);
    if (booster == nullptr) {
        return tl::unexpected(
            Error{ErrorCode::DanglingReference,
                  "The circuit has no booster: how hard a press is follows from its values.",
                  {}});
    }
    const std::vector<Braking> brakings = brakingsOf(trace, drag);
    if (brakings.empty()) {
        return tl::unexpected(Error{ErrorCode::MissingKey,
                                    "The vehicle is never braked in this trace: check the unit of the speed.",
                                    {}});
    }
    DrivePlan plan = withDuration(circuit.plan, trace.times_s.back() - trace.times_s.front());
    plan.name = "From a speed trace";
    plan.presses.clear();
    for (const Braking& braking : brakings) {
        Press press;
        press.at_s = braking.from_s - trace.times_s.front();
        press.hold_s = std::max(braking.to_s - braking.from_s, kRise_s);
        press.rise_s = kRise_s;
        press.force_N = pedalForce_N(*booster, braking.deceleration_mps2);
        plan.presses.push_back(press);
    }
    return plan;
}

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"
#include "core/units/result.h"

#include <vector>

namespace pumpwright {

/// The speed of a vehicle over time.
struct SpeedTrace {
    std::vector<double> times_s; ///< rising
    std::vector<double> speeds_mps;
};

/// What slows a vehicle down that is neither driven nor braked: rolling, engine in gear, air.
struct CoastingDrag {
    double rolling_mps2 = 0.3;        ///< tyres and engine in gear. Common practice, no published source
    double perSpeedSquared_pm = 3e-4; ///< [1/m] ½·ρ·cd·A/m of a car of middle size. Common practice, likewise

    double at(double speed_mps) const { return rolling_mps2 + perSpeedSquared_pm * speed_mps * speed_mps; }
};

/// A stretch of a trace in which the brakes must have been on.
struct Braking {
    double from_s = 0;
    double to_s = 0;
    double deceleration_mps2 = 0; ///< of the brakes alone, at its hardest
};

/// Stretches that are slowed down more than drag does. The slope at each instant is that of the straight line
/// that fits best within half a second to both sides, so that steps of a speedometer are no braking.
std::vector<Braking> brakingsOf(const SpeedTrace& trace, const CoastingDrag& drag = {});

/// The circuit's plan with the trace's length and one press for each braking, as hard as the first booster's
/// law has it with full assist. What else happens in the plan stays as far as the trace goes; charging that
/// lasted to its end lasts to the new one. An error without a booster or a braking.
[[nodiscard]] Result<DrivePlan> planFromTrace(const Circuit& circuit, const SpeedTrace& trace,
                                              const CoastingDrag& drag = {});

/// The plan with another length: what lies behind its end is left out, and what lasted to its end still does.
DrivePlan withDuration(DrivePlan plan, double duration_s);

} // namespace pumpwright

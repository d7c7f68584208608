#pragma once

#include "core/circuit/ids.h"
#include "core/circuit/unknown_keys.h"

#include <string>
#include <vector>

namespace pumpwright {

/// One press of the brake pedal. The foot force rises in `rise_s`, stays, and falls in `rise_s`.
struct Press {
    double at_s = 0;
    double hold_s = 1.5;  ///< from the begin of the press to the begin of the release
    double force_N = 100; ///< on the pedal pad
    double rise_s = 0.2;
    UnknownKeys unknown = {};
    friend bool operator==(const Press&, const Press&) = default;
};

/// A hand switch moved by the driver (the ignition switch among them).
struct SwitchMove {
    double at_s = 0;
    PartId part;
    bool on = true;
    UnknownKeys unknown = {};
    friend bool operator==(const SwitchMove&, const SwitchMove&) = default;
};

/// A stretch of the drive in which the engine or the traction converter feeds the 12 V system.
struct ChargingSpan {
    double from_s = 0;
    double to_s = 0;
    UnknownKeys unknown = {};
    friend bool operator==(const ChargingSpan&, const ChargingSpan&) = default;
};

/// A point of the altitude profile; straight lines between the points, level before and after.
struct AltitudePoint {
    double at_s = 0;
    double altitude_m = 0;
    UnknownKeys unknown = {};
    friend bool operator==(const AltitudePoint&, const AltitudePoint&) = default;
};

/// What happens to the vehicle while the drive is simulated. Lists are in order of time.
struct DrivePlan {
    std::string name = "Drive";
    double duration_s = 120;
    double ambient_K = 293.15;
    double initialVacuum_Pa = 0; ///< gauge vacuum in booster and reservoir at the start
    /// The drive begins when everything has come to what it comes to under the plan's first instant: pump
    /// warm, booster evacuated. Else at rest, with the vacuum above.
    bool startsSteady = false;
    std::vector<Press> presses;
    std::vector<SwitchMove> switchMoves;
    std::vector<ChargingSpan> charging;
    std::vector<AltitudePoint> altitude;
    UnknownKeys unknown = {};
    friend bool operator==(const DrivePlan&, const DrivePlan&) = default;
};

} // namespace pumpwright

#pragma once

#include "core/checks/survey.h"

#include <optional>
#include <vector>

namespace pumpwright {

/// A booster whose source of vacuum has gone, with what holds vacuum beside it.
struct IsolatedBooster {
    BoosterFacts facts;
    double beside_m3 = 0;  ///< reservoirs and hoses on its side of the check valve
    double ambient_Pa = 0; ///< around it
};

/// What one press gets, and what it leaves.
struct IsolatedPress {
    double asked_N = 0;
    double given_N = 0;
    double pressure_Pa = 0; ///< absolute, in the vacuum chamber after the pedal is back
    double share() const { return asked_N > 0 ? given_N / asked_N : 1; }
};

/// One press from a pressure in the vacuum chamber, at ambient temperature: the stroke compresses the vacuum
/// side, what the pedal asks for is let into the working chamber up to the ambient pressure, and on release
/// that air joins the vacuum side [gas law and mass balance].
IsolatedPress isolatedPress(const IsolatedBooster& booster, double pressure_Pa, double pedalForce_N);

/// How many such presses in a row get at least this share of the assist that they ask for, 100 at most.
int reservePresses(const IsolatedBooster& booster, double vacuum_Pa, double pedalForce_N, double share);

/// Half of the plan's presses ask for no more [N]; that of a usual press where the plan has none.
double usualPedalForce_N(const DrivePlan& plan);

/// What is in store at a booster when its pump dies at the worst moment.
struct BoosterReserve {
    End port;
    IsolatedBooster booster; ///< with the reservoirs and hoses on its line, at the plan's highest altitude
    /// The lowest vacuum at which a switch still lets a pump rest, of all vacuum switches on this line that
    /// command one. Empty without such a switch: nobody knows then.
    std::optional<double> kept_Pa;
};

/// Of every booster, in order of parts.
std::vector<BoosterReserve> boosterReserves(const Survey& survey);

/// The highest point of the plan [m].
double highestAltitude_m(const DrivePlan& plan);

} // namespace pumpwright

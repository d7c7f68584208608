#pragma once

#include "core/units/quantity_kind.h"

#include <string>

namespace pumpwright {

/// A quantity of a part, wire or hose that the recording keeps.
struct Probe {
    std::string name;  ///< one of the names below, where it fits
    std::string label; ///< for people: "coil current"
    QuantityKind kind = QuantityKind::Number;
    bool stepped = false;  ///< jumps and stays, as a contact's state does
    double resolution = 0; ///< [SI] changes smaller than this need not be kept
};

/// Names of probes that rules, chart and canvas look for.
namespace probe {
inline constexpr char kCurrent[] = "current"; ///< [A] through wire, fuse, load, diode; positive from `from`
inline constexpr char kTemperature[] = "temperature"; ///< [K] of conductor, junction or filament
inline constexpr char kCoilCurrent[] = "coilCurrent"; ///< [A]
inline constexpr char kCoilVoltage[] = "coilVoltage"; ///< [V] plus end against minus end
inline constexpr char kEnergised[] =
    "energised"; ///< 1 when the armature is in, the timer's output is on, the lamp is lit
inline constexpr char kContact[] = "contact"; ///< 1 when closed; further contacts: "contact 30-87a"
inline constexpr char kContactCurrent[] = "contactCurrent"; ///< [A]; further contacts as above
inline constexpr char kRemaining[] = "remaining";           ///< [s] until the timer acts
inline constexpr char kOpenShare[] = "openShare";       ///< 0…1, how near a fuse is to opening; 1 when open
inline constexpr char kSpeed[] = "speed";               ///< [rad/s]
inline constexpr char kVacuum[] = "vacuum";             ///< [Pa] gauge, at a port: "vacuum" or "vacuum PORT"
inline constexpr char kFlow[] = "flow";                 ///< [kg/s]
inline constexpr char kPedalForce[] = "pedalForce";     ///< [N]
inline constexpr char kAssist[] = "assist";             ///< [N] at the push rod
inline constexpr char kAssistAsked[] = "assistAsked";   ///< [N] that the pedal force asks for
inline constexpr char kTravel[] = "travel";             ///< [m] of the diaphragm
inline constexpr char kLinePressure[] = "linePressure"; ///< [Pa]
inline constexpr char kDeceleration[] = "deceleration"; ///< [m/s²]
} // namespace probe

} // namespace pumpwright

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
inline constexpr const char* kCurrent =
    "current"; ///< [A] through wire, fuse, load, diode; positive from `from`
inline constexpr const char* kTemperature = "temperature"; ///< [K] of conductor, junction or filament
inline constexpr const char* kCoilCurrent = "coilCurrent"; ///< [A]
inline constexpr const char* kCoilVoltage = "coilVoltage"; ///< [V] plus end against minus end
inline constexpr const char* kEnergised =
    "energised"; ///< 1 when the armature is in, the timer's output is on, the lamp is lit
inline constexpr const char* kContact = "contact"; ///< 1 when closed; further contacts: "contact 30-87a"
inline constexpr const char* kContactCurrent = "contactCurrent"; ///< [A]; further contacts as above
inline constexpr const char* kRemaining = "remaining";           ///< [s] until the timer acts
inline constexpr const char* kOpenShare = "openShare"; ///< 0…1, how near a fuse is to opening; 1 when open
inline constexpr const char* kSpeed = "speed";         ///< [rad/s]
inline constexpr const char* kVacuum = "vacuum";       ///< [Pa] gauge, at a port: "vacuum" or "vacuum PORT"
inline constexpr const char* kFlow = "flow";           ///< [kg/s]
inline constexpr const char* kPedalForce = "pedalForce";     ///< [N]
inline constexpr const char* kAssist = "assist";             ///< [N] at the push rod
inline constexpr const char* kAssistAsked = "assistAsked";   ///< [N] that the pedal force asks for
inline constexpr const char* kTravel = "travel";             ///< [m] of the diaphragm
inline constexpr const char* kLinePressure = "linePressure"; ///< [Pa]
inline constexpr const char* kDeceleration = "deceleration"; ///< [m/s²]
} // namespace probe

} // namespace pumpwright

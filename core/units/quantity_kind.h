#pragma once

#include "core/units/result.h"

#include <span>
#include <string>
#include <string_view>

namespace pumpwright {

/// What a number measures. Values of every kind are held in SI (see siUnit()).
enum class QuantityKind {
    Number,                ///< plain number, no unit
    Share,                 ///< 0…1, shown in per cent
    Voltage,               ///< V
    Current,               ///< A
    Resistance,            ///< Ω
    Capacitance,           ///< F
    Inductance,            ///< H
    Power,                 ///< W
    Energy,                ///< J
    Charge,                ///< C, shown in Ah
    Time,                  ///< s
    Temperature,           ///< K, shown in °C
    TemperatureDifference, ///< K
    AbsolutePressure,      ///< Pa
    GaugeVacuum,           ///< Pa below ambient
    PressureDifference,    ///< Pa
    Area,                  ///< m², shown in cm²
    WireArea,              ///< m², shown in mm², also AWG
    Length,                ///< m
    Volume,                ///< m³, shown in L
    VolumeFlow,            ///< m³/s, shown in L/min
    Force,                 ///< N
    Torque,                ///< N·m
    AngularSpeed,          ///< rad/s, shown in rpm
    Mass,                  ///< kg
    Inertia,               ///< kg·m²
    MotorConstant,         ///< V·s/rad, the same as N·m/A
    ThermalResistance,     ///< K/W
    HeatCapacity,          ///< J/K
    Acceleration,          ///< m/s²
    Stiffness,             ///< N/m
    Money,                 ///< amount in the circuit's currency
};

/// A unit in which values of one kind are shown and read: si = shown · factor + offset.
struct DisplayUnit {
    std::string_view symbol;
    double factor;
    double offset;
};

/// Every kind once, in the order of the enum.
std::span<const QuantityKind> quantityKinds();

/// The kind in plain words for messages: "wire area".
std::string_view kindName(QuantityKind kind);

std::string_view siUnit(QuantityKind kind);

/// Units offered for the kind, the preferred one first. Wire gauge is a name, not a unit, and so is not
/// listed; parseQuantity() and formatQuantity() know it as "AWG".
std::span<const DisplayUnit> displayUnits(QuantityKind kind);

/// Reads "18 AWG", "0,75 mm²", "15 inHg", "470uF", "4k7". A bare number is in the preferred display unit of
/// the kind. Independent of the system's locale. The error says what was expected, with an example. Point and
/// comma are decimal signs. Thousands separators are refused, and so is "1,234", which may be one. Refused
/// too: what is below zero where nature has no such thing (absolute pressure, temperature, resistance …), and
/// sizes beyond 1e-100…1e100 in SI.
[[nodiscard]] Result<double> parseQuantity(std::string_view text, QuantityKind kind);

/// At most four significant digits, with a fitting prefix: "470 µF", "5.1 s", "0.75 mm²"; a wire area with
/// the digits of a gauge by its name, "18 AWG"; money with two decimals. parseQuantity() reads back what this
/// writes, unless the value is beyond its range.
std::string formatQuantity(double si, QuantityKind kind);

/// The same in one given unit of displayUnits(); an unknown symbol falls back to the preferred unit. "AWG"
/// for a wire area is the gauge's name, or mm² where no gauge has that area.
std::string formatQuantity(double si, QuantityKind kind, std::string_view unitSymbol);

} // namespace pumpwright

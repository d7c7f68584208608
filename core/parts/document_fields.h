#pragma once

#include "core/parts/part_kind.h"
#include "core/units/text.h"

namespace pumpwright::field {

// The numbers of a circuit that belong to no part kind: key in the file, label, default and the range that
// reader and window accept. The ranges are wide on purpose: they keep nonsense out of the equations, and
// rules judge the rest. The defaults are those of core/circuit/circuit.h and drive_plan.h.

inline constexpr ParameterSpec kPrice{"price", words("Price"), QuantityKind::Money, 0, 0, 1e9};
inline constexpr ParameterSpec kPricePerMetre{
    "price_perMetre", words("Price per metre"), QuantityKind::Money, 0, 0, 1e6};

inline constexpr ParameterSpec kRatedTemperature{
    "ratedTemperature_K", words("Stands surroundings up to"), QuantityKind::Temperature, 358.15, 200, 600};
inline constexpr ParameterSpec kWireArea{
    "area_m2", words("Cross-section"), QuantityKind::WireArea, 1.5e-6, 1e-8, 1e-3};
inline constexpr ParameterSpec kWireLength{"length_m", words("Length"), QuantityKind::Length, 1.0, 1e-3,
                                           1000};
inline constexpr int kMostBundled = 1000;

inline constexpr ParameterSpec kHoseDiameter{
    "innerDiameter_m", words("Inner diameter"), QuantityKind::Length, 0.009, 5e-4, 0.1};
inline constexpr ParameterSpec kHoseLength{"length_m", words("Length"), QuantityKind::Length, 0.5, 1e-3, 100};
inline constexpr ParameterSpec kHoseLeak{
    "leakHole_m", words("Equivalent hole of its leak"), QuantityKind::Length, 0, 0, 0.1};

inline constexpr ParameterSpec kToleranceShare{
    "share", words("Tolerance, share of the value"), QuantityKind::Share, 0, 0, 0.95};

inline constexpr ParameterSpec kLimitAmbient{
    "ambient_K", words("Ambient temperature"), QuantityKind::Temperature, 323.15, 200, 500};
inline constexpr ParameterSpec kVoltageDropShare{
    "voltageDropShare", words("Voltage drop allowed"), QuantityKind::Share, 0.10, 0.001, 1};
inline constexpr ParameterSpec kContinuousFuseShare{"continuousFuseShare",
                                                    words("Share of a fuse's rating carried for long"),
                                                    QuantityKind::Share,
                                                    0.80,
                                                    0.01,
                                                    1};
inline constexpr int kMostReserve = 100;
inline constexpr ParameterSpec kLowestSupply{
    "lowestSupply_V", words("Lowest supply voltage"), QuantityKind::Voltage, 10.5, 1, 60};
inline constexpr ParameterSpec kParked{
    "parked_s", words("Parked without charging for"), QuantityKind::Time, 1'209'600, 3600, 63'072'000};
inline constexpr ParameterSpec kDrivenPerYear{
    "drivenPerYear_s", words("Driven in a year"), QuantityKind::Time, 1'080'000, 3600, 31'557'600};

inline constexpr double kLongestDrive_s = 604'800; // a week
inline constexpr ParameterSpec kPlanDuration{"duration_s", words("Duration"), QuantityKind::Time, 120,
                                             1e-3,         kLongestDrive_s};
inline constexpr ParameterSpec kPlanAmbient{
    "ambient_K", words("Ambient temperature"), QuantityKind::Temperature, 293.15, 200, 400};
inline constexpr ParameterSpec kInitialVacuum{
    "initialVacuum_Pa", words("Vacuum at the start"), QuantityKind::GaugeVacuum, 0, 0, 101'325};
inline constexpr ParameterSpec kAtTime{"at_s", words("Time"), QuantityKind::Time, 0, 0, kLongestDrive_s};
inline constexpr ParameterSpec kFromTime{"from_s", words("Begin"), QuantityKind::Time, 0, 0, kLongestDrive_s};
inline constexpr ParameterSpec kToTime{"to_s", words("End"), QuantityKind::Time, 0, 0, kLongestDrive_s};
inline constexpr ParameterSpec kPressHold{"hold_s", words("Held for"), QuantityKind::Time, 1.5,
                                          0,        kLongestDrive_s};
inline constexpr ParameterSpec kPressForce{"force_N", words("Pedal force"), QuantityKind::Force, 100, 0,
                                           5000};
inline constexpr ParameterSpec kPressRise{"rise_s", words("Rise and fall"), QuantityKind::Time, 0.2, 1e-3,
                                          60};
inline constexpr ParameterSpec kAltitude{"altitude_m", words("Altitude"), QuantityKind::Length, 0, -2000,
                                         11'000};

inline constexpr ParameterSpec kWaivedValue{
    "value", words("Value when waived"), QuantityKind::Number, 0, -1e300, 1e300};

// Places on the sheet, in grid steps.
inline constexpr int kFarthestPlace = 100'000;
inline constexpr int kFarthestLabel_mm = 1000; ///< from what it names

} // namespace pumpwright::field

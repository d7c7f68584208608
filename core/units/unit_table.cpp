#include "core/units/constants.h"
#include "core/units/unit_table_p.h"

#include <array>
#include <cassert>

namespace pumpwright {
namespace {

using Kind = QuantityKind;

constexpr double kMegaPascal = 1e6;
constexpr double kPerMinute = 1.0 / kMinute_s;
constexpr double kCubicInch_m3 = kInch_m * kInch_m * kInch_m;
constexpr double kCubicFoot_m3 = kFoot_m * kFoot_m * kFoot_m;

// Preferred unit first, then the other units of the ladder, then units that are only used when asked for.
constexpr auto kPlain = std::to_array<DisplayUnit>({{"", 1, 0}});
constexpr auto kShare = std::to_array<DisplayUnit>({{"%", 1e-2, 0}});
constexpr auto kVoltage =
    std::to_array<DisplayUnit>({{"V", 1, 0}, {"mV", 1e-3, 0}, {"µV", 1e-6, 0}, {"kV", 1e3, 0}});
constexpr auto kCurrent = std::to_array<DisplayUnit>(
    {{"A", 1, 0}, {"mA", 1e-3, 0}, {"µA", 1e-6, 0}, {"nA", 1e-9, 0}, {"pA", 1e-12, 0}, {"kA", 1e3, 0}});
constexpr auto kResistance = std::to_array<DisplayUnit>(
    {{"Ω", 1, 0}, {"mΩ", 1e-3, 0}, {"µΩ", 1e-6, 0}, {"kΩ", 1e3, 0}, {"MΩ", 1e6, 0}, {"GΩ", 1e9, 0}});
constexpr auto kCapacitance = std::to_array<DisplayUnit>(
    {{"µF", 1e-6, 0}, {"nF", 1e-9, 0}, {"pF", 1e-12, 0}, {"F", 1, 0}, {"mF", 1e-3, 0}});
constexpr auto kInductance =
    std::to_array<DisplayUnit>({{"mH", 1e-3, 0}, {"µH", 1e-6, 0}, {"nH", 1e-9, 0}, {"H", 1, 0}});
constexpr auto kPower = std::to_array<DisplayUnit>(
    {{"W", 1, 0}, {"mW", 1e-3, 0}, {"µW", 1e-6, 0}, {"kW", 1e3, 0}, {"MW", 1e6, 0}});
constexpr auto kEnergy = std::to_array<DisplayUnit>({{"J", 1, 0},
                                                     {"mJ", 1e-3, 0},
                                                     {"µJ", 1e-6, 0},
                                                     {"kJ", 1e3, 0},
                                                     {"MJ", 1e6, 0},
                                                     {"Ws", 1, 0},
                                                     {"Wh", kHour_s, 0},
                                                     {"kWh", 1e3 * kHour_s, 0}});
constexpr auto kCharge = std::to_array<DisplayUnit>({{"Ah", kHour_s, 0},
                                                     {"mAh", 1e-3 * kHour_s, 0},
                                                     {"C", 1, 0},
                                                     {"mC", 1e-3, 0},
                                                     {"µC", 1e-6, 0},
                                                     {"As", 1, 0}});
constexpr auto kTime = std::to_array<DisplayUnit>({{"s", 1, 0},
                                                   {"ms", 1e-3, 0},
                                                   {"µs", 1e-6, 0},
                                                   {"ns", 1e-9, 0},
                                                   {"min", kMinute_s, 0},
                                                   {"h", kHour_s, 0}});
constexpr auto kTemperature = std::to_array<DisplayUnit>(
    {{"°C", 1, kZeroCelsius_K}, {"K", 1, 0}, {"°F", kFahrenheitDegree_K, kZeroFahrenheit_K}});
constexpr auto kTemperatureDifference =
    std::to_array<DisplayUnit>({{"K", 1, 0}, {"°C", 1, 0}, {"°F", kFahrenheitDegree_K, 0}});
constexpr auto kPressure = std::to_array<DisplayUnit>({{"kPa", 1e3, 0},
                                                       {"Pa", 1, 0},
                                                       {"MPa", kMegaPascal, 0},
                                                       {"inHg", kInchOfMercury_Pa, 0},
                                                       {"mmHg", kMillimetreOfMercury_Pa, 0},
                                                       {"mbar", 1e2, 0},
                                                       {"bar", 1e5, 0},
                                                       {"hPa", 1e2, 0},
                                                       {"psi", kPoundPerSquareInch_Pa, 0},
                                                       {"Torr", kTorr_Pa, 0},
                                                       {"atm", kStandardAtmosphere_Pa, 0}});
constexpr auto kArea = std::to_array<DisplayUnit>(
    {{"cm²", 1e-4, 0}, {"mm²", 1e-6, 0}, {"m²", 1, 0}, {"in²", kInch_m* kInch_m, 0}});
constexpr auto kWireArea = std::to_array<DisplayUnit>({{"mm²", 1e-6, 0}, {"cm²", 1e-4, 0}, {"m²", 1, 0}});
constexpr auto kLength = std::to_array<DisplayUnit>({{"m", 1, 0},
                                                     {"mm", 1e-3, 0},
                                                     {"cm", 1e-2, 0},
                                                     {"km", 1e3, 0},
                                                     {"µm", 1e-6, 0},
                                                     {"ft", kFoot_m, 0},
                                                     {"in", kInch_m, 0}});
constexpr auto kVolume = std::to_array<DisplayUnit>({{"L", 1e-3, 0},
                                                     {"mL", 1e-6, 0},
                                                     {"cm³", 1e-6, 0},
                                                     {"m³", 1, 0},
                                                     {"in³", kCubicInch_m3, 0},
                                                     {"ft³", kCubicFoot_m3, 0}});
constexpr auto kVolumeFlow = std::to_array<DisplayUnit>({{"L/min", 1e-3 * kPerMinute, 0},
                                                         {"mL/min", 1e-6 * kPerMinute, 0},
                                                         {"L/s", 1e-3, 0},
                                                         {"m³/s", 1, 0},
                                                         {"m³/h", 1.0 / kHour_s, 0},
                                                         {"ft³/min", kCubicFoot_m3* kPerMinute, 0}});
constexpr auto kForce =
    std::to_array<DisplayUnit>({{"N", 1, 0}, {"mN", 1e-3, 0}, {"kN", 1e3, 0}, {"lbf", kPoundForce_N, 0}});
constexpr auto kTorque = std::to_array<DisplayUnit>({{"N·m", 1, 0},
                                                     {"mN·m", 1e-3, 0},
                                                     {"lbf·ft", kPoundForce_N* kFoot_m, 0},
                                                     {"lbf·in", kPoundForce_N* kInch_m, 0}});
constexpr auto kAngularSpeed =
    std::to_array<DisplayUnit>({{"rpm", kRevolutionPerMinute_radPerS, 0}, {"rad/s", 1, 0}});
constexpr auto kMass = std::to_array<DisplayUnit>({{"kg", 1, 0}, {"g", 1e-3, 0}, {"lb", kPound_kg, 0}});
constexpr auto kInertia =
    std::to_array<DisplayUnit>({{"kg·m²", 1, 0}, {"kg·cm²", 1e-4, 0}, {"g·cm²", 1e-7, 0}});
constexpr auto kMotorConstant =
    std::to_array<DisplayUnit>({{"V·s/rad", 1, 0},
                                {"mV·s/rad", 1e-3, 0},
                                {"N·m/A", 1, 0},
                                {"mN·m/A", 1e-3, 0},
                                {"V/krpm", 1e-3 / kRevolutionPerMinute_radPerS, 0}});
constexpr auto kThermalResistance = std::to_array<DisplayUnit>({{"K/W", 1, 0}, {"mK/W", 1e-3, 0}});
constexpr auto kHeatCapacity =
    std::to_array<DisplayUnit>({{"J/K", 1, 0}, {"mJ/K", 1e-3, 0}, {"kJ/K", 1e3, 0}});
constexpr auto kAcceleration =
    std::to_array<DisplayUnit>({{"m/s²", 1, 0}, {"g", kStandardGravity_mPerS2, 0}});
constexpr auto kStiffness = std::to_array<DisplayUnit>(
    {{"N/m", 1, 0}, {"kN/m", 1e3, 0}, {"N/mm", 1e3, 0}, {"lbf/in", kPoundForce_N / kInch_m, 0}});

constexpr std::array kRows = {
    KindRow{Kind::Number, "number", "", "2.5", kPlain},
    KindRow{Kind::Share, "share", "", "85 %", kShare},
    KindRow{Kind::Voltage, "voltage", "V", "12.6 V", kVoltage, 4},
    KindRow{Kind::Current, "current", "A", "5.5 A", kCurrent, 6},
    KindRow{Kind::Resistance, "resistance", "Ω", "4.7 kΩ", kResistance, 6, 0.0},
    KindRow{Kind::Capacitance, "capacitance", "F", "470 µF", kCapacitance, 4, 0.0},
    KindRow{Kind::Inductance, "inductance", "H", "250 mH", kInductance, 4, 0.0},
    KindRow{Kind::Power, "power", "W", "66 W", kPower, 5},
    KindRow{Kind::Energy, "energy", "J", "1.2 J", kEnergy, 5},
    KindRow{Kind::Charge, "charge", "C", "45 Ah", kCharge, 2},
    KindRow{Kind::Time, "time", "s", "5.1 s", kTime, 4},
    KindRow{Kind::Temperature, "temperature", "K", "20 °C", kTemperature, 1, 0.0},
    KindRow{Kind::TemperatureDifference, "temperature difference", "K", "40 K", kTemperatureDifference},
    KindRow{Kind::AbsolutePressure, "absolute pressure", "Pa", "101.3 kPa", kPressure, 3, 0.0},
    KindRow{Kind::GaugeVacuum, "vacuum", "Pa", "15 inHg", kPressure, 3},
    KindRow{Kind::PressureDifference, "pressure difference", "Pa", "35 kPa", kPressure, 3},
    KindRow{Kind::Area, "area", "m²", "450 cm²", kArea, 3, 0.0},
    KindRow{Kind::WireArea, "wire area", "m²", "0.75 mm²\" or \"18 AWG", kWireArea, 1, 0.0},
    KindRow{Kind::Length, "length", "m", "2.5 m", kLength, 2},
    KindRow{Kind::Volume, "volume", "m³", "4 L", kVolume, 2, 0.0},
    KindRow{Kind::VolumeFlow, "volume flow", "m³/s", "30 L/min", kVolumeFlow, 2},
    KindRow{Kind::Force, "force", "N", "250 N", kForce, 3},
    KindRow{Kind::Torque, "torque", "N·m", "0.4 N·m", kTorque, 2},
    KindRow{Kind::AngularSpeed, "angular speed", "rad/s", "3000 rpm", kAngularSpeed},
    KindRow{Kind::Mass, "mass", "kg", "1850 kg", kMass, 2, 0.0},
    KindRow{Kind::Inertia, "inertia", "kg·m²", "250 g·cm²", kInertia, 3, 0.0},
    KindRow{Kind::MotorConstant, "motor constant", "V·s/rad", "0.03 V·s/rad", kMotorConstant, 2},
    KindRow{Kind::ThermalResistance, "thermal resistance", "K/W", "6 K/W", kThermalResistance, 2, 0.0},
    KindRow{Kind::HeatCapacity, "heat capacity", "J/K", "13 J/K", kHeatCapacity, 3, 0.0},
    KindRow{Kind::Acceleration, "acceleration", "m/s²", "6.4 m/s²", kAcceleration},
    KindRow{Kind::Stiffness, "stiffness", "N/m", "2000 N/m", kStiffness, 2},
    KindRow{Kind::Money, "price", "", "12.50", kPlain},
};

constexpr bool rowsFollowTheEnum() {
    for (std::size_t i = 0; i < kRows.size(); ++i) {
        if (static_cast<std::size_t>(kRows[i].kind) != i) {
            return false;
        }
    }
    return kRows.size() == static_cast<std::size_t>(Kind::Money) + 1;
}
static_assert(rowsFollowTheEnum(), "rows are found by the enum's number");

constexpr auto kKinds = [] {
    std::array<QuantityKind, kRows.size()> kinds{};
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        kinds[i] = kRows[i].kind;
    }
    return kinds;
}();

} // namespace

const KindRow& kindRow(QuantityKind kind) {
    const auto index = static_cast<std::size_t>(kind);
    assert(index < kRows.size() && "a kind of the enum");
    return kRows[index];
}

std::span<const QuantityKind> quantityKinds() {
    return kKinds;
}

std::string_view kindName(QuantityKind kind) {
    return kindRow(kind).name;
}

std::string_view siUnit(QuantityKind kind) {
    return kindRow(kind).siUnit;
}

std::span<const DisplayUnit> displayUnits(QuantityKind kind) {
    return kindRow(kind).units;
}

} // namespace pumpwright

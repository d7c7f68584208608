#include "core/units/atmosphere.h"
#include "core/units/constants.h"
#include "core/units/quantity_kind.h"
#include "core/units/wire_size.h"
#include "tests/support/catch.h"

#include <map>
#include <numbers>
#include <string>
#include <vector>

namespace pumpwright {
namespace {

using Kind = QuantityKind;

struct PrintedFactor {
    std::string text;
    Kind kind;
    double si;
    double tolerance; ///< relative: half of the last printed digit, or rounding where the value is exact
};

constexpr double kExact = 1e-14;
constexpr double kSevenDigits = 5e-7;

void checkPrinted(const std::vector<PrintedFactor>& rows) {
    for (const PrintedFactor& row : rows) {
        INFO(row.text << " as " << kindName(row.kind));
        CHECK_THAT(parseQuantity(row.text, row.kind).value(), Catch::WithinRel(row.si, row.tolerance));
    }
}

} // namespace

// Value from memory of NIST Special Publication 811 (2008), appendix B.8; each follows from exact
// definitions.
TEST_CASE("units have the factors that NIST SP 811 prints", "[handbook][units]") {
    checkPrinted({
        {"1 in", Kind::Length, 2.54e-2, kExact},
        {"1 ft", Kind::Length, 3.048e-1, kExact},
        {"1 in²", Kind::Area, 6.4516e-4, kExact},
        {"1 in³", Kind::Volume, 1.638706e-5, kSevenDigits},
        {"1 ft³", Kind::Volume, 2.831685e-2, kSevenDigits},
        {"1 ft³/min", Kind::VolumeFlow, 4.719474e-4, kSevenDigits},
        {"1 L/min", Kind::VolumeFlow, 1.666667e-5, kSevenDigits},
        {"1 lb", Kind::Mass, 4.535924e-1, kSevenDigits},
        {"1 lbf", Kind::Force, 4.448222, kSevenDigits},
        {"1 lbf·ft", Kind::Torque, 1.355818, kSevenDigits},
        {"1 lbf·in", Kind::Torque, 1.129848e-1, kSevenDigits},
        {"1 lbf/in", Kind::Stiffness, 1.751268e2, kSevenDigits},
        {"1 rpm", Kind::AngularSpeed, 1.047198e-1, kSevenDigits},
        {"1 psi", Kind::PressureDifference, 6.894757e3, kSevenDigits},
        {"1 inHg", Kind::PressureDifference, 3.386389e3, kSevenDigits},
        {"1 mmHg", Kind::PressureDifference, 1.333224e2, kSevenDigits},
        {"1 Torr", Kind::PressureDifference, 1.333224e2, kSevenDigits},
        {"1 atm", Kind::AbsolutePressure, 1.01325e5, kExact},
        {"1 bar", Kind::AbsolutePressure, 1e5, kExact},
        {"1 mbar", Kind::AbsolutePressure, 1e2, kExact},
        {"1 Ah", Kind::Charge, 3.6e3, kExact},
        {"1 Wh", Kind::Energy, 3.6e3, kExact},
        {"1 g", Kind::Acceleration, 9.80665, kExact},
        {"32 °F", Kind::Temperature, 273.15, kExact},
        {"212 °F", Kind::Temperature, 373.15, kExact},
        {"1.8 °F", Kind::TemperatureDifference, 1.0, kExact},
    });
}

// SI Brochure, 9th edition (2019): prefixes in table 7, units outside the SI in table 8. The others by their
// definitions, as in the test above.
TEST_CASE("every unit that is offered has the size of its definition", "[handbook][units]") {
    const std::map<std::string, double> sizes = {
        {"", 1},
        {"%", 1e-2},
        {"V", 1},
        {"mV", 1e-3},
        {"µV", 1e-6},
        {"kV", 1e3},
        {"A", 1},
        {"mA", 1e-3},
        {"µA", 1e-6},
        {"nA", 1e-9},
        {"pA", 1e-12},
        {"kA", 1e3},
        {"Ω", 1},
        {"mΩ", 1e-3},
        {"µΩ", 1e-6},
        {"kΩ", 1e3},
        {"MΩ", 1e6},
        {"GΩ", 1e9},
        {"F", 1},
        {"mF", 1e-3},
        {"µF", 1e-6},
        {"nF", 1e-9},
        {"pF", 1e-12},
        {"H", 1},
        {"mH", 1e-3},
        {"µH", 1e-6},
        {"nH", 1e-9},
        {"W", 1},
        {"mW", 1e-3},
        {"µW", 1e-6},
        {"kW", 1e3},
        {"MW", 1e6},
        {"J", 1},
        {"mJ", 1e-3},
        {"µJ", 1e-6},
        {"kJ", 1e3},
        {"MJ", 1e6},
        {"Ws", 1},
        {"Wh", 3600},
        {"kWh", 3.6e6},
        {"C", 1},
        {"mC", 1e-3},
        {"µC", 1e-6},
        {"As", 1},
        {"Ah", 3600},
        {"mAh", 3.6},
        {"s", 1},
        {"ms", 1e-3},
        {"µs", 1e-6},
        {"ns", 1e-9},
        {"min", 60},
        {"h", 3600},
        {"K", 1},
        {"°C", 1},
        {"°F", 5.0 / 9.0},
        {"Pa", 1},
        {"hPa", 1e2},
        {"kPa", 1e3},
        {"MPa", 1e6},
        {"mbar", 1e2},
        {"bar", 1e5},
        {"psi", 6894.757},
        {"inHg", 3386.389},
        {"mmHg", 133.3224},
        {"Torr", 133.3224},
        {"atm", 101325},
        {"mm²", 1e-6},
        {"cm²", 1e-4},
        {"m²", 1},
        {"in²", 6.4516e-4},
        {"m", 1},
        {"mm", 1e-3},
        {"cm", 1e-2},
        {"km", 1e3},
        {"µm", 1e-6},
        {"ft", 0.3048},
        {"in", 0.0254},
        {"L", 1e-3},
        {"mL", 1e-6},
        {"cm³", 1e-6},
        {"m³", 1},
        {"in³", 1.638706e-5},
        {"ft³", 2.831685e-2},
        {"L/s", 1e-3},
        {"m³/s", 1},
        {"L/min", 1.666667e-5},
        {"mL/min", 1.666667e-8},
        {"m³/h", 2.777778e-4},
        {"ft³/min", 4.719474e-4},
        {"N", 1},
        {"mN", 1e-3},
        {"kN", 1e3},
        {"lbf", 4.448222},
        {"N·m", 1},
        {"mN·m", 1e-3},
        {"lbf·ft", 1.355818},
        {"lbf·in", 0.1129848},
        {"rpm", 0.1047198},
        {"rad/s", 1},
        {"kg", 1},
        {"g", 1e-3},
        {"lb", 0.4535924},
        {"kg·m²", 1},
        {"kg·cm²", 1e-4},
        {"g·cm²", 1e-7},
        {"V·s/rad", 1},
        {"mV·s/rad", 1e-3},
        {"N·m/A", 1},
        {"mN·m/A", 1e-3},
        {"V/krpm", 1e-2 * 3 / std::numbers::pi},
        {"K/W", 1},
        {"mK/W", 1e-3},
        {"J/K", 1},
        {"mJ/K", 1e-3},
        {"kJ/K", 1e3},
        {"m/s²", 1},
        {"N/m", 1},
        {"kN/m", 1e3},
        {"N/mm", 1e3},
        {"lbf/in", 175.1268},
    };
    for (const Kind kind : quantityKinds()) {
        for (const DisplayUnit& unit : displayUnits(kind)) {
            INFO(kindName(kind) << " in " << unit.symbol);
            const bool isGravity = kind == Kind::Acceleration && unit.symbol == "g";
            const double size = isGravity ? 9.80665 : sizes.at(std::string(unit.symbol));
            CHECK_THAT(unit.factor, Catch::WithinRel(size, kSevenDigits));
        }
    }
}

// BS 350-1 (1974) and ISO 80000-4: conventional mercury 13 595.1 kg/m³ under standard gravity, so that the
// conventional millimetre is 133.322 387 415 Pa exactly and the inch 25.4 times that.
TEST_CASE("columns of mercury follow the conventional density", "[handbook][units]") {
    checkPrinted({
        {"1 mmHg", Kind::GaugeVacuum, 133.322387415, kExact},
        {"1 inHg", Kind::GaugeVacuum, 3386.388640341, kExact},
        {"29.9213 inHg", Kind::AbsolutePressure, 101325.0, 1e-5},
        {"760 Torr", Kind::AbsolutePressure, 101325.0, kExact},
        {"15 inHg", Kind::GaugeVacuum, 50796.0, 1e-4},
        {"20 inHg", Kind::GaugeVacuum, 67728.0, 1e-4},
        {"25 inHg", Kind::GaugeVacuum, 84660.0, 1e-4},
    });
}

// Passenger-car workshop manuals print 66.7 kPa beside 19.7 inHg and 500 mmHg.
TEST_CASE("a booster test vacuum reads as workshop manuals print it", "[handbook][units]") {
    CHECK_THAT(66700.0 / kInchOfMercury_Pa, Catch::WithinAbs(19.7, 0.05));
    CHECK_THAT(66700.0 / kMillimetreOfMercury_Pa, Catch::WithinAbs(500.0, 0.5));
    CHECK(formatQuantity(66700.0, Kind::GaugeVacuum, "inHg") == "19.7 inHg");
    CHECK(formatQuantity(66700.0, Kind::GaugeVacuum, "mmHg") == "500.3 mmHg");
}

// Follows from the definition of gauge vacuum at the standard atmosphere of 101 325 Pa.
TEST_CASE("20 inHg of vacuum at sea level leaves 33.597 kPa absolute", "[handbook][units]") {
    const GaugeVacuum vacuum(parseQuantity("20 inHg", Kind::GaugeVacuum).value());
    const AbsolutePressure left = absolutePressure(AbsolutePressure(kStandardAtmosphere_Pa), vacuum);
    CHECK_THAT(left.si(), Catch::WithinAbs(33597.0, 1.0));
    CHECK_THAT(vacuum.si() / kMillimetreOfMercury_Pa, Catch::WithinAbs(508.0, 0.01));
}

// ASTM B258: 36 AWG is 0.005 in and 4/0 is 0.46 in by definition; 10 AWG 2.588 mm and 5.261 mm².
TEST_CASE("wire gauges have the diameters of ASTM B258", "[handbook][units]") {
    CHECK_THAT(awgDiameter_m(36), Catch::WithinRel(0.127e-3, 1e-12));
    CHECK_THAT(awgDiameter_m(-3), Catch::WithinRel(11.684e-3, 1e-12));
    CHECK_THAT(awgDiameter_m(10), Catch::WithinRel(2.588e-3, 5e-4));
    CHECK_THAT(awgArea_m2(10), Catch::WithinRel(5.261e-6, 5e-4));
}

// Value from memory of NBS Handbook 100, Copper Wire Tables (1966), table of solid wire: circular mils and
// Ω per 1000 ft at 20 °C. The two columns confirm each other through the resistivity of IEC 60028.
TEST_CASE("wire gauges have the areas and resistances of the Copper Wire Tables", "[handbook][units]") {
    struct Row {
        int gauge;
        double circularMils;
        double ohmPerThousandFeet;
    };
    constexpr Row kTable[] = {{10, 10380, 0.9989}, {12, 6530, 1.588}, {14, 4110, 2.525}, {16, 2580, 4.016},
                              {18, 1620, 6.385},   {20, 1020, 10.15}, {22, 642, 16.14},  {24, 404, 25.67}};
    constexpr double kCircularMil_m2 = std::numbers::pi / 4.0 * (1e-3 * kInch_m) * (1e-3 * kInch_m);
    for (const Row& row : kTable) {
        INFO(row.gauge);
        CHECK_THAT(awgArea_m2(row.gauge) / kCircularMil_m2, Catch::WithinRel(row.circularMils, 3e-3));
        const double ohm = kCopperResistivity_OhmM * 1000.0 * kFoot_m / awgArea_m2(row.gauge);
        CHECK_THAT(ohm, Catch::WithinRel(row.ohmPerThousandFeet, 1e-3));
    }
}

// FAA AC 43.13-1B, paragraph 11-66: resistance goes with 234.5 °C + T; IEC 60028: 0.00393 /K at 20 °C.
TEST_CASE("copper at 105 °C has 1.334 times its resistance at 20 °C", "[handbook][units]") {
    const double ratio = 1.0 + kCopperTemperatureCoefficient_perK * 85.0;
    CHECK_THAT(ratio, Catch::WithinRel((234.5 + 105.0) / (234.5 + 20.0), 2e-3));
    CHECK_THAT(ratio, Catch::WithinRel(1.334, 2e-3));
}

// ISO 2533 (1975), standard atmosphere, the same as US Standard Atmosphere 1976 below 11 km.
TEST_CASE("the standard atmosphere has the pressures of ISO 2533", "[handbook][units]") {
    struct Row {
        double altitude_m;
        double celsius;
        double pressure_Pa;
        double density_kgPerM3;
    };
    constexpr Row kTable[] = {
        {0, 15.0, 101325, 1.2250},   {500, 11.75, 95461, 1.1673},  {1000, 8.5, 89875, 1.1116},
        {1500, 5.25, 84556, 1.0581}, {2000, 2.0, 79495, 1.0065},   {2500, -1.25, 74683, 0.9569},
        {3000, -4.5, 70109, 0.9091}, {4000, -11.0, 61640, 0.8191}, {5000, -17.5, 54020, 0.7361}};
    for (const Row& row : kTable) {
        INFO(row.altitude_m << " m");
        CHECK_THAT(standardPressure_Pa(row.altitude_m), Catch::WithinAbs(row.pressure_Pa, 1.0));
        CHECK_THAT(standardTemperature_K(row.altitude_m), Catch::WithinAbs(celsius(row.celsius).si(), 1e-9));
        CHECK_THAT(standardDensity_kgPerM3(row.altitude_m), Catch::WithinAbs(row.density_kgPerM3, 1e-4));
    }
}

// US Standard Atmosphere 1976, table in feet and psia: 5000 ft, 12.230 psia.
TEST_CASE("at 5000 ft the standard atmosphere is 12.23 psia", "[handbook][units]") {
    const double altitude = parseQuantity("5000 ft", Kind::Length).value();
    const double printed = parseQuantity("12.230 psia", Kind::AbsolutePressure).value();
    CHECK_THAT(standardPressure_Pa(altitude), Catch::WithinRel(printed, 5e-4));
}

// Value from memory of US Standard Atmosphere 1976, table of viscosity: 1.7894e-5 Pa·s at 15 °C; and from its
// Sutherland formula 1.813e-5 Pa·s at 20 °C.
TEST_CASE("air has the viscosity of the standard atmosphere", "[handbook][units]") {
    CHECK_THAT(airViscosity_PaS(celsius(15.0)), Catch::WithinRel(1.7894e-5, 5e-5));
    CHECK_THAT(airViscosity_PaS(celsius(20.0)), Catch::WithinRel(1.813e-5, 5e-4));
}

} // namespace pumpwright

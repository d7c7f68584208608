#pragma once

#include <numbers>

/// Constants and conversion factors: the one place where they stand, each with unit and source.
/// "exact" means by definition.
namespace pumpwright {

// Definitions
inline constexpr double kZeroCelsius_K = 273.15;           // exact; SI brochure 9 (2019), 2.3.1
inline constexpr double kStandardGravity_mPerS2 = 9.80665; // exact; 3rd CGPM (1901)
inline constexpr double kStandardAtmosphere_Pa = 101325.0; // exact; 10th CGPM (1954)
inline constexpr double kInch_m = 0.0254;                  // exact; international yard and pound (1959)
inline constexpr double kFoot_m = 12.0 * kInch_m;          // exact
inline constexpr double kPound_kg = 0.45359237;            // exact; international yard and pound (1959)
inline constexpr double kMercury_kgPerM3 = 13595.1;        // exact, conventional; ISO 80000-4 (2019), BS 350
inline constexpr double kMinute_s = 60.0;                  // exact; SI brochure 9 (2019), table 8
inline constexpr double kHour_s = 3600.0;                  // exact; SI brochure 9 (2019), table 8
inline constexpr double kFahrenheitDegree_K = 5.0 / 9.0;   // exact; NIST SP 811 (2008), app. B.8
inline constexpr double kZeroFahrenheit_K = 459.67 * 5.0 / 9; // exact; NIST SP 811 (2008), app. B.8

// Derived from the definitions; NIST SP 811 (2008), app. B.8 prints the rounded values
inline constexpr double kMillimetreOfMercury_Pa =
    1e-3 * kMercury_kgPerM3 * kStandardGravity_mPerS2;                                     // 133.3224
inline constexpr double kInchOfMercury_Pa = 25.4 * kMillimetreOfMercury_Pa;                // 3386.389
inline constexpr double kTorr_Pa = kStandardAtmosphere_Pa / 760.0;                         // 133.3224
inline constexpr double kPoundForce_N = kPound_kg * kStandardGravity_mPerS2;               // 4.448222
inline constexpr double kPoundPerSquareInch_Pa = kPoundForce_N / (kInch_m * kInch_m);      // 6894.757
inline constexpr double kRevolutionPerMinute_radPerS = 2.0 * std::numbers::pi / kMinute_s; // 0.1047198

// Copper; IEC 60028 (1925), standard annealed copper at 20 °C
inline constexpr double kCopperResistivity_OhmM = 1.7241e-8;
inline constexpr double kCopperTemperatureCoefficient_perK = 0.00393;
inline constexpr double kCopperReference_K = kZeroCelsius_K + 20.0;

// Air; ISO 2533 (1975), table 1 and clause 2
inline constexpr double kGasConstant_JPerMolK = 8.31432;
inline constexpr double kAirMolarMass_kgPerMol = 0.0289644; // 28.964 420 g/mol in the table
inline constexpr double kAirGasConstant_JPerKgK = kGasConstant_JPerMolK / kAirMolarMass_kgPerMol; // 287.05287
inline constexpr double kAirHeatRatio = 1.4;
inline constexpr double kSeaLevelTemperature_K = 288.15;
inline constexpr double kTroposphereLapse_KPerM = 0.0065;
inline constexpr double kSutherlandFactor = 1.458e-6; // [kg/(m·s·√K)]
inline constexpr double kSutherlandTemperature_K = 110.4;

// Wire gauge; ASTM B258: 36 AWG is 0.005 in, 4/0 is 0.46 in, 39 equal ratios between
inline constexpr double kGauge36Diameter_m = 0.005 * kInch_m;
inline constexpr double kGaugeRatio = 92.0;
inline constexpr double kGaugeSteps = 39.0;

} // namespace pumpwright

#pragma once

namespace pumpwright {

/// [K] at which the on-resistance of a field-effect transistor is stated.
inline constexpr double kOnReference_K = 298.15;
/// [1/K] It rises 1.7 times from 25 to 125 °C, value from memory of textbooks (1.6 to 1.8).
inline constexpr double kOnCoefficient_perK = 0.007;

} // namespace pumpwright

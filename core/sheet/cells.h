#pragma once

#include "core/units/quantity_kind.h"

#include <string>
#include <string_view>

namespace pumpwright {

inline constexpr char kNothing[] = "–"; ///< stands in a cell that has nothing to say

/// The number alone, for a column that names the unit: "0.75" for 0.75e-6 in "mm²".
std::string numberIn(double si, QuantityKind kind, std::string_view unitSymbol);

/// Rounded to so many significant digits.
double toDigits(double value, int digits);

/// The value in the preferred unit; pressures also in inHg, with the three digits that a vacuum gauge shows:
/// "50 kPa (14.8 inHg)".
std::string settingText(double si, QuantityKind kind);

} // namespace pumpwright

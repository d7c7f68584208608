#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace pumpwright {

/// American wire gauge [ASTM B258]. Gauges are whole numbers; 1/0, 2/0, 3/0, 4/0 are 0, -1, -2, -3.
inline constexpr int kThickestGauge = -3;
inline constexpr int kThinnestGauge = 40;

/// Of the solid conductor that the gauge names.
double awgDiameter_m(int gauge);
double awgArea_m2(int gauge);

/// "18 AWG", "2/0 AWG".
std::string awgName(int gauge);

/// The gauge whose area is nearest by ratio, within the range above; the area must be positive.
int nearestAwg(double area_m2);

/// The gauge that an area is, as far as four digits of mm² can tell.
std::optional<int> awgOfArea(double area_m2);

/// How the wire is called: "18 AWG" where awgOfArea() finds a gauge, else "0.75 mm²".
std::string wireSizeName(double area_m2);

/// A text that can only mean a gauge ("18 AWG", "AWG 2/0", "4/0"), split from the word; nothing for other
/// texts.
std::optional<std::string_view> gaugeText(std::string_view text);

/// "18", "0", "1/0", "000", "3/0" as a number; nothing when it is no gauge within the range above.
std::optional<int> gaugeNumber(std::string_view text);

} // namespace pumpwright

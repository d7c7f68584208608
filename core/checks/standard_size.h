#pragma once

#include <optional>
#include <span>

namespace pumpwright {

/// [A] Blade fuses as they are sold, ISO 8820-3 types C, E and F, smallest first.
std::span<const double> fuseRatings_A();

/// The smallest fuse of at least this rating, the largest of at most this rating.
std::optional<double> fuseAtLeast_A(double current_A);
std::optional<double> fuseAtMost_A(double current_A);

/// [A] The smallest rectifier diode as they are sold of at least this rated current. Common practice, no
/// published source.
std::optional<double> diodeAtLeast_A(double current_A);

/// [m²] Conductor areas as they are sold, smallest first.
std::span<const double> wireAreas_m2();

/// The next standard area above this one.
std::optional<double> nextWireArea_m2(double area_m2);

} // namespace pumpwright

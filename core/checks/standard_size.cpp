#include "core/checks/standard_size.h"

#include <algorithm>
#include <array>

namespace pumpwright {
namespace {

/// ISO 8820-3, as the colours are printed for each rating.
constexpr std::array kFuseRatings_A{1.0,  2.0,  3.0,  4.0,  5.0,  7.5,  10.0, 15.0,
                                    20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0, 80.0};

/// IEC 60228 and ISO 6722-1.
constexpr std::array kWireAreas_m2{0.5e-6, 0.75e-6, 1.0e-6, 1.5e-6,  2.5e-6,
                                   4.0e-6, 6.0e-6,  10e-6,  16.0e-6, 25.0e-6};

constexpr std::array kDiodeRatings_A{1.0, 3.0, 6.0, 10.0, 15.0, 20.0, 30.0, 60.0};

/// Areas that come from a file or from AWG differ in the last digits.
constexpr double kSameArea = 1.001;

} // namespace

std::span<const double> fuseRatings_A() {
    return kFuseRatings_A;
}

std::optional<double> fuseAtLeast_A(double current_A) {
    const auto found = std::lower_bound(kFuseRatings_A.begin(), kFuseRatings_A.end(), current_A);
    return found == kFuseRatings_A.end() ? std::nullopt : std::optional(*found);
}

std::optional<double> fuseAtMost_A(double current_A) {
    const auto found = std::upper_bound(kFuseRatings_A.begin(), kFuseRatings_A.end(), current_A);
    return found == kFuseRatings_A.begin() ? std::nullopt : std::optional(*std::prev(found));
}

std::optional<double> diodeAtLeast_A(double current_A) {
    const auto found = std::lower_bound(kDiodeRatings_A.begin(), kDiodeRatings_A.end(), current_A);
    return found == kDiodeRatings_A.end() ? std::nullopt : std::optional(*found);
}

std::span<const double> wireAreas_m2() {
    return kWireAreas_m2;
}

std::optional<double> nextWireArea_m2(double area_m2) {
    const auto found = std::upper_bound(kWireAreas_m2.begin(), kWireAreas_m2.end(), area_m2 * kSameArea);
    return found == kWireAreas_m2.end() ? std::nullopt : std::optional(*found);
}

} // namespace pumpwright

#include "core/parts/saturation.h"

#include <cmath>

namespace pumpwright {
namespace {

/// Widths beyond the corner at which a ramp is a straight line to the last digit.
constexpr double kFarOff = 40;

} // namespace

SmoothValue smoothRamp(double x, double width) {
    const double argument = x / width;
    if (argument > kFarOff) {
        return {x, 1};
    }
    // ln(1 + eᵃ), written so that the exponent is never positive.
    const double small = std::exp(-std::abs(argument));
    const double rounded = std::log1p(small) + (argument > 0 ? argument : 0);
    return {width * rounded, (argument > 0 ? 1.0 : small) / (1 + small)};
}

SmoothValue smoothStep(double x, double width) {
    const double argument = x / width;
    const double small = std::exp(-std::abs(argument));
    const double value = (argument > 0 ? 1.0 : small) / (1 + small);
    return {value, small / ((1 + small) * (1 + small)) / width};
}

SmoothValue smoothOnset(double x, double knee) {
    // Written with the quotient that cannot overflow.
    const double quotient = knee / x;
    if (x <= 0 || quotient > 1e50) {
        return {0, 0};
    }
    const double square = quotient * quotient;
    const double value = 1 / (1 + square * square);
    return {value, 4 * value * (1 - value) / x};
}

SmoothValue smoothLimit(double x, double limit) {
    const double value = std::tanh(x / limit);
    return {limit * value, 1 - value * value};
}

} // namespace pumpwright

#include "core/parts/saturation.h"

#include <cmath>

namespace pumpwright {

SmoothValue smoothRamp(double x, double width) {
    const SmoothValue step = smoothStep(x, width);
    const double argument = x / width;
    // ln(1 + eᵃ), written so that the exponent is never positive.
    const double rounded = std::log1p(std::exp(-std::abs(argument))) + (argument > 0 ? argument : 0);
    return {width * rounded, step.value};
}

SmoothValue smoothStep(double x, double width) {
    const double argument = x / width;
    const double small = std::exp(-std::abs(argument));
    const double value = (argument > 0 ? 1.0 : small) / (1 + small);
    return {value, small / ((1 + small) * (1 + small)) / width};
}

SmoothValue smoothOnset(double x, double knee) {
    if (x <= 0) {
        return {0, 0};
    }
    // Written with the quotient that cannot overflow.
    const double quotient = knee / x;
    if (quotient > 1e100) {
        return {0, 0};
    }
    const double value = 1 / (1 + quotient * quotient);
    return {value, 2 * value * (1 - value) / x};
}

SmoothValue smoothLimit(double x, double limit) {
    const double value = std::tanh(x / limit);
    return {limit * value, 1 - value * value};
}

} // namespace pumpwright

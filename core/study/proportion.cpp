#include "core/study/proportion.h"

#include <cmath>

namespace pumpwright {
namespace {

/// Outside the interval on each side: 2.5 %.
constexpr double kTail = 0.025;

/// The continued fraction of DLMF 8.17.22, from the front after Lentz; converges fast for x < (a+1)/(a+b+2).
double betaFraction(double a, double b, double x) {
    constexpr int kMostTerms = 100000;
    constexpr double kDone = 1e-15;
    constexpr double kTiny = 1e-300; // stands for a zero that would be divided by
    const auto away = [](double value) { return std::abs(value) < kTiny ? kTiny : value; };
    double c = 1;
    double d = 1 / away(1 - (a + b) * x / (a + 1));
    double fraction = d;
    for (int m = 1; m <= kMostTerms; ++m) {
        const double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
        d = 1 / away(1 + even * d);
        c = away(1 + even / c);
        fraction *= d * c;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
        d = 1 / away(1 + odd * d);
        c = away(1 + odd / c);
        fraction *= d * c;
        if (std::abs(d * c - 1) < kDone) {
            break;
        }
    }
    return fraction;
}

/// The x at which I_x(a, b) is `level`, by halving: the function rises everywhere.
double betaQuantile(double a, double b, double level) {
    constexpr int kHalvings = 60;
    double low = 0;
    double high = 1;
    for (int i = 0; i < kHalvings; ++i) {
        const double middle = (low + high) / 2;
        (incompleteBeta(a, b, middle) < level ? low : high) = middle;
    }
    return (low + high) / 2;
}

} // namespace

double incompleteBeta(double a, double b, double x) {
    if (x <= 0 || x >= 1) {
        return x <= 0 ? 0 : 1;
    }
    if (x > (a + 1) / (a + b + 2)) {
        return 1 - incompleteBeta(b, a, 1 - x);
    }
    const double logFront =
        std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log1p(-x);
    return std::exp(logFront) * betaFraction(a, b, x) / a;
}

Proportion proportion(std::size_t count, std::size_t of) {
    if (of == 0) {
        return {};
    }
    const auto k = static_cast<double>(count);
    const auto n = static_cast<double>(of);
    return {k / n, count == 0 ? 0 : betaQuantile(k, n - k + 1, kTail),
            count == of ? 1 : betaQuantile(k + 1, n - k, 1 - kTail)};
}

} // namespace pumpwright

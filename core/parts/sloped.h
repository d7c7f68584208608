#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace pumpwright {

/// A number that carries its slopes towards N variables, so that a formula states law and derivative at once.
template <std::size_t N>
struct Sloped {
    double value = 0;
    std::array<double, N> slopes{};

    static constexpr Sloped variable(double value, std::size_t index) {
        Sloped result{value, {}};
        result.slopes[index] = 1;
        return result;
    }
};

/// f(a) from its value and derivative at a.
template <std::size_t N>
constexpr Sloped<N> chained(const Sloped<N>& a, double value, double derivative) {
    Sloped<N> result{value, {}};
    for (std::size_t i = 0; i < N; ++i) {
        result.slopes[i] = derivative * a.slopes[i];
    }
    return result;
}

/// f(a, b) from its value and its derivatives towards both.
template <std::size_t N>
constexpr Sloped<N> chained(const Sloped<N>& a, const Sloped<N>& b, double value, double towardsA,
                            double towardsB) {
    Sloped<N> result{value, {}};
    for (std::size_t i = 0; i < N; ++i) {
        result.slopes[i] = towardsA * a.slopes[i] + towardsB * b.slopes[i];
    }
    return result;
}

template <std::size_t N>
constexpr Sloped<N> operator+(const Sloped<N>& a, const Sloped<N>& b) {
    return chained(a, b, a.value + b.value, 1, 1);
}
template <std::size_t N>
constexpr Sloped<N> operator-(const Sloped<N>& a, const Sloped<N>& b) {
    return chained(a, b, a.value - b.value, 1, -1);
}
template <std::size_t N>
constexpr Sloped<N> operator*(const Sloped<N>& a, const Sloped<N>& b) {
    return chained(a, b, a.value * b.value, b.value, a.value);
}
template <std::size_t N>
constexpr Sloped<N> operator/(const Sloped<N>& a, const Sloped<N>& b) {
    return chained(a, b, a.value / b.value, 1 / b.value, -a.value / (b.value * b.value));
}
template <std::size_t N>
constexpr Sloped<N> operator-(const Sloped<N>& a) {
    return chained(a, -a.value, -1);
}
template <std::size_t N>
constexpr Sloped<N> operator+(const Sloped<N>& a, double b) {
    return chained(a, a.value + b, 1);
}
template <std::size_t N>
constexpr Sloped<N> operator-(const Sloped<N>& a, double b) {
    return chained(a, a.value - b, 1);
}
template <std::size_t N>
constexpr Sloped<N> operator-(double a, const Sloped<N>& b) {
    return chained(b, a - b.value, -1);
}
template <std::size_t N>
constexpr Sloped<N> operator*(double a, const Sloped<N>& b) {
    return chained(b, a * b.value, a);
}
template <std::size_t N>
constexpr Sloped<N> operator/(double a, const Sloped<N>& b) {
    return chained(b, a / b.value, -a / (b.value * b.value));
}

/// √a of a number above zero.
template <std::size_t N>
Sloped<N> sqrt(const Sloped<N>& a) {
    const double root = std::sqrt(a.value);
    return chained(a, root, 0.5 / root);
}

/// a^exponent of a number above zero.
template <std::size_t N>
Sloped<N> pow(const Sloped<N>& a, double exponent) {
    const double value = std::pow(a.value, exponent);
    return chained(a, value, exponent * value / a.value);
}

template <std::size_t N>
Sloped<N> tanh(const Sloped<N>& a) {
    const double value = std::tanh(a.value);
    return chained(a, value, 1 - value * value);
}

/// max(a, floor); level below the floor. Keeps formulas away from where they have no value.
template <std::size_t N>
constexpr Sloped<N> atLeast(const Sloped<N>& a, double floor) {
    return a.value > floor ? a : Sloped<N>{floor, {}};
}

/// max(0, a) with a smooth start: exact for a ≤ 0 and for a ≥ blend.
template <std::size_t N>
constexpr Sloped<N> smoothPositive(const Sloped<N>& a, double blend) {
    if (a.value <= 0) {
        return {};
    }
    if (a.value >= blend) {
        return a;
    }
    const double s = a.value / blend;
    return chained(a, blend * s * s * (2 - s), s * (4 - 3 * s));
}

/// From 0 for a ≤ 0 to 1 for a ≥ 1, level at both ends.
template <std::size_t N>
constexpr Sloped<N> smoothStep(const Sloped<N>& a) {
    const double s = std::clamp(a.value, 0.0, 1.0);
    return chained(a, s * s * (3 - 2 * s), 6 * s * (1 - s));
}

} // namespace pumpwright

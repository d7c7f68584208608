#pragma once

#include "core/units/constants.h"

#include <compare>

namespace pumpwright {

/// A step between two temperatures [K].
class TemperatureDifference {
public:
    constexpr TemperatureDifference() = default;
    explicit constexpr TemperatureDifference(double kelvin) : m_kelvin(kelvin) {}

    constexpr double si() const { return m_kelvin; }
    friend constexpr auto operator<=>(TemperatureDifference, TemperatureDifference) = default;

private:
    double m_kelvin = 0.0;
};

/// A point on the absolute scale [K]. Two of them can't be added; their difference is another type.
class Temperature {
public:
    constexpr Temperature() = default;
    explicit constexpr Temperature(double kelvin) : m_kelvin(kelvin) {}

    constexpr double si() const { return m_kelvin; }
    friend constexpr auto operator<=>(Temperature, Temperature) = default;

private:
    double m_kelvin = kZeroCelsius_K;
};

constexpr Temperature celsius(double degrees) {
    return Temperature(degrees + kZeroCelsius_K);
}

constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
    return TemperatureDifference(a.si() - b.si());
}

constexpr Temperature operator+(Temperature a, TemperatureDifference b) {
    return Temperature(a.si() + b.si());
}

constexpr Temperature operator-(Temperature a, TemperatureDifference b) {
    return Temperature(a.si() - b.si());
}

} // namespace pumpwright

#pragma once

#include <compare>

namespace pumpwright {

/// Pressure between two places, the higher minus the lower [Pa].
class PressureDifference {
public:
    constexpr PressureDifference() = default;
    explicit constexpr PressureDifference(double pascal) : m_pascal(pascal) {}

    constexpr double si() const { return m_pascal; }
    friend constexpr auto operator<=>(PressureDifference, PressureDifference) = default;

private:
    double m_pascal = 0.0;
};

/// Pressure above empty space [Pa].
class AbsolutePressure {
public:
    constexpr AbsolutePressure() = default;
    explicit constexpr AbsolutePressure(double pascal) : m_pascal(pascal) {}

    constexpr double si() const { return m_pascal; }
    friend constexpr auto operator<=>(AbsolutePressure, AbsolutePressure) = default;

private:
    double m_pascal = 0.0;
};

/// How far a pressure lies below the ambient one [Pa]: what a vacuum gauge shows and a vacuum switch feels.
/// The same absolute pressure is less vacuum on a mountain, so each conversion takes the ambient.
class GaugeVacuum {
public:
    constexpr GaugeVacuum() = default;
    explicit constexpr GaugeVacuum(double pascal) : m_pascal(pascal) {}

    constexpr double si() const { return m_pascal; }
    friend constexpr auto operator<=>(GaugeVacuum, GaugeVacuum) = default;

private:
    double m_pascal = 0.0;
};

constexpr GaugeVacuum gaugeVacuum(AbsolutePressure ambient, AbsolutePressure p) {
    return GaugeVacuum(ambient.si() - p.si());
}

/// Inverse of gaugeVacuum(); negative when the vacuum is deeper than the ambient allows.
constexpr AbsolutePressure absolutePressure(AbsolutePressure ambient, GaugeVacuum vacuum) {
    return AbsolutePressure(ambient.si() - vacuum.si());
}

constexpr PressureDifference operator-(AbsolutePressure a, AbsolutePressure b) {
    return PressureDifference(a.si() - b.si());
}

constexpr AbsolutePressure operator+(AbsolutePressure a, PressureDifference b) {
    return AbsolutePressure(a.si() + b.si());
}

constexpr AbsolutePressure operator-(AbsolutePressure a, PressureDifference b) {
    return AbsolutePressure(a.si() - b.si());
}

constexpr PressureDifference operator-(GaugeVacuum a, GaugeVacuum b) {
    return PressureDifference(a.si() - b.si());
}

} // namespace pumpwright

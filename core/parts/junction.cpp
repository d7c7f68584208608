#include "core/parts/junction.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

/// [V] k·T/q at 300 K.
constexpr double kThermalVoltage_V = 0.02585;
/// [S] across every junction, so that a node between two blocking diodes does not float.
constexpr double kLeak_S = 1e-12;

double startOfOmega(double x) {
    if (x < -2) {
        return std::exp(x);
    }
    if (x < 4) {
        const double p = x - 1;
        return 1 + p / 2 + p * p / 16 - p * p * p / 192;
    }
    const double logarithm = std::log(x);
    return x - logarithm + logarithm / x;
}

/// i of i·R + slope·ln(i/scale) = v, and di/dv.
SmoothValue exponentialWithResistance(double voltage_V, double scale_A, double slope_V,
                                      double resistance_ohm) {
    const double unit_A = slope_V / resistance_ohm;
    const double omega = wrightOmega(voltage_V / slope_V + std::log(scale_A / unit_A));
    return {unit_A * omega, omega / (1 + omega) / resistance_ohm};
}

/// Emission coefficient that data-sheet curves show: near 1 for Schottky diodes, near 2 for silicon power
/// rectifiers at high current. Common practice, no published source.
double emissionCoefficient(double junction_V) {
    return std::clamp(junction_V / 0.45, 1.05, 2.0);
}

} // namespace

double wrightOmega(double x) {
    constexpr double kLowest = -690; // below this the result is the smallest normal number and nothing counts
    if (x < -40) {
        return std::exp(std::max(x, kLowest)); // ω = e^(x − ω) and ω is nil against x
    }
    double omega = startOfOmega(x);
    if (x > 1e15) {
        return omega; // exact already, and the squares below could overflow
    }
    // Two steps of the fourth-order iteration of Fritsch, Shafer and Crowley (Communications of the ACM 16,
    // 1973, algorithm 443).
    for (int step = 0; step < 2; ++step) {
        const double residual = x - omega - std::log(omega);
        const double onePlus = 1 + omega;
        const double twice = 2 * onePlus * (onePlus + 2 * residual / 3);
        omega *= 1 + residual / onePlus * (twice - residual) / (twice - 2 * residual);
    }
    return omega;
}

JunctionValues rectifierValues(double forward_V, double forward_A, double resistance_ohm,
                               double breakdown_V) {
    const double resistance = std::min(resistance_ohm, forward_V / forward_A / 2);
    const double junction_V = forward_V - forward_A * resistance;
    const double slope_V = kThermalVoltage_V * emissionCoefficient(junction_V);
    const double saturation_A = forward_A / std::expm1(junction_V / slope_V);
    return {saturation_A, slope_V, resistance, breakdown_V, 1e-4, 0.05, 2 * resistance};
}

JunctionValues zenerValues(double zener_V, double test_A, double zenerResistance_ohm) {
    JunctionValues values = rectifierValues(0.9, std::max(10 * test_A, 0.1), 0.02, zener_V);
    values.breakdown_A = test_A;
    values.breakdownResistance_ohm = zenerResistance_ohm;
    return values;
}

JunctionValues oneWayZenerValues(double clamp_V, double test_A, double resistance_ohm) {
    JunctionValues values = zenerValues(clamp_V, test_A, resistance_ohm);
    values.saturation_A = 0;
    return values;
}

JunctionElement::JunctionElement(Unknown anode, Unknown cathode, const JunctionValues& values)
    : m_anode(anode), m_cathode(cathode), m_values(values) {}

SmoothValue JunctionElement::currentAt(double voltage_V) const {
    const JunctionValues& own = m_values;
    SmoothValue total{kLeak_S * voltage_V, kLeak_S};
    if (own.saturation_A > 0) {
        const SmoothValue forward =
            exponentialWithResistance(voltage_V + own.saturation_A * own.resistance_ohm, own.saturation_A,
                                      own.slope_V, own.resistance_ohm);
        total.value += forward.value - own.saturation_A;
        total.slope += forward.slope;
    }
    if (std::isfinite(own.breakdown_V)) {
        // Shifted by the drop at `breakdown_A`, so that just that current flows at the breakdown voltage.
        const double beyond_V = -voltage_V - own.breakdown_V + own.breakdown_A * own.breakdownResistance_ohm;
        const SmoothValue reverse = exponentialWithResistance(beyond_V, own.breakdown_A, own.breakdownSlope_V,
                                                              own.breakdownResistance_ohm);
        total.value -= reverse.value;
        total.slope += reverse.slope;
    }
    return total;
}

void JunctionElement::addEquations(const Point& at, Equations& equations) const {
    const SmoothValue current = currentAt(at[m_anode] - at[m_cathode]);
    equations.addCurrent(m_anode, m_cathode, current.value);
    equations.addCurrentSlope(m_anode, m_cathode, m_anode, current.slope);
    equations.addCurrentSlope(m_anode, m_cathode, m_cathode, -current.slope);
}

void JunctionElement::addAccount(const Point& at, Account& account) const {
    account.giveOff((at[m_anode] - at[m_cathode]) * current_A(at));
}

double JunctionElement::current_A(const Point& at) const {
    return currentAt(at[m_anode] - at[m_cathode]).value;
}

} // namespace pumpwright

#include "core/parts/coil.h"

#include <cmath>
#include <utility>

namespace pumpwright {
namespace {

/// A rectifier such as relay makers build in. Values from memory of typical data sheets of 1 A rectifiers.
constexpr double kDiodeForward_V = 0.95;
constexpr double kDiodeRated_A = 1;
constexpr double kDiodeResistance_ohm = 0.05;
constexpr double kDiodeReverse_V = 400;
/// What the rectifier in series with a Zener adds to its voltage, and the pair's resistance.
constexpr double kSeriesDrop_V = 0.7;
constexpr double kZenerTest_A = 0.05;
constexpr double kZenerResistance_ohm = 2;

/// How often a winding left alone swings before eddy currents in its iron have eaten the swing, as the
/// quality factor of the loss beside its inductance. Common practice, no published source.
constexpr double kQualityOfRinging = 5;

/// Resistance of the path into the winding's capacitance, as a share of √(L/C): a contact that closes charges
/// it through the winding's own wire, not at once. Common practice, no published source.
constexpr double kCapacitancePathShare = 0.02;

double waveResistance_ohm(const CoilValues& values) {
    return std::sqrt(values.inductance_H / values.strayCapacitance_F);
}

/// Anode on the minus terminal.
JunctionValues suppressionValues(const CoilValues& values) {
    if (values.suppression == Suppression::Zener) {
        return oneWayZenerValues(values.zenerVoltage_V + kSeriesDrop_V, kZenerTest_A, kZenerResistance_ohm);
    }
    return rectifierValues(kDiodeForward_V, kDiodeRated_A, kDiodeResistance_ohm, kDiodeReverse_V);
}

} // namespace

CoilElement::CoilElement(const CoilValues& values, Unknown plus, Unknown minus, LawContext& context)
    : m_values(values), m_plus(plus), m_minus(minus),
      m_current(context.addUnknown({"coil current", 0, 1e-6})),
      m_strayVoltage(context.addUnknown({"voltage of the winding's capacitance", 0, 0.05})),
      m_diode(values.suppression == Suppression::Zener ? plus : minus,
              values.suppression == Suppression::Zener ? minus : plus, suppressionValues(values)) {}

void CoilElement::addEquations(const Point& at, Equations& equations) const {
    equations.addCurrent(m_plus, m_minus, at[m_current]);
    equations.addCurrentSlope(m_plus, m_minus, m_current, 1);
    equations.add(m_current, voltage_V(at) - m_values.resistance_ohm * at[m_current]);
    equations.addSlope(m_current, m_plus, 1);
    equations.addSlope(m_current, m_minus, -1);
    equations.addSlope(m_current, m_current, -m_values.resistance_ohm);
    equations.addConductance(at, m_plus, m_minus, ironLoss_S());
    addCapacitance(at, equations);
    switch (m_values.suppression) {
    case Suppression::None:
        break;
    case Suppression::Resistor:
        equations.addConductance(at, m_plus, m_minus, 1 / m_values.suppressionResistance_ohm);
        break;
    case Suppression::Diode:
    case Suppression::Zener:
        m_diode.addEquations(at, equations);
        break;
    }
}

void CoilElement::addCapacitance(const Point& at, Equations& equations) const {
    const double path_S = capacitancePath_S();
    const double current_A = path_S * (voltage_V(at) - at[m_strayVoltage]);
    equations.addCurrent(m_plus, m_minus, current_A);
    equations.add(m_strayVoltage, current_A);
    for (const auto& [unknown, sign] : {std::pair{m_plus, 1.0}, {m_minus, -1.0}, {m_strayVoltage, -1.0}}) {
        equations.addCurrentSlope(m_plus, m_minus, unknown, sign * path_S);
        equations.addSlope(m_strayVoltage, unknown, sign * path_S);
    }
}

double CoilElement::capacitancePath_S() const {
    return 1 / (kCapacitancePathShare * waveResistance_ohm(m_values));
}

double CoilElement::ironLoss_S() const {
    return 1 / (kQualityOfRinging * waveResistance_ohm(m_values));
}

void CoilElement::addAccount(const Point& at, Account& account) const {
    const double current = at[m_current];
    const double voltage = voltage_V(at);
    const double path_V = voltage - at[m_strayVoltage];
    account.giveOff(m_values.resistance_ohm * current * current + ironLoss_S() * voltage * voltage +
                    capacitancePath_S() * path_V * path_V);
    if (m_values.suppression == Suppression::Resistor) {
        account.giveOff(voltage * voltage / m_values.suppressionResistance_ohm);
    } else if (m_values.suppression != Suppression::None) {
        m_diode.addAccount(at, account);
    }
    account.held_J += 0.5 * m_values.inductance_H * current * current +
                      0.5 * m_values.strayCapacitance_F * at[m_strayVoltage] * at[m_strayVoltage];
}

void CoilElement::addMasses(MassMatrix& masses) const {
    masses.add(m_current, m_current, m_values.inductance_H);
    masses.add(m_strayVoltage, m_strayVoltage, m_values.strayCapacitance_F);
}

} // namespace pumpwright

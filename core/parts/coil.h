#pragma once

#include "core/parts/features.h"
#include "core/parts/junction.h"
#include "core/parts/law.h"

namespace pumpwright {

/// A winding with its stray capacitance and with what suppresses its spike, between two terminals. The
/// resistance is the warm one. [ohm, H, F, V]
struct CoilValues {
    double resistance_ohm;
    double inductance_H;
    double strayCapacitance_F;
    Suppression suppression;
    double suppressionResistance_ohm;
    double zenerVoltage_V;
};

/// R·i + L·di/dt = v with a capacitance and the loss of the iron across. A suppression diode stands with its
/// cathode on the plus terminal; a Zener has a rectifier in series, so it conducts only while the voltage is
/// reversed.
class CoilElement {
public:
    CoilElement(const CoilValues& values, Unknown plus, Unknown minus, LawContext& context);

    void addEquations(const Point& at, Equations& equations) const;
    void addMasses(MassMatrix& masses) const;
    void addAccount(const Point& at, Account& account) const;
    /// [A] through the winding, from plus to minus.
    double current_A(const Point& at) const { return at[m_current]; }
    /// [V] from plus to minus.
    double voltage_V(const Point& at) const { return at[m_plus] - at[m_minus]; }

private:
    void addCapacitance(const Point& at, Equations& equations) const;
    double capacitancePath_S() const;
    double ironLoss_S() const;

    CoilValues m_values;
    Unknown m_plus;
    Unknown m_minus;
    Unknown m_current;
    Unknown m_strayVoltage;
    JunctionElement m_diode;
};

} // namespace pumpwright

#pragma once

#include "core/parts/law.h"
#include "core/parts/saturation.h"

namespace pumpwright {

/// Values of a semiconductor junction with the resistance of its body and leads.
struct JunctionValues {
    double saturation_A;   ///< Is of the exponential law
    double slope_V;        ///< emission coefficient times thermal voltage
    double resistance_ohm; ///< in series, greater than zero
    double breakdown_V;    ///< reverse voltage at which `breakdown_A` flows; infinity: never
    double breakdown_A;
    double breakdownSlope_V;        ///< how sharp the knee is
    double breakdownResistance_ohm; ///< in series while broken down, greater than zero
};

/// A rectifier that drops `forward_V` at `forward_A`, of which `resistance_ohm` takes its share (at most
/// half), and breaks down at `breakdown_V` (avalanche).
JunctionValues rectifierValues(double forward_V, double forward_A, double resistance_ohm, double breakdown_V);

/// A Zener diode that holds `zener_V` at `test_A` and rises by `zenerResistance_ohm` from there.
JunctionValues zenerValues(double zener_V, double test_A, double zenerResistance_ohm);

/// The same with a rectifier in series: conducts in the breakdown direction only. `clamp_V` counts both.
JunctionValues oneWayZenerValues(double clamp_V, double test_A, double resistance_ohm);

/// A diode from anode to cathode: i·R + n·Vt·ln(1 + i/Is) = v, solved for i, so that the current grows no
/// faster than a straight line however far a trial point is off. The same law mirrored for the breakdown.
class JunctionElement {
public:
    JunctionElement(Unknown anode, Unknown cathode, const JunctionValues& values);

    void addEquations(const Point& at, Equations& equations) const;
    void addAccount(const Point& at, Account& account) const;
    /// [A] from anode to cathode.
    double current_A(const Point& at) const;
    /// [A] and [S] at a voltage from anode to cathode.
    SmoothValue currentAt(double voltage_V) const;

private:
    Unknown m_anode;
    Unknown m_cathode;
    JunctionValues m_values;
};

/// ω(x), the solution of ω + ln ω = x (Wright omega function), to nearly full precision.
double wrightOmega(double x);

} // namespace pumpwright

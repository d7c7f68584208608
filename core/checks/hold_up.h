#pragma once

namespace pumpwright {

/// [s] for which a capacitor [F] keeps a resistive load [Ω] above a voltage: R·C·ln(V0/V). Zero where the
/// voltage is not reached at first.
double holdUp_s(double capacitance_F, double load_ohm, double start_V, double least_V);

/// [s] for which it keeps a load of constant current [A] above a voltage: C·(V0 − V)/I.
double constantHoldUp_s(double capacitance_F, double load_A, double start_V, double least_V);

} // namespace pumpwright

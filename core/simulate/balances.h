#pragma once

namespace pumpwright {

/// What a run took in, gave off, and holds more than at its start. What the three leave over is the engine's
/// error.
struct Balance {
    double in = 0;
    double out = 0;
    double held = 0;
    double offShare = 0; ///< |in − out − held|, as a share of what came in or went out and was held at first
};

/// Of a run: energy [J] of every sort, gas [kg], and charge [C], where `in` is what the sources moved and
/// what is missing is missing at the nodes.
struct Balances {
    Balance energy_J;
    Balance gas_kg;
    Balance charge_C;
};

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"

#include <cstdint>
#include <random>

namespace pumpwright {

class CircuitBuilder;

/// Makes circuits like those that people build: battery G1, fuse F1, splice X5, pump M1 and booster A1 in
/// every one of them; what triggers the pump, what switches it, what else hangs on it and every value drawn
/// anew. The same seed gives the same circuits.
class SensibleCircuits {
public:
    explicit SensibleCircuits(std::uint64_t seed) : m_random(seed) {}

    Circuit circuit();

private:
    double between(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_random);
    }
    bool chance(double share) { return between(0, 1) < share; }
    void addVacuumSide(CircuitBuilder& builder);
    void addTrigger(CircuitBuilder& builder);
    void addPumpSwitch(CircuitBuilder& builder);
    void addExtras(CircuitBuilder& builder);
    DrivePlan plan();
    void vary(Circuit& circuit);

    std::mt19937_64 m_random;
};

} // namespace pumpwright

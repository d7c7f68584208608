#pragma once

#include "core/circuit/drive_plan.h"

#include <string>
#include <vector>

namespace pumpwright::test {

/// The van's pump, booster and relay, written out by hand as ordinary differential equations and solved by
/// CVODE of SUNDIALS with root finding. Values and laws are those that docs/physics.md states; no law of the
/// program is used. Wires are thick and short and count as their resistance alone.
struct VanByHand {
    enum class Trigger {
        VacuumSwitch, ///< feeds the relay's coil
        BrakeLamps    ///< the pedal switch feeds two filament lamps, and over a diode the coil
    };

    Trigger trigger = Trigger::VacuumSwitch;
    double setPoint_Pa = 55e3;
    double differential_Pa = 200;
    double initialVacuum_Pa = 0;
    double leakHole_m = 4e-5;
    double duration_s = 60;
    std::vector<Press> presses; ///< that don't overlap
    double sampleEvery_s = 0;   ///< 0: none

    struct Event {
        double time_s;
        std::string what;
    };
    struct Sample {
        double time_s;
        double vacuum_Pa; ///< in the booster
        double speed_radps;
        double current_A; ///< of the motor
        double supply_V;
        double filament_K;
    };
    struct Drive {
        bool finished = false;
        std::vector<Event> events;
        std::vector<Sample> samples;
        long steps = 0;
    };
    Drive drive(double relativeTolerance) const;

    /// [Ω] of each of the wires that the circuit of the same values must have: 6 mm² of copper, 0.1 m, with
    /// 10 µΩ for its crimps.
    static constexpr double kWire_ohm = 1.7241e-8 * 0.1 / 6e-6 + 1e-5;
};

} // namespace pumpwright::test

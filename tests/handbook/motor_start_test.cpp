// Start of a permanent-magnet motor against closed forms of the linear machine: V = R·i + L·di/dt + Ke·ω and
// J·dω/dt = Kt·i − load (electrical-machine textbooks).

#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <cmath>

using namespace pumpwright;
using Catch::Matchers::WithinRel;

namespace {

/// The pump's motor straight on the supply. Finer steps than usual, as the closed forms are compared to 1 %.
DriveResult startOf(CircuitBuilder::Values motor, double duration_s) {
    CircuitBuilder builder;
    builder.part("supply", "G1", {{"internalResistance_ohm", 5e-4}})
        .part("pump", "M1", motor)
        .wire("G1.30", "M1.+", 50e-6, 0.05)
        .wire("M1.-", "G1.31", 50e-6, 0.05);
    DrivePlan plan;
    plan.duration_s = duration_s;
    DriveOptions options;
    options.relativeTolerance = 1e-6;
    DriveResult run = simulateDrive(builder.plan(plan).build(), options);
    REQUIRE(run.status == DriveStatus::Finished);
    return run;
}

double voltage(const DriveResult& run, double time_s) {
    return run.recording.terminal(endOf("M1.+"))->at(time_s) -
           run.recording.terminal(endOf("M1.-"))->at(time_s);
}

const Channel& probed(const DriveResult& run, const char* name) {
    const Channel* channel = run.recording.part(PartId{"M1"}, name);
    REQUIRE(channel != nullptr);
    return *channel;
}

} // namespace

TEST_CASE("a motor's inrush rises with L/R towards V/R", "[handbook][motor]") {
    // The heaviest rotor stands still meanwhile: i = V/R·(1 − e^(−t·R/L)), L/R = 0.5 ms.
    const DriveResult run = startOf({{"inertia_kgm2", 0.01}, {"freeSpeed_m3ps", 1e-6}}, 5e-3);
    const Channel& current = probed(run, probe::kCurrent);
    for (const double time_s : {0.25e-3, 0.5e-3, 1e-3, 2.5e-3}) {
        INFO(time_s << " s");
        const double stall_A = voltage(run, time_s) / 1.0;
        CHECK_THAT(current.at(time_s), WithinRel(stall_A * (1 - std::exp(-time_s / 0.5e-3)), 0.01));
    }
}

TEST_CASE("a motor of 1 ohm takes 12 A from 12 V at standstill", "[handbook][motor]") {
    // Ohm's law; common practice, no published source, for 12 A being usual for a booster pump.
    const DriveResult run = startOf({{"inertia_kgm2", 0.01}, {"inductance_H", 1e-5}}, 5e-3);
    CHECK_THAT(probed(run, probe::kCurrent).extremes(0, 5e-3).highest,
               WithinRel(voltage(run, 1e-3) / 1.0, 0.01));
    CHECK_THAT(probed(run, probe::kCurrent).extremes(0, 5e-3).highest, WithinRel(12.0, 0.07));
}

TEST_CASE("inrush decays with the mechanical time constant J·R/(Kt·Ke)", "[handbook][motor]") {
    // J 4e-5 kg·m², R 1 Ω, Ke 0.03 V·s: 44.4 ms. No load: i = V/R·e^(−t/τm), ω = V/Ke·(1 − e^(−t/τm)).
    const DriveResult run = startOf({{"motorConstant_Vs", 0.03},
                                     {"inertia_kgm2", 4e-5},
                                     {"inductance_H", 1e-5},
                                     {"frictionTorque_Nm", 0},
                                     {"viscous_Nms", 0},
                                     {"freeSpeed_m3ps", 1e-6},
                                     {"ratedSpeed_radps", 1000}},
                                    0.3);
    const double tau_s = 4e-5 * 1 / (0.03 * 0.03);
    CHECK_THAT(tau_s, WithinRel(44.4e-3, 1e-3));
    const Channel& current = probed(run, probe::kCurrent);
    const Channel& speed = probed(run, probe::kSpeed);
    for (const double time_s : {0.02, 0.0444, 0.1}) {
        INFO(time_s << " s");
        const double left = std::exp(-time_s / tau_s);
        CHECK_THAT(current.at(time_s), WithinRel(voltage(run, time_s) * left, 0.01));
        CHECK_THAT(speed.at(time_s), WithinRel(voltage(run, time_s) / 0.03 * (1 - left), 0.01));
    }
}

TEST_CASE("a loaded motor settles at load over motor constant, and what voltage is left turns it",
          "[handbook][motor]") {
    // Load 0.1 N·m, Ke 0.025: 4.0 A; ω = (V − R·i)/Ke. With 13.5 V that is 380 rad/s.
    const DriveResult run = startOf({{"frictionTorque_Nm", 0.1},
                                     {"viscous_Nms", 0},
                                     {"freeSpeed_m3ps", 1e-6},
                                     {"ratedSpeed_radps", 3000}},
                                    2);
    CHECK_THAT(probed(run, probe::kCurrent).at(2), WithinRel(4.0, 1e-3));
    CHECK_THAT(probed(run, probe::kSpeed).at(2), WithinRel((voltage(run, 2) - 4.0) / 0.025, 1e-3));
}

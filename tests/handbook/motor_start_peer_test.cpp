#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/ida_peer.h"

#include <algorithm>
#include <cmath>

// The start of a pump's motor on a weak supply, written out by hand as four equations and solved by IDA of
// SUNDIALS at 1e-9. Values and laws are those that docs/physics.md states; no law of the program is used.

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::WithinAbs;

namespace {

constexpr double kOn_s = 0.1;
constexpr double kSupply_V = 12;
constexpr double kSupply_ohm = 0.1; ///< so that the voltage dips by a tenth
constexpr double kContact_ohm = 0.01;
/// Three wires of 0.1 m and 6 mm² of copper, with 10 µΩ for the crimps of each.
constexpr double kWires_ohm = 3 * (1.7241e-8 * 0.1 / 6e-6 + 1e-5);
constexpr double kAmbient_Pa = 101325;
constexpr double kAmbient_K = 293.15;
constexpr double kInlet_m3 = 20e-6;
constexpr double kGas = 287.053;
constexpr double kHeatVolume = kGas / 0.4;
constexpr double kHeatPressure = 1.4 * kHeatVolume;
constexpr double kSwept_m3 = 6e-4 / 260; ///< per radian

/// max(0, x) with the start that the laws have.
double positive(double x, double blend) {
    const double s = std::clamp(x / blend, 0.0, 1.0);
    return x >= blend ? x : blend * s * s * (2 - s);
}

/// Air that leaks back through a hole of 0.5 mm, choked or not [ISO 6358], kg/s.
double backLeak(double pressure_Pa, double speed) {
    const double area_m2 = 3.14159265358979 / 4 * 0.5e-3 * 0.5e-3;
    const double choked =
        area_m2 * kAmbient_Pa * std::sqrt(1.4 / (kGas * kAmbient_K)) * std::pow(1 / 1.2, 3.0);
    const double u = std::clamp((1 - pressure_Pa / kAmbient_Pa) / (1 - 0.528), 0.0, 1.0);
    const double share = u * (2 - u) * std::sqrt(1.001 / (u * (2 - u) + 1e-3));
    return choked * (u < 1 ? share : 1) / (1 + speed * speed / 400);
}

/// Motor current, speed, mass and energy of the gas at the inlet.
void startRight(std::span<const double> y, std::span<double> f) {
    const double mass = y[2];
    const double temperature_K = y[3] / (mass * kHeatVolume);
    const double pressure_Pa = 0.4 * y[3] / kInlet_m3;
    const double feed_ohm = kSupply_ohm + kContact_ohm + kWires_ohm;
    const double motor_V = (kSupply_V - feed_ohm * y[0]) / (1 + 1e-3 * feed_ohm); // 1 mS: the iron's loss
    constexpr double kPower = 0.4 / 1.4;
    const double compression_Nm =
        kSwept_m3 / kPower * pressure_Pa * (std::pow(kAmbient_Pa / pressure_Pa, kPower) - 1);
    const double pumped = kSwept_m3 * positive(y[1], 1) * positive(pressure_Pa - 0.14 * kAmbient_Pa, 200) /
                          (kGas * temperature_K);
    const double leak = backLeak(pressure_Pa, y[1]);
    const double wall_WperK = kAmbient_Pa * kInlet_m3 / (kGas * kAmbient_K) * kHeatVolume / 0.05;
    f[0] = motor_V - 1.0 * y[0] - 0.025 * y[1];
    f[1] = 0.025 * y[0] - std::tanh(y[1]) * (compression_Nm + 0.025) - 5e-5 * y[1];
    f[2] = leak - pumped;
    f[3] = kHeatPressure * (kAmbient_K * leak - temperature_K * pumped) +
           wall_WperK * (kAmbient_K - temperature_K);
}

StiffProblem motorStart(double end_s) {
    const double mass = kAmbient_Pa * kInlet_m3 / (kGas * kAmbient_K);
    StiffProblem problem{"motor start", end_s, 1e-3, {0, 0, mass, mass * kHeatVolume * kAmbient_K},
                         {0, 0, 0, 0},  {},    {},   {}};
    problem.masses = {{0, 0, 0.5e-3}, {1, 1, 4e-5}, {2, 2, 1}, {3, 3, 1}};
    const std::vector<double> sizes{1, 1, mass, problem.start[3]};
    problem.right = [sizes](double, std::span<const double> y, std::span<double> f, double* slopes) {
        startRight(y, f);
        for (std::size_t column = 0; slopes != nullptr && column < 4; ++column) {
            std::vector<double> shifted(y.begin(), y.end());
            std::vector<double> there(4);
            shifted[column] += 1e-7 * sizes[column];
            startRight(shifted, there);
            for (std::size_t row = 0; row < 4; ++row) {
                slopes[4 * row + column] = (there[row] - f[row]) / (1e-7 * sizes[column]);
            }
        }
    };
    problem.startRates[0] = kSupply_V / 0.5e-3;
    return problem;
}

DriveResult drive() {
    DrivePlan plan;
    plan.duration_s = kOn_s + 1.5;
    plan.switchMoves = {{kOn_s, {"S1"}, true}};
    return simulateDrive(
        CircuitBuilder()
            .part("supply", "G1", {{"stateOfCharge_share", 0.1618}, {"internalResistance_ohm", kSupply_ohm}})
            .part("hand-switch", "S1", {{"contactResistance_ohm", kContact_ohm}})
            .part("pump", "M1")
            .wire("G1.30", "S1.1", 6e-6, 0.1)
            .wire("S1.2", "M1.+", 6e-6, 0.1)
            .wire("M1.-", "G1.31", 6e-6, 0.1)
            .plan(plan)
            .build());
}

} // namespace

TEST_CASE("a motor that starts on a weak supply does as the equations by hand do",
          "[handbook][motor][peer]") {
    const DriveResult run = drive();
    REQUIRE(run.status == DriveStatus::Finished);
    const Channel& current = *run.recording.part({"M1"}, probe::kCurrent);
    const Channel& speed = *run.recording.part({"M1"}, probe::kSpeed);
    for (const double since_s : {5e-4, 2e-3, 0.01, 0.03, 0.1, 0.3, 1.0}) {
        IdaPeer peer(motorStart(since_s), 1e-9);
        auto outcome = peer.step();
        while (outcome == IdaPeer::Outcome::Step) {
            outcome = peer.step();
        }
        REQUIRE(outcome == IdaPeer::Outcome::End);
        INFO(since_s << " s after the switch");
        // 0.1 % of the inrush and of the speed, and what the recording may thin away.
        CHECK_THAT(current.at(kOn_s + since_s), WithinAbs(peer.y()[0], 0.011 + 0.005));
        CHECK_THAT(speed.at(kOn_s + since_s), WithinAbs(peer.y()[1], 0.3 + 0.2));
    }
}

#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/ida_peer.h"

#include <algorithm>
#include <cmath>
#include <string>

// The release of a relay coil, written out by hand as four equations and solved by IDA of SUNDIALS at 1e-9
// with root finding. Values and laws are those that docs/physics.md states; no law of the program is used.

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::WithinAbs;

namespace {

constexpr double kOff_s = 0.1;
constexpr double kSupply_V = 12;
constexpr double kCoil_ohm = 90;
constexpr double kInductance_H = 0.7;
constexpr double kStray_F = 1e-9;
constexpr double kGap_F = 5e-12;
constexpr double kDropOut_A = 1.6 / kCoil_ohm;

/// What stands across the coil: a resistor, or a diode of saturation·(e^(z/slope) − 1) behind its resistance.
struct Across {
    std::string id;
    double setting_ohm = 680; ///< on the Nameplate
    double resistor_ohm = 1e12;
    double saturation_A = 0;
    double slope_V = 1;
    double resistance_ohm = 0;
};

/// Coil voltage v, coil current i, voltage of the stray capacitance s, voltage z of the diode's junction.
StiffProblem release(const Across& across) {
    const double wave_ohm = std::sqrt(kInductance_H / kStray_F);
    const double loss_S = 1 / (5 * wave_ohm) + 1 / across.resistor_ohm;
    const double path_S = 1 / (0.02 * wave_ohm);
    const double start_A = kSupply_V / kCoil_ohm;
    StiffProblem problem{"coil release", 0.05, 1e-3, {kSupply_V, start_A, kSupply_V, -kSupply_V},
                         {0, 0, 0, 0},   {},   {},   {}};
    problem.masses = {{0, 0, kGap_F}, {1, 1, kInductance_H}, {2, 2, kStray_F}};
    problem.right = [=](double, std::span<const double> y, std::span<double> f, double* slopes) {
        const double v = y[0];
        const double gap_V = kSupply_V - v - 330; // breaks down over about a volt
        const double spark_A = gap_V > 40 ? gap_V : std::log1p(std::exp(gap_V));
        const double grown = std::exp(y[3] / across.slope_V);
        const double diode_A = across.saturation_A * (grown - 1);
        f[0] = spark_A - y[1] - path_S * (v - y[2]) - loss_S * v + diode_A;
        f[1] = v - kCoil_ohm * y[1];
        f[2] = path_S * (v - y[2]);
        f[3] = -v - across.resistance_ohm * diode_A - y[3];
        if (slopes != nullptr) {
            const double sparkSlope_S = 1 / (1 + std::exp(-gap_V));
            const double diode_S = across.saturation_A / across.slope_V * grown;
            const double rows[4][4] = {{-sparkSlope_S - path_S - loss_S, -1, path_S, diode_S},
                                       {1, -kCoil_ohm, 0, 0},
                                       {path_S, 0, -path_S, 0},
                                       {-1, 0, 0, -across.resistance_ohm * diode_S - 1}};
            std::copy(&rows[0][0], &rows[0][0] + 16, slopes);
        }
    };
    problem.startRates[0] = (-start_A - loss_S * kSupply_V) / kGap_F;
    problem.startRates[3] = -problem.startRates[0];
    return problem;
}

struct Seen {
    double letGo_s = 0;
    double lowest_V = 0;
};

Seen byPeer(const Across& across) {
    Seen seen;
    IdaPeer peer(release(across), 1e-9, [](double, auto y) { return y[1] - kDropOut_A; });
    for (auto outcome = peer.step(); outcome != IdaPeer::Outcome::End; outcome = peer.step()) {
        REQUIRE(outcome != IdaPeer::Outcome::Failed);
        seen.lowest_V = std::min(seen.lowest_V, peer.y()[0]);
        if (outcome == IdaPeer::Outcome::Root && seen.letGo_s == 0) {
            seen.letGo_s = peer.time_s();
        }
    }
    return seen;
}

Seen byDrive(const Across& across) {
    DrivePlan plan;
    plan.duration_s = kOff_s + 0.05;
    plan.switchMoves = {{0, {"S1"}, true}, {kOff_s, {"S1"}, false}};
    const Circuit circuit =
        CircuitBuilder()
            .part("supply", "G1", {{"stateOfCharge_share", 0.1618}, {"internalResistance_ohm", 1e-3}})
            .part("hand-switch", "S1")
            .part("relay", "K1",
                  {{"coilResistance_ohm", kCoil_ohm},
                   {"coilInductance_H", kInductance_H},
                   {"suppressionResistance_ohm", across.setting_ohm},
                   {"dropOutVoltage_V", 1.6}},
                  {{"suppression", across.id}})
            .wire("G1.30", "S1.1", 6e-6, 0.1)
            .wire("S1.2", "K1.86", 6e-6, 0.1)
            .wire("K1.85", "G1.31", 6e-6, 0.1)
            .plan(plan)
            .build();
    const DriveResult run = simulateDrive(circuit);
    REQUIRE(run.status == DriveStatus::Finished);
    Seen seen;
    seen.lowest_V = run.recording.part({"K1"}, probe::kCoilVoltage)->extremes(kOff_s, plan.duration_s).lowest;
    for (const DriveEvent& event : run.recording.events) {
        if (event.what == "armature lets go" && event.time_s > kOff_s) {
            seen.letGo_s = event.time_s - kOff_s;
            break;
        }
    }
    return seen;
}

void checkAgreement(const Across& across) {
    INFO(across.id << " " << across.setting_ohm);
    const Seen peer = byPeer(across);
    const Seen drive = byDrive(across);
    CHECK(peer.letGo_s > 0);
    CHECK_THAT(drive.letGo_s, WithinAbs(peer.letGo_s, 1e-4));
    CHECK_THAT(drive.lowest_V, WithinAbs(peer.lowest_V, 1e-3 * std::abs(peer.lowest_V) + 0.02));
}

} // namespace

TEST_CASE("a coil that lets go with nothing across it does as the equations by hand do",
          "[handbook][coil][peer]") {
    checkAgreement({"none"});
}

TEST_CASE("a coil that lets go into a resistor does as the equations by hand do", "[handbook][coil][peer]") {
    for (const double resistance_ohm : {82.0, 330.0, 680.0}) {
        checkAgreement({"resistor", resistance_ohm, resistance_ohm});
    }
}

TEST_CASE("a coil that lets go into a diode does as the equations by hand do", "[handbook][coil][peer]") {
    // 0.95 V at 1 A, of which 0.05 ohm take 0.05 V; the rest on an exponential of twice 25.85 mV.
    Across diode{"diode"};
    diode.slope_V = 2 * 0.02585;
    diode.resistance_ohm = 0.05;
    diode.saturation_A = 1 / std::expm1(0.9 / diode.slope_V);
    checkAgreement(diode);
}

TEST_CASE("a coil that lets go into a diode and a Zener does as the equations by hand do",
          "[handbook][coil][peer]") {
    // 24.7 V at 50 mA, the rectifier's 0.7 V counted, rising by 2 ohm on an exponential of 50 mV.
    Across zener{"zener"};
    zener.slope_V = 0.05;
    zener.resistance_ohm = 2;
    zener.saturation_A = 0.05 * std::exp(-(24.7 - 0.05 * 2) / zener.slope_V);
    checkAgreement(zener);
}

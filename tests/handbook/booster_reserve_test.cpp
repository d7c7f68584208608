// Reserve of a booster whose vacuum source has gone: repeated full presses against the mass balance.
//
// Source: gas law and mass balance, isothermal. A full press lets the working chamber fill to atmosphere at
// full travel; released, its air joins the vacuum side:
//     p' = (min(p·Vv, pa·(Vv − A·x)) + pa·(Vw + A·x))/(Vv + Vw),
// where the min is the check valve, which opens outward when the stroke compresses the vacuum side to
// atmosphere. Chamber sizes near those of the test car of PATH report UCB-ITS-PRR-97-21 (1997) (at second
// hand).

#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <array>

using namespace pumpwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kAmbient_Pa = 101325;

/// Booster, check valve and a pump that nobody feeds; full presses of 20 s every 40 s, slow enough for the
/// gas to be at ambient temperature when it counts. 2000 N ask for full travel and run-out; the foot leaves
/// the pedal at once, so that the air valve is shut before the diaphragm returns, as the balance has it.
DriveResult pressRepeatedly(double travel_m, int presses) {
    DrivePlan plan;
    plan.duration_s = 40.0 * presses + 20;
    plan.initialVacuum_Pa = kAmbient_Pa - 33e3;
    for (int i = 0; i < presses; ++i) {
        plan.presses.push_back({20 + 40.0 * i, 20, 2000, 0.005});
    }
    const Circuit circuit =
        CircuitBuilder()
            .part("booster", "A1",
                  {{"diaphragmArea_m2", 0.0533},
                   {"vacuumVolume_m3", 2.4e-3},
                   {"workingVolume_m3", 0.43e-3},
                   {"travelMax_m", travel_m},
                   {"fullTravelForce_N", 500},
                   {"leakHole_m", 1e-7},
                   {"springForce_N", 0},
                   {"springRate_Npm", 0},
                   {"efficiency", 1},
                   {"wallTimeConstant_s", 0.5}})
            .part("check-valve", "R1", {{"crackingPressure_Pa", 50}, {"backLeakHole_m", 1e-7}})
            .part("pump", "M1")
            .hose("A1.vacuum", "R1.booster")
            .hose("R1.pump", "M1.inlet")
            .plan(plan)
            .build();
    DriveResult run = simulateDrive(circuit);
    REQUIRE(run.status == DriveStatus::Finished);
    return run;
}

/// Absolute pressure in the booster just before the press with this number, from 0.
double pressureBefore(const DriveResult& run, int press) {
    return kAmbient_Pa - run.recording.port(endOf("A1.vacuum"))->at(19.9 + 40.0 * press);
}

/// Assist at the end of the press.
double assistIn(const DriveResult& run, int press) {
    return run.recording.part(PartId{"A1"}, probe::kAssist)->at(39.9 + 40.0 * press);
}

} // namespace

TEST_CASE("full presses of 10 mm use up an isolated booster in three", "[handbook][booster]") {
    // 33.0, 62.5, 87.4, 101.3 kPa; best assist in the press A·(pa − p·Vv/(Vv − A·x)) = 3138, 1120, 0 N
    // (mass balance, see above). Travel is within 0.1 % of full.
    const DriveResult run = pressRepeatedly(0.010, 3);
    CHECK_THAT(pressureBefore(run, 0), WithinRel(33.0e3, 0.005));
    CHECK_THAT(pressureBefore(run, 1), WithinRel(62.5e3, 0.005));
    CHECK_THAT(pressureBefore(run, 2), WithinRel(87.4e3, 0.005));
    CHECK_THAT(pressureBefore(run, 3), WithinRel(101.3e3, 0.005));
    CHECK_THAT(assistIn(run, 0), WithinRel(3138, 0.01));
    CHECK_THAT(assistIn(run, 1), WithinRel(1120, 0.01));
    CHECK_THAT(assistIn(run, 2), WithinAbs(0, 5));
}

TEST_CASE("half the travel makes five presses of it", "[handbook][booster]") {
    // 33.0, 52.9, 69.8, 84.1, 96.3, 101.3 kPa; 3421, 2226, 1214, 355, 0 N (mass balance, see above).
    const DriveResult run = pressRepeatedly(0.005, 5);
    constexpr std::array kPressures_kPa{33.0, 52.9, 69.8, 84.1, 96.3, 101.3};
    constexpr std::array kAssists_N{3421, 2226, 1214, 355, 0};
    for (std::size_t press = 0; press < kPressures_kPa.size(); ++press) {
        INFO("press " << press);
        CHECK_THAT(pressureBefore(run, static_cast<int>(press)),
                   WithinRel(1e3 * kPressures_kPa[press], 0.005));
    }
    for (std::size_t press = 0; press < kAssists_N.size(); ++press) {
        INFO("press " << press);
        CHECK_THAT(assistIn(run, static_cast<int>(press)), WithinAbs(kAssists_N[press], 15));
    }
}

#include "core/parts/part_kind.h"
#include "core/simulate/drive.h"
#include "core/study/brake_force.h"
#include "core/study/made_plan.h"
#include "core/study/speed_trace.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <cmath>

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

namespace {

Circuit booster() {
    DrivePlan plan;
    plan.duration_s = 100;
    plan.initialVacuum_Pa = 85e3;
    plan.charging = {{5, 50}, {60, 100}};
    return CircuitBuilder()
        .part("booster", "A1")
        .part("reservoir", "C1")
        .hose("A1.vacuum", "C1.a")
        .plan(plan)
        .build();
}

/// Samples of a speed that changes at these decelerations [m/s²], each for so long [s].
SpeedTrace driven(double speed_mps, double every_s, std::initializer_list<std::pair<double, double>> legs) {
    SpeedTrace trace;
    double time_s = 0;
    for (const auto& [deceleration, lasts_s] : legs) {
        for (const double end_s = time_s + lasts_s; time_s < end_s - 1e-9; time_s += every_s) {
            trace.times_s.push_back(time_s);
            trace.speeds_mps.push_back(speed_mps);
            speed_mps = std::max(0.0, speed_mps - deceleration * every_s);
        }
    }
    return trace;
}

} // namespace

// Closed form of dv/dt = −(r + k·v²): v = √(r/k)·tan(atan(v₀·√(k/r)) − √(r·k)·t).
TEST_CASE("a vehicle that coasts is not braked", "[study][speed-trace]") {
    const CoastingDrag drag;
    const double limit = std::sqrt(drag.rolling_mps2 / drag.perSpeedSquared_pm);
    const double rate = std::sqrt(drag.rolling_mps2 * drag.perSpeedSquared_pm);
    SpeedTrace trace;
    for (int i = 0; i < 400; ++i) {
        trace.times_s.push_back(0.1 * i);
        trace.speeds_mps.push_back(limit * std::tan(std::atan(36 / limit) - rate * 0.1 * i));
    }
    CHECK(brakingsOf(trace).empty());
    CHECK(brakingsOf(trace, {0, 0}).size() == 1); // without drag it would have to be
}

TEST_CASE("a braking is found with begin, end and size", "[study][speed-trace]") {
    const SpeedTrace trace = driven(25, 0.1, {{0, 10}, {3, 4}, {0, 10}});
    const CoastingDrag drag;
    const std::vector<Braking> found = brakingsOf(trace, drag);
    REQUIRE(found.size() == 1);
    CHECK_THAT(found[0].from_s, WithinAbs(10, 0.5)); // the slope's window
    CHECK_THAT(found[0].to_s, WithinAbs(14, 0.5));
    CHECK_THAT(found[0].deceleration_mps2, WithinAbs(3 - drag.at(17), 0.1));
}

TEST_CASE("steps of a speedometer are no braking", "[study][speed-trace]") {
    SpeedTrace trace = driven(25, 0.1, {{0.25, 60}}); // coasts
    for (double& speed_mps : trace.speeds_mps) {
        speed_mps = std::round(speed_mps * 3.6 * 2) / 2 / 3.6; // shown to 0.5 km/h
    }
    CHECK(brakingsOf(trace).empty());
}

TEST_CASE("brakings that follow each other are presses of their own", "[study][speed-trace]") {
    const SpeedTrace trace = driven(30, 0.2, {{0, 5}, {2, 3}, {0, 5}, {4, 2}, {0, 5}, {1, 0.1}, {0, 5}});
    CHECK(brakingsOf(trace).size() == 2); // the last is too short to be one
}

// The law of the booster itself is the check: the drive with that force must slow the vehicle down by so
// much.
TEST_CASE("a press brings the deceleration that it was made for", "[study][brake-force]") {
    Circuit circuit = booster();
    for (const double asked_mps2 : {0.5, 1.0, 2.5, 4.0, 6.0}) {
        circuit.plan.duration_s = 6;
        circuit.plan.presses = {{1, 4, pedalForce_N(*firstBooster(circuit), asked_mps2), 0.25}};
        const DriveResult drive = simulateDrive(circuit);
        const double found_mps2 = drive.recording.part(PartId{"A1"}, probe::kDeceleration)->at(4.5);
        CAPTURE(asked_mps2, found_mps2);
        // The valve holds the assist to 40 N of about 2 kN.
        CHECK_THAT(found_mps2, WithinAbs(asked_mps2, 0.02 * asked_mps2 + 0.07));
    }
    CHECK(pedalForce_N(*firstBooster(circuit), 0) == 0);
    CHECK(pedalForce_N(*firstBooster(circuit), -1) == 0);
    CHECK(pedalForce_N(*firstBooster(circuit), 50) ==
          pedalForce_N(*firstBooster(circuit), 9)); // the road's grip
}

TEST_CASE("a plan from a trace keeps what else happens, as long as it lasts", "[study][speed-trace]") {
    const Circuit circuit = booster();
    const auto plan = planFromTrace(circuit, driven(25, 0.1, {{0, 70}, {3, 4}, {0, 6}}));
    REQUIRE(plan);
    CHECK_THAT(plan->duration_s, WithinAbs(79.9, 0.2));
    REQUIRE(plan->presses.size() == 1);
    CHECK(plan->presses[0].force_N > 10);
    CHECK(plan->charging.front() == circuit.plan.charging.front());
    CHECK(plan->charging.back().to_s == plan->duration_s);
    CHECK(plan->initialVacuum_Pa == circuit.plan.initialVacuum_Pa);
    CHECK_FALSE(planFromTrace(Circuit{}, driven(25, 0.1, {{3, 4}})));
    CHECK_FALSE(planFromTrace(circuit, driven(25, 0.1, {{0, 4}})));
}

TEST_CASE("every sort of drive is made, the same for the same seed", "[study][made-plan]") {
    const Circuit circuit = booster();
    for (const DriveSort& sort : driveSorts()) {
        CAPTURE(sort.id);
        const auto plan = madePlan(circuit, sort, 7);
        REQUIRE(plan);
        CHECK(*plan == *madePlan(circuit, sort, 7));
        CHECK(plan->presses != madePlan(circuit, sort, 8)->presses);
        CHECK(plan->duration_s == sort.duration_s);
        CHECK(plan->presses.size() >= 5);
        for (const Press& press : plan->presses) {
            CHECK(press.at_s + press.hold_s + press.rise_s <= plan->duration_s);
            CHECK(press.hold_s >= sort.hold_s.low - 0.01);
            CHECK(press.hold_s <= sort.hold_s.high + 0.01);
            CHECK(press.force_N >= pedalForce_N(*firstBooster(circuit), sort.deceleration_mps2.low) - 0.01);
            CHECK(press.force_N <= pedalForce_N(*firstBooster(circuit), sort.deceleration_mps2.high) + 0.01);
        }
        CHECK(madePlan(circuit, sort, 7, 60)->duration_s == 60);
        CHECK_FALSE(madePlan(Circuit{}, sort, 7));
    }
    CHECK(madePlan(circuit, *findDriveSort("mountain-descent"), 1)->altitude.front().altitude_m == 2000);
    CHECK(findDriveSort("moon") == nullptr);
}

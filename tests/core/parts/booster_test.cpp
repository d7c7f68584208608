#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kVacuumVolume_m3 = 3.6e-3;
constexpr double kWorkingVolume_m3 = 5e-4;
constexpr double kArea_m2 = 0.041;

DrivePlan onePress(double force_N) {
    DrivePlan plan;
    plan.presses = {{1, 2, force_N, 0.2}}; // fully down from 1.2 to 3 s
    return plan;
}

Part boosterWith(std::map<std::string, double> values) {
    Part part = newPart(*findPartKind("booster"), "A1", {});
    part.values = std::move(values);
    return part;
}

/// A booster with its standard values but for `values`, on a bench.
struct BoosterOnBench {
    LawBench bench;
    GasNode vacuum = bench.gas("vacuum");
    GasNode working = bench.gas("working chamber");
    Unknown travel = bench.own("diaphragm travel");

    explicit BoosterOnBench(double pedalForce_N, std::map<std::string, double> values = {})
        : bench(*findPartKind("booster"), boosterWith(std::move(values)), onePress(pedalForce_N)) {}
    void set(double vacuumChamber_Pa, double workingChamber_Pa, double travel_m = 0) {
        bench.fill("vacuum", kVacuumVolume_m3 - kArea_m2 * travel_m, vacuumChamber_Pa);
        bench.fill("working chamber", kWorkingVolume_m3 + kArea_m2 * travel_m, workingChamber_Pa);
        bench.x(travel) = travel_m;
    }
    double f(Unknown row, double time_s) {
        bench.time_s = time_s;
        return bench.equations().f(row);
    }
    double probed(const std::string& name, double time_s) {
        bench.time_s = time_s;
        return bench.probe(name);
    }
};

} // namespace

TEST_CASE("a booster states its slopes at rest, while pressed, held, run out, released and empty",
          "[parts][booster]") {
    struct State {
        double time_s, vacuum_Pa, working_Pa, travel_m;
    };
    BoosterOnBench booster(100);
    const double ambient_Pa = booster.bench.ambient_Pa();
    for (const State& state :
         {State{0, 33e3, 33.5e3, 0}, State{1.1, 35e3, 50e3, 0.004}, State{2, 36e3, 80.3e3, 0.012},
          State{2, 60e3, ambient_Pa - 50, 0.014}, State{3.1, 38e3, 70e3, 0.01}, State{2, 101e3, 99e3, 0.003},
          State{4, 99e3, 101e3, 0.001}, State{2, 36e3, 50e3, 0.2}}) {
        INFO("at " << state.time_s << " s, " << state.vacuum_Pa << " and " << state.working_Pa << " Pa");
        booster.set(state.vacuum_Pa, state.working_Pa, state.travel_m);
        booster.bench.time_s = state.time_s;
        checkSlopes(booster.bench);
    }
}

TEST_CASE("a booster at rest joins its chambers and gives no assist", "[parts][booster]") {
    BoosterOnBench booster(100);
    booster.set(33e3, 40e3);
    CHECK(booster.probed(probe::kAssist, 0) < 300);
    CHECK(booster.f(booster.working.mass, 0) < -1e-4);
    CHECK(booster.f(booster.vacuum.mass, 0) > 1e-4);
    booster.set(33e3, 33e3);
    CHECK(booster.probed(probe::kAssist, 0) == 0);
    CHECK(booster.probed(probe::kLinePressure, 0) == 0);
    CHECK(booster.probed(probe::kDeceleration, 0) == 0);
    CHECK(booster.probed("assistShare", 0) == 1);
}

TEST_CASE("only the leak adds gas to a booster at rest", "[parts][booster]") {
    BoosterOnBench booster(0, {{"leakHole_m", 1e-4}});
    booster.set(33e3, 33e3);
    const double added = booster.f(booster.vacuum.mass, 0) + booster.f(booster.working.mass, 0);
    // A hole of 0.1 mm, choked: ṁ = A·p·2.360e-3 s/m at 20 °C (compressible-flow textbooks).
    CHECK_THAT(added, WithinRel(7.854e-9 * 101325 * 2.360e-3, 2e-3));
}

TEST_CASE("a press lets air into the working chamber until the assist is what the force asks for",
          "[parts][booster]") {
    BoosterOnBench booster(100);
    // Rod force 4·100 N, cut-in 20 N, boost ratio 5: 4·380 N of assist.
    const double asked_N = 4.0 * (400 - 20);
    CHECK(booster.probed(probe::kAssistAsked, 2) == asked_N);

    booster.set(33e3, 33e3, 0.01);
    CHECK(booster.f(booster.working.mass, 2) > 1e-3);

    const double spring_N = 100 + 2400 * 0.01;
    booster.set(33e3, 33e3 + (asked_N + spring_N) / (0.95 * kArea_m2), 0.01);
    CHECK_THAT(booster.probed(probe::kAssist, 2), WithinRel(asked_N, 1e-9));
    CHECK(booster.probed("assistShare", 2) == 1);
    CHECK_THAT(booster.f(booster.working.mass, 2), WithinAbs(0, 1e-9));

    booster.set(33e3, 33e3 + (asked_N + 200 + spring_N) / (0.95 * kArea_m2), 0.01);
    CHECK(booster.f(booster.working.mass, 2) < -1e-4);
    CHECK(booster.f(booster.vacuum.mass, 2) > 1e-4);
}

TEST_CASE("beyond run-out the assist stays where the working chamber is at ambient", "[parts][booster]") {
    BoosterOnBench booster(300);
    const double ambient_Pa = booster.bench.ambient_Pa();
    booster.set(50e3, ambient_Pa, 0.02);
    const double most_N = 0.95 * kArea_m2 * (ambient_Pa - 50e3) - 100 - 2400 * 0.02;
    CHECK_THAT(booster.probed(probe::kAssist, 2), WithinRel(most_N, 1e-9));
    CHECK_THAT(booster.probed("assistShare", 2), WithinRel(most_N / (4 * (1200 - 20)), 1e-9));
    CHECK_THAT(booster.f(booster.working.mass, 2), WithinAbs(0, 1e-6));
    CHECK(booster.probed("vacuum working", 2) == 0);
}

TEST_CASE("without vacuum the foot alone makes line pressure", "[parts][booster]") {
    BoosterOnBench booster(100, {{"masterCylinderBore_m", 0.02381}, {"efficiency", 1}});
    booster.set(101325, 101325, 0.003);
    CHECK(booster.probed(probe::kAssist, 2) == 0);
    CHECK_THAT(booster.probed(probe::kLinePressure, 2), WithinRel(400 / 445.25e-6, 1e-4));
    CHECK(booster.probed(probe::kPedalForce, 2) == 100);
}

TEST_CASE("deceleration follows line pressure and mass until the road gives no more", "[parts][booster]") {
    BoosterOnBench light(100, {{"vehicleMass_kg", 1600}});
    BoosterOnBench heavy(100, {{"vehicleMass_kg", 3200}});
    light.set(101325, 101325);
    heavy.set(101325, 101325);
    CHECK_THAT(light.probed(probe::kDeceleration, 2),
               WithinRel(1.8e-3 * light.probed(probe::kLinePressure, 2) / 1600, 1e-12));
    CHECK_THAT(light.probed(probe::kDeceleration, 2),
               WithinRel(2 * heavy.probed(probe::kDeceleration, 2), 1e-12));
    BoosterOnBench strong(500);
    strong.set(20e3, 101325, 0.02);
    CHECK(strong.probed(probe::kDeceleration, 2) == 9);
}

TEST_CASE("a moving diaphragm does work on the gas of both chambers", "[parts][booster]") {
    BoosterOnBench booster(100);
    // Held, so that no valve passes anything: the assist is what is asked for.
    booster.set(33e3, 33e3 + (4.0 * 380 + 100 + 2400 * 0.01) / (0.95 * kArea_m2), 0.01);
    const double rate = booster.f(booster.travel, 2);
    CHECK(rate > 0.01);
    const double working_Pa = booster.bench.x(booster.working.pressure);
    CHECK_THAT(booster.f(booster.working.energy, 2), WithinRel(-working_Pa * kArea_m2 * rate, 1e-5));
    const double leak_W = booster.f(booster.vacuum.mass, 2) * air::kHeatAtPressure_JperkgK * 293.15;
    CHECK_THAT(booster.f(booster.vacuum.energy, 2) - leak_W, WithinRel(33e3 * kArea_m2 * rate, 1e-5));
}

TEST_CASE("a diaphragm that is said to travel further than its chamber is long stops before the end",
          "[parts][booster]") {
    BoosterOnBench booster(2000, {{"travelMax_m", 0.1}, {"diaphragmArea_m2", 0.2}});
    booster.set(33e3, 101325);
    booster.bench.x(booster.travel) = 0.9 * kVacuumVolume_m3 / 0.2 + 1e-4;
    CHECK(booster.f(booster.travel, 2) < 0);
}

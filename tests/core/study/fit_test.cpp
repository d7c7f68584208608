// Logs made from a drive with known values and normal noise of a fixed seed: the fit, started elsewhere, must
// come back to them within the errors that it states.

#include "core/simulate/drive.h"
#include "core/study/fit.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <cmath>
#include <random>

using namespace pumpwright;
using Catch::WithinRel;

namespace {

constexpr double kVacuumNoise_Pa = 200;
constexpr double kVoltageNoise_V = 0.02;
constexpr double kCurrentNoise_A = 0.05;

/// A pump straight on the battery that empties a booster.
Circuit pumpDown() {
    DrivePlan plan;
    plan.duration_s = 20;
    return CircuitBuilder()
        .part("supply", "G1")
        .part("ground", "X1")
        .part("ground", "X2")
        .part("pump", "M1")
        .part("booster", "A1")
        .wire("G1.31", "X1.31", 6e-6, 0.5)
        .wire("G1.30", "M1.+", 2.5e-6, 2)
        .wire("M1.-", "X2.31", 2.5e-6, 0.5)
        .hose("A1.vacuum", "M1.inlet")
        .plan(plan)
        .build();
}

/// A booster alone that bleeds down.
Circuit bleedDown() {
    DrivePlan plan;
    plan.duration_s = 300;
    plan.initialVacuum_Pa = 70e3;
    return CircuitBuilder().part("booster", "A1", {{"leakHole_m", 1e-4}}).plan(plan).build();
}

LogTrace logged(const Circuit& truth, const ChannelKey& key, double every_s, double noise,
                std::mt19937_64& random) {
    DriveOptions options;
    options.relativeTolerance = 1e-6;
    const DriveResult drive = simulateDrive(truth, options);
    const Channel* channel = drive.recording.find(key);
    REQUIRE(channel != nullptr);
    LogTrace trace{key, key.id + ":" + key.name, channel->probe.kind, {}, {}};
    std::normal_distribution<double> error(0, noise);
    for (double time_s = every_s; time_s < truth.plan.duration_s; time_s += every_s) {
        trace.times_s.push_back(time_s);
        trace.values.push_back(channel->at(time_s) + error(random));
    }
    return trace;
}

std::vector<Adjustable> named(const Circuit& circuit, std::initializer_list<const char*> names) {
    std::vector<Adjustable> all;
    for (const char* name : names) {
        all.push_back(findAdjustable(circuit, name).value());
    }
    return all;
}

/// Four standard errors: one value of 16,000 is further off.
void checkNear(const FittedValue& value, double truth) {
    CAPTURE(value.what.name, value.value, truth);
    REQUIRE(value.standardError.has_value());
    CAPTURE(*value.standardError);
    CHECK(std::abs(value.value - truth) < 4 * *value.standardError);
    CHECK(*value.standardError < 0.1 * std::abs(truth)); // and the error says something
}

} // namespace

TEST_CASE("pump speed, ultimate vacuum and battery come back from a noisy pump-down", "[study][fit]") {
    Circuit truth = pumpDown();
    const std::vector<Adjustable> what =
        named(truth, {"M1.freeSpeed_m3ps", "M1.ultimatePressureShare", "M1.resistance_ohm"});
    const std::vector<double> values{4.5e-4, 0.2, 1.15};
    for (std::size_t i = 0; i < what.size(); ++i) {
        setValue(truth, what[i], values[i]);
    }
    std::mt19937_64 random(20240311);
    const BenchLog log{{logged(truth, {Subject::Port, "A1", "vacuum"}, 0.1, kVacuumNoise_Pa, random),
                        logged(truth, {Subject::Part, "M1", "current"}, 0.2, kCurrentNoise_A, random)}};
    const FitResult result = runFit(pumpDown(), log, what);
    REQUIRE(result.status == FitResult::Status::Finished);
    for (std::size_t i = 0; i < what.size(); ++i) {
        checkNear(result.values[i], values[i]);
    }
    CHECK(result.tangles.empty());
    REQUIRE(result.traces.size() == 2);
    // What is left is the noise: 199 readings, whose root mean square lies within 15 % with 4 deviations.
    CHECK_THAT(result.traces[0].after, WithinRel(kVacuumNoise_Pa, 0.2));
    CHECK_THAT(result.traces[1].after, WithinRel(kCurrentNoise_A, 0.3));
    CHECK(result.traces[0].before > 5 * result.traces[0].after);
    CHECK_FALSE(result.traces[0].isMissed());
    CHECK_FALSE(result.traces[1].isMissed());
    Circuit taken = pumpDown();
    const Edit back = applyEdit(taken, fitEdit(taken, result));
    CHECK(valueOf(taken, what[1]) == result.values[1].value);
    applyEdit(taken, back);
    CHECK(taken == pumpDown());
}

TEST_CASE("a leak comes back from a noisy bleed-down, whatever the seed", "[study][fit]") {
    const Circuit truth = bleedDown();
    Circuit start = truth;
    const std::vector<Adjustable> what = named(truth, {"A1.leakHole_m"});
    setValue(start, what[0], 4e-5);
    for (const unsigned seed : {1U, 2U, 3U}) {
        std::mt19937_64 random(seed);
        const BenchLog log{{logged(truth, {Subject::Port, "A1", "vacuum"}, 5, kVacuumNoise_Pa, random)}};
        const FitResult result = runFit(start, log, what);
        REQUIRE(result.status == FitResult::Status::Finished);
        checkNear(result.values[0], 1e-4);
    }
}

// A leak into a volume: the pressure follows the ratio of the two alone.
TEST_CASE("leak and volume cannot be told apart by a bleed-down, and the fit says so", "[study][fit]") {
    const Circuit truth = bleedDown();
    std::mt19937_64 random(5);
    const BenchLog log{{logged(truth, {Subject::Port, "A1", "vacuum"}, 5, kVacuumNoise_Pa, random)}};
    const FitResult result = runFit(truth, log, named(truth, {"A1.leakHole_m", "A1.vacuumVolume_m3"}));
    REQUIRE(result.tangles.size() == 1);
    CHECK(result.tangles[0].correlation > kTangled);
}

TEST_CASE("a value that the log does not touch has no error", "[study][fit]") {
    const Circuit truth = bleedDown();
    std::mt19937_64 random(5);
    const BenchLog log{{logged(truth, {Subject::Port, "A1", "vacuum"}, 5, kVacuumNoise_Pa, random)}};
    const FitResult result = runFit(truth, log, named(truth, {"A1.leakHole_m", "A1.brakeGain_m2"}));
    CHECK(result.values[0].standardError.has_value());
    CHECK_FALSE(result.values[1].standardError.has_value());
}

TEST_CASE("fits are the same on one thread and on two", "[study][fit]") {
    const Circuit truth = bleedDown();
    std::mt19937_64 random(9);
    const BenchLog log{{logged(truth, {Subject::Port, "A1", "vacuum"}, 10, kVacuumNoise_Pa, random)}};
    std::vector<double> found;
    for (const unsigned threads : {1U, 2U}) {
        StudyOptions options;
        options.threads = threads;
        found.push_back(runFit(truth, log, named(truth, {"A1.leakHole_m"}), options).values[0].value);
    }
    CHECK(found[0] == found[1]);
}

TEST_CASE("a log that lies outside the drive is useless, and the fit says why", "[study][fit]") {
    const Circuit circuit = bleedDown();
    BenchLog log{
        {{{Subject::Port, "A1", "vacuum"}, "A1:vacuum", QuantityKind::GaugeVacuum, {400, 500}, {1, 2}}}};
    const std::vector<Adjustable> what = named(circuit, {"A1.leakHole_m"});
    const FitResult outside = runFit(circuit, log, what);
    CHECK(outside.status == FitResult::Status::Useless);
    CHECK(outside.message.find("time offset") != std::string::npos);
    log.traces[0].times_s = {4, 5};
    log.traces[0].key.name = "steam";
    CHECK(runFit(circuit, log, what).status == FitResult::Status::Useless);
}

TEST_CASE("a log that no values meet is said to be missed", "[study][fit]") {
    const Circuit circuit = bleedDown();
    LogTrace trace{{Subject::Port, "A1", "vacuum"}, "A1:vacuum", QuantityKind::GaugeVacuum, {}, {}};
    for (int i = 0; i < 50; ++i) { // up and down, as no leak does
        trace.times_s.push_back(5.0 * i);
        trace.values.push_back(i % 2 == 0 ? 20e3 : 60e3);
    }
    const FitResult result = runFit(circuit, BenchLog{{trace}}, named(circuit, {"A1.leakHole_m"}));
    REQUIRE(result.traces.size() == 1);
    CHECK(result.traces[0].isMissed());
}

TEST_CASE("a fit that is cancelled says so", "[study][fit]") {
    const Circuit truth = bleedDown();
    std::mt19937_64 random(9);
    const BenchLog log{{logged(truth, {Subject::Port, "A1", "vacuum"}, 10, kVacuumNoise_Pa, random)}};
    std::atomic<bool> cancel{false};
    StudyOptions options;
    options.cancel = &cancel;
    const auto cancelledAt = [&](std::size_t drives) {
        cancel = drives == 0;
        options.progress = [&](std::size_t done, std::size_t) { cancel = done >= drives; };
        return runFit(truth, log, named(truth, {"A1.leakHole_m"}), options);
    };
    const FitResult whole = runFit(truth, log, named(truth, {"A1.leakHole_m"}));
    REQUIRE(whole.status == FitResult::Status::Finished);
    for (const int drives : {0, 2, whole.drives - 1, whole.drives}) {
        const FitResult cut = cancelledAt(static_cast<std::size_t>(drives));
        CAPTURE(drives);
        CHECK(cut.status == FitResult::Status::Cancelled);
        CHECK(cut.drives == drives);
        CHECK(cut.traces.empty()); // no drive is made for them
    }
}

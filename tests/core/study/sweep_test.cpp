#include "core/study/sweep.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

/// A booster alone, evacuated, that leaks nothing worth speaking of: one press after 1 s. What the press
/// finds is known without a simulation.
Circuit booster() {
    DrivePlan plan;
    plan.duration_s = 4;
    plan.initialVacuum_Pa = 70e3;
    plan.presses = {{1, 1.5, 60, 0.25}};
    return CircuitBuilder()
        .part("booster", "A1", {{"leakHole_m", 1e-7}})
        .part("reservoir", "C1")
        .hose("A1.vacuum", "C1.a")
        .plan(plan)
        .build();
}

SweepAxis axisOf(const Circuit& circuit, const char* name, double from, double to, int points) {
    return {findAdjustable(circuit, name).value(), from, to, points};
}

SweepOptions optionsFor(const char* measure, std::optional<double> goal, unsigned threads = 2) {
    SweepOptions options;
    options.measure = findMeasure(measure);
    options.goal = goal;
    options.threads = threads;
    return options;
}

bool operator==(const SweepThreshold& one, const SweepThreshold& other) {
    return one.second == other.second && one.bad == other.bad && one.good == other.good;
}

} // namespace

TEST_CASE("a sweep drives every point once, the first axis fastest", "[study][sweep]") {
    const Circuit circuit = booster();
    std::vector<std::vector<double>> streamed;
    SweepOptions options = optionsFor("lowest-vacuum", std::nullopt);
    options.partial = [&](const SweepStudy& soFar) { streamed.push_back(soFar.points.back().at); };
    const SweepStudy study = runSweep(
        circuit, {axisOf(circuit, "C1.volume_m3", 1e-3, 3e-3, 3), axisOf(circuit, "A1.cutIn_N", 10, 20, 2)},
        options);
    const std::vector<std::vector<double>> expected{{1e-3, 10}, {2e-3, 10}, {3e-3, 10},
                                                    {1e-3, 20}, {2e-3, 20}, {3e-3, 20}};
    CHECK(streamed == expected);
    CHECK(study.isComplete());
    CHECK(study.thresholds.empty());
}

TEST_CASE("a point is the drive of the circuit with that value", "[study][sweep]") {
    Circuit circuit = booster();
    const SweepStudy study = runSweep(circuit, {axisOf(circuit, "C1.volume_m3", 1e-3, 5e-3, 3)},
                                      optionsFor("lowest-vacuum", std::nullopt));
    circuit.parts.at(PartId{"C1"}).values["volume_m3"] = 3e-3;
    const std::atomic<bool> go{false};
    CHECK(study.points[1].outcome == driveOutcome(circuit, go));
    CHECK(study.points[0].outcome.numbers.lowestVacuum_Pa < study.points[2].outcome.numbers.lowestVacuum_Pa);
}

TEST_CASE("a threshold is found to its resolution, good on one side and not on the other", "[study][sweep]") {
    Circuit circuit = booster();
    // Assist is lacking as soon as the boost ratio asks for more than the vacuum gives.
    SweepOptions options = optionsFor("least-assist", 0.95);
    options.resolution = 0.002;
    const SweepStudy study = runSweep(circuit, {axisOf(circuit, "A1.boostRatio", 2, 14, 7)}, options);
    REQUIRE(study.thresholds.size() == 1);
    const SweepThreshold& found = study.thresholds.front();
    CHECK(found.good < found.bad);
    CHECK(found.bad - found.good <= options.resolution);
    for (const auto& [ratio, lacking] : {std::pair(found.good, 0), std::pair(found.bad, 1)}) {
        setValue(circuit, study.axes.front().what, ratio);
        CHECK(driveNumbers(circuit, simulateDrive(circuit).recording).lackingPresses == lacking);
    }
}

TEST_CASE("a result that is good everywhere has no threshold", "[study][sweep]") {
    const Circuit circuit = booster();
    const SweepStudy study =
        runSweep(circuit, {axisOf(circuit, "A1.boostRatio", 2, 3, 3)}, optionsFor("lacking-presses", 0));
    CHECK(study.thresholds.empty());
}

TEST_CASE("points and thresholds are the same on one thread and on two", "[study][sweep]") {
    const Circuit circuit = booster();
    const std::vector<SweepAxis> axes{axisOf(circuit, "A1.boostRatio", 2, 14, 5),
                                      axisOf(circuit, "C1.volume_m3", 1e-3, 5e-3, 2)};
    const SweepStudy one = runSweep(circuit, axes, optionsFor("lacking-presses", 0, 1));
    const SweepStudy two = runSweep(circuit, axes, optionsFor("lacking-presses", 0, 2));
    REQUIRE(one.thresholds.size() == 2); // one for each volume
    CHECK(std::equal(one.thresholds.begin(), one.thresholds.end(), two.thresholds.begin(),
                     two.thresholds.end(),
                     [](const SweepThreshold& a, const SweepThreshold& b) { return a == b; }));
    for (std::size_t i = 0; i < one.points.size(); ++i) {
        CHECK(one.points[i].outcome == two.points[i].outcome);
    }
}

TEST_CASE("a cancelled sweep keeps the points that it had", "[study][sweep]") {
    const Circuit circuit = booster();
    std::atomic<bool> cancel{false};
    SweepOptions options = optionsFor("lacking-presses", 0, 1);
    options.cancel = &cancel;
    options.partial = [&](const SweepStudy& soFar) { cancel = soFar.points.back().at.front() > 5; };
    const SweepStudy study = runSweep(circuit, {axisOf(circuit, "A1.boostRatio", 2, 14, 100)}, options);
    CHECK(study.points.size() > 10);
    CHECK_FALSE(study.isComplete());
    CHECK(study.thresholds.empty());
}

TEST_CASE("measures say of themselves what is good", "[study][measure]") {
    const Measure& vacuum = *findMeasure("lowest-vacuum");
    CHECK(isGood(vacuum, 45e3, 45e3));
    CHECK_FALSE(isGood(vacuum, 44.9e3, 45e3));
    CHECK_FALSE(isGood(vacuum, std::nullopt, 0));
    CHECK(isGood(*findMeasure("pump-starts"), 3, 3));
    CHECK_FALSE(isGood(*findMeasure("pump-starts"), 4, 3));
    CHECK(findMeasure("reserve")->goal(Circuit{}) == Circuit{}.limits.reservePresses);
    CHECK(findMeasure("nothing") == nullptr);
    CHECK(measureText(*findMeasure("chatter"), 1) == "yes");
    CHECK(measureText(vacuum, 48.25e3) == "48.25 kPa");
}

#include "core/parts/part_kind.h"
#include "core/study/spread.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

/// The van with a differential that is near the edge of chatter, for a minute with one press.
Circuit van() {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55000}, {"differential_Pa", 700}});
    DrivePlan plan = standingPlan(40);
    plan.presses = {{30, 1.5, 100, 0.25}};
    return addPumpFeed(builder).wire("G1.30", "B1.1").wire("B1.2", "K1.86").plan(plan).build();
}

Circuit shortVan() {
    Circuit circuit = van();
    circuit.plan.duration_s = 3;
    circuit.plan.presses = {{1, 1, 60, 0.2}};
    return circuit;
}

std::vector<SpreadCar> carsOf(const Circuit& circuit, std::uint64_t from, std::size_t count,
                              unsigned threads = 2) {
    std::vector<SpreadCar> cars;
    SpreadOptions options;
    options.seed = 5;
    options.from = from;
    options.count = count;
    options.threads = threads;
    options.partial = [&](const SpreadCar& car, const SpreadTally&) { cars.push_back(car); };
    runSpread(circuit, options);
    return cars;
}

} // namespace

TEST_CASE("the same cars come of one thread and of two", "[study][spread]") {
    const Circuit circuit = van();
    const std::vector<SpreadCar> one = carsOf(circuit, 0, 6, 1);
    CHECK(one.size() == 6);
    CHECK(one == carsOf(circuit, 0, 6, 2));
    CHECK(one[0].numbers != one[1].numbers);
}

TEST_CASE("ranges of cars join to the whole", "[study][spread]") {
    const Circuit circuit = van();
    std::vector<SpreadCar> joined = carsOf(circuit, 0, 2);
    const std::vector<SpreadCar> rest = carsOf(circuit, 2, 3);
    joined.insert(joined.end(), rest.begin(), rest.end());
    CHECK(joined == carsOf(circuit, 0, 5));
}

TEST_CASE("the summary counts the cars", "[study][spread]") {
    SpreadOptions options;
    options.count = 6;
    std::size_t chattering = 0;
    std::vector<double> vacuums_Pa;
    options.partial = [&](const SpreadCar& car, const SpreadTally&) {
        chattering += car.numbers.chatters ? 1 : 0;
        vacuums_Pa.push_back(car.numbers.lowestVacuum_Pa.value());
    };
    const SpreadSummary summary = runSpread(van(), options);
    CHECK(summary.finished == 6);
    CHECK(summary.stopped == 0);
    CHECK(summary.chattering == chattering);
    CHECK(summary.chatters.low <= summary.chatters.share);
    CHECK(summary.chatters.share <= summary.chatters.high);
    REQUIRE(summary.lowestVacuum_Pa.has_value());
    std::ranges::sort(vacuums_Pa);
    CHECK_THAT(summary.lowestVacuum_Pa->p50,
               WithinAbs((vacuums_Pa[2] + vacuums_Pa[3]) / 2, 1)); // 1 Pa a step
}

TEST_CASE("cars without tolerances are all alike", "[study][spread]") {
    Circuit circuit = van();
    for (auto& [id, part] : circuit.parts) {
        for (const ParameterSpec& spec : kindOf(part).parameters()) {
            part.tolerances[std::string(spec.key)] = {};
        }
    }
    const DriveNumbers drawn = driveNumbers(circuit, simulateDrive(circuit).recording);
    for (const SpreadCar& car : carsOf(circuit, 0, 3)) {
        CHECK(car.numbers == drawn);
    }
}

TEST_CASE("the tolerance of what decides about chatter comes first", "[study][spread]") {
    // Of all values only the switch's differential is off, so nothing else can matter; a wider one closes
    // less.
    Circuit circuit = van();
    for (auto& [id, part] : circuit.parts) {
        for (const ParameterSpec& spec : kindOf(part).parameters()) {
            part.tolerances[std::string(spec.key)] = {};
        }
    }
    circuit.parts.at(PartId{"B1"}).tolerances["differential_Pa"] = {ToleranceSort::Uniform, 0.9};
    SpreadOptions options;
    options.count = 30;
    const SpreadSummary summary = runSpread(circuit, options);
    CHECK(summary.ranked == 30);
    REQUIRE(summary.influences.size() == 1);
    CHECK(summary.influences[0].what.name == "B1.differential_Pa");
    REQUIRE(summary.influences[0].onClosings.has_value());
    CHECK(*summary.influences[0].onClosings < -0.5);
}

TEST_CASE("a study that is sure enough ends early, at the same car on any number of threads",
          "[study][spread]") {
    SpreadOptions options;
    options.count = 1000;
    options.sureTo = 0.2; // of 100 cars any share is known to ± 0.11 (Clopper and Pearson)
    for (const unsigned threads : {1U, 2U}) {
        options.threads = threads;
        const SpreadSummary summary = runSpread(shortVan(), options);
        CHECK(summary.finished == 100);
        CHECK(summary.endedSure);
    }
}

TEST_CASE("cars that were driven elsewhere add up to the same summary", "[study][spread]") {
    const Circuit circuit = van();
    SpreadOptions options;
    options.count = 5;
    options.seed = 5;
    const SpreadSummary whole = runSpread(circuit, options);
    SpreadTally tally(circuit, 5);
    for (const auto& [from, count] : {std::pair(0U, 2U), std::pair(2U, 3U)}) {
        for (const SpreadCar& car : carsOf(circuit, from, count)) {
            tally.add(car);
        }
    }
    const SpreadSummary joined = tally.summary();
    CHECK(joined.lowestVacuum_Pa == whole.lowestVacuum_Pa);
    CHECK(joined.leastAssistShare == whole.leastAssistShare);
    REQUIRE(joined.influences.size() == whole.influences.size());
    for (std::size_t i = 0; i < whole.influences.size(); ++i) {
        CHECK(joined.influences[i].what.name == whole.influences[i].what.name);
        CHECK(joined.influences[i].onVacuum == whole.influences[i].onVacuum);
    }
}

#include "core/parts/part_kind.h"
#include "core/study/spread.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

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

std::vector<SpreadCar> carsOf(const Circuit& circuit, std::uint64_t from, std::size_t count,
                              unsigned threads = 2) {
    std::vector<SpreadCar> cars;
    SpreadOptions options;
    options.seed = 5;
    options.from = from;
    options.count = count;
    options.threads = threads;
    options.partial = [&](const SpreadCar& car) { cars.push_back(car); };
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
    options.partial = [&](const SpreadCar& car) {
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
    CHECK(summary.lowestVacuum_Pa->p50 == percentilesOf(vacuums_Pa)->p50);
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

TEST_CASE("percentiles of evenly spaced values are known", "[study][spread]") {
    std::vector<double> values;
    for (int i = 100; i >= 0; --i) {
        values.push_back(i);
    }
    const auto found = percentilesOf(values);
    REQUIRE(found.has_value());
    CHECK_THAT(found->p5, WithinAbs(5, 1e-9));
    CHECK_THAT(found->p50, WithinAbs(50, 1e-9));
    CHECK_THAT(found->p95, WithinAbs(95, 1e-9));
    CHECK(percentilesOf({3})->p95 == 3);
    CHECK_FALSE(percentilesOf({}).has_value());
}

// Studies cancelled at any moment, from another thread, over and over.

#include "core/study/spread.h"
#include "tests/support/catch.h"
#include "tests/support/test_seed.h"
#include "tests/support/van_circuit.h"

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <random>
#include <thread>

using namespace pumpwright;

namespace {

constexpr std::size_t kCars = 40;

Circuit shortDrive() {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}});
    Circuit circuit = builder.plan(standingPlan(2)).build();
    return circuit;
}

std::vector<SpreadCar> carsUntil(const Circuit& circuit, const std::atomic<bool>& cancel) {
    std::vector<SpreadCar> cars;
    SpreadOptions options;
    options.count = kCars;
    options.threads = 2;
    options.cancel = &cancel;
    options.partial = [&](const SpreadCar& car, const SpreadTally&) { cars.push_back(car); };
    runSpread(circuit, options);
    return cars;
}

/// A hundred in a usual run; PUMPWRIGHT_STORMS sets another number.
int storms() {
    constexpr int kUsual = 100;
    const char* other = std::getenv("PUMPWRIGHT_STORMS");
    return other ? std::max(1, std::atoi(other)) : kUsual;
}

} // namespace

TEST_CASE("a study cancelled at any moment has handed over the first cars of the whole one, and ends",
          "[study][cancel]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    const Circuit circuit = shortDrive();
    const std::atomic<bool> never = false;
    const std::vector<SpreadCar> whole = carsUntil(circuit, never);
    REQUIRE(whole.size() == kCars);
    double slowest_ms = 0;
    int cutShort = 0;
    for (int storm = storms(); storm > 0; --storm) {
        std::atomic<bool> cancel = false;
        std::chrono::steady_clock::time_point cancelled;
        const auto wait = std::chrono::microseconds(random() % 30'000);
        std::thread user([&] {
            std::this_thread::sleep_for(wait);
            cancelled = std::chrono::steady_clock::now();
            cancel = true;
        });
        const std::vector<SpreadCar> cars = carsUntil(circuit, cancel);
        const auto ended = std::chrono::steady_clock::now();
        user.join();
        REQUIRE(cars.size() <= kCars);
        CHECK(std::equal(cars.begin(), cars.end(), whole.begin()));
        cutShort += cars.size() < kCars ? 1 : 0;
        const std::chrono::duration<double, std::milli> took = ended - cancelled;
        slowest_ms = std::max(slowest_ms, took.count());
    }
    CHECK(cutShort > 0);
    WARN("slowest answer to a cancel: " << slowest_ms << " ms, " << cutShort << " studies cut short");
}

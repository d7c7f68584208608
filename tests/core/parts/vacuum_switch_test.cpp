#include "tests/core/parts/gas_bench.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using namespace pumpwright::tests;

namespace {

struct SwitchOnBench {
    GasBench bench;
    std::unique_ptr<Law> law;

    SwitchOnBench() {
        const Part part = newPart(*findPartKind("vacuum-switch"), "B1", {});
        law = kindOf(part).law(part, bench);
        bench.memory = law->memoryAtStart();
    }
    void setVacuum(double vacuum_Pa) {
        const double ambient_Pa = bench.surroundings().ambientPressure_Pa(0);
        bench.fill(bench.gas("vacuum"), 2e-6, ambient_Pa - vacuum_Pa, 293.15);
    }
    bool due() const { return law->eventValue(0, bench.point()) >= 0; }
    std::string happen() { return law->happen(0, bench.point(), bench.memory); }
};

} // namespace

TEST_CASE("a vacuum switch closes when vacuum falls to its set point and opens a differential above",
          "[parts][vacuum-switch]") {
    SwitchOnBench sensor;
    sensor.setVacuum(50.1e3);
    CHECK_FALSE(sensor.due());
    sensor.setVacuum(49.9e3);
    REQUIRE(sensor.due());
    CHECK(sensor.happen() == "vacuum switch closes");
    CHECK_FALSE(sensor.due());
    sensor.setVacuum(54.9e3);
    CHECK_FALSE(sensor.due());
    sensor.setVacuum(55.1e3);
    REQUIRE(sensor.due());
    CHECK(sensor.happen() == "vacuum switch opens");
    CHECK_FALSE(sensor.due());
}

TEST_CASE("a vacuum switch without vacuum closes as the first thing", "[parts][vacuum-switch]") {
    SwitchOnBench sensor;
    CHECK(sensor.due());
    const Part part = newPart(*findPartKind("vacuum-switch"), "B1", {});
    const Features features = kindOf(part).features(part);
    REQUIRE(features.contacts.size() == 1);
    CHECK(features.contacts[0].closedAtRest);
    CHECK(features.setPoints == std::vector<std::string>{"setPoint_Pa", "differential_Pa"});
}

TEST_CASE("a vacuum switch states its slopes, open and closed", "[parts][vacuum-switch]") {
    SwitchOnBench sensor;
    sensor.setVacuum(40e3);
    sensor.bench[sensor.bench.node("1")] = 12;
    sensor.bench[sensor.bench.node("2")] = 11.9;
    CHECK(slopesMatch(sensor.bench, *sensor.law));
    sensor.happen();
    CHECK(slopesMatch(sensor.bench, *sensor.law));
}

TEST_CASE("the gauge vacuum that a switch feels falls with altitude", "[parts][vacuum-switch]") {
    DrivePlan plan;
    plan.altitude = {{0, 0}, {600, 2500}};
    GasBench bench(plan);
    const Part part = newPart(*findPartKind("vacuum-switch"), "B1", {});
    const auto law = kindOf(part).law(part, bench);
    bench.memory = law->memoryAtStart();
    bench.fill(bench.gas("vacuum"), 2e-6, 40e3, 293.15);
    CHECK(law->eventValue(0, bench.point(0)) < 0);
    CHECK(law->eventValue(0, bench.point(600)) > 0);
}

#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;

namespace {

const PartKind& kind() {
    return *findPartKind("vacuum-switch");
}

struct SwitchOnBench {
    LawBench bench{kind(), newPart(kind(), "B1", {})};

    /// Sets the vacuum and says what happens then.
    std::vector<std::string> at(double vacuum_Pa) {
        bench.fill("vacuum", 2e-6, bench.ambient_Pa() - vacuum_Pa);
        return bench.settle();
    }
};

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("a vacuum switch closes when vacuum falls to its set point and opens a differential above",
          "[parts][vacuum-switch]") {
    SwitchOnBench sensor;
    CHECK(sensor.at(50.1e3).empty());
    CHECK(sensor.bench.probe(probe::kContact) == 0);
    CHECK(sensor.at(49.9e3) == Texts{"vacuum switch closes"});
    CHECK(sensor.bench.probe(probe::kContact) == 1);
    CHECK(sensor.at(54.9e3).empty());
    CHECK(sensor.at(55.1e3) == Texts{"vacuum switch opens"});
    CHECK(sensor.at(50.1e3).empty());
}

TEST_CASE("a vacuum switch without vacuum closes as the first thing", "[parts][vacuum-switch]") {
    SwitchOnBench sensor;
    CHECK(sensor.bench.settle() == Texts{"vacuum switch closes"});
    const Features features = kind().features(newPart(kind(), "B1", {}));
    REQUIRE(features.contacts.size() == 1);
    CHECK(features.contacts[0].closedAtRest);
    CHECK(features.setPoints == Texts{"setPoint_Pa", "differential_Pa"});
}

TEST_CASE("a closed vacuum switch carries current by its contact resistance", "[parts][vacuum-switch]") {
    SwitchOnBench sensor;
    sensor.bench.voltage("1") = 12;
    sensor.bench.voltage("2") = 11.98;
    sensor.at(60e3);
    CHECK(std::abs(sensor.bench.probe(probe::kContactCurrent)) < 1e-9);
    sensor.at(40e3);
    CHECK_THAT(sensor.bench.probe(probe::kContactCurrent), Catch::Matchers::WithinRel(0.02 / 0.01, 1e-9));
}

TEST_CASE("the gauge vacuum that a switch feels falls with altitude", "[parts][vacuum-switch]") {
    DrivePlan plan;
    plan.altitude = {{0, 0}, {600, 2500}};
    LawBench bench(kind(), newPart(kind(), "B1", {}), plan);
    bench.fill("vacuum", 2e-6, 40e3);
    CHECK(bench.settle().empty());
    bench.time_s = 600;
    CHECK(bench.settle() == Texts{"vacuum switch closes"});
}

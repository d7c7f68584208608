#include "core/study/tally.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using Catch::WithinAbs;

TEST_CASE("percentiles of evenly spaced values are known", "[study][tally]") {
    Tally tally(0, 200, 0.5);
    for (int i = 100; i >= 0; --i) {
        tally.add(i);
    }
    const auto found = tally.percentiles();
    REQUIRE(found.has_value());
    CHECK_THAT(found->p5, WithinAbs(5, 1e-9));
    CHECK_THAT(found->p50, WithinAbs(50, 1e-9));
    CHECK_THAT(found->p95, WithinAbs(95, 1e-9));
}

TEST_CASE("percentiles lie on straight lines between the values", "[study][tally]") {
    Tally tally(0, 100, 1);
    tally.add(90);
    tally.add(10);
    const auto found = tally.percentiles();
    REQUIRE(found.has_value());
    CHECK_THAT(found->p5, WithinAbs(14, 1e-9));
    CHECK_THAT(found->p50, WithinAbs(50, 1e-9));
}

TEST_CASE("no values have no percentiles, one value is all of them", "[study][tally]") {
    Tally tally(0, 10, 1);
    CHECK_FALSE(tally.percentiles().has_value());
    tally.add(3);
    CHECK(tally.percentiles()->p95 == 3);
}

TEST_CASE("values beyond the ends count as the ends", "[study][tally]") {
    Tally tally(0, 10, 1);
    tally.add(-5);
    CHECK(tally.percentiles()->p50 == 0);
    tally.add(50);
    tally.add(50);
    CHECK(tally.percentiles()->p50 == 10);
    CHECK(tally.count() == 3);
}

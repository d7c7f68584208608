#include "core/parts/saturation.h"
#include "tests/support/catch.h"

#include <cmath>

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

void checkSlope(SmoothValue (*function)(double, double), double x, double second) {
    const double step = 1e-6;
    const double difference =
        (function(x + step, second).value - function(x - step, second).value) / (2 * step);
    INFO("x = " << x);
    CHECK_THAT(function(x, second).slope, WithinAbs(difference, 1e-7));
}

} // namespace

TEST_CASE("smooth functions state their own derivatives", "[parts][saturation]") {
    for (double x = -6; x <= 6; x += 0.25) {
        checkSlope(smoothRamp, x, 0.7);
        checkSlope(smoothStep, x, 0.7);
        checkSlope(smoothLimit, x, 1.5);
    }
}

TEST_CASE("smooth functions approach what they stand for", "[parts][saturation]") {
    CHECK_THAT(smoothRamp(-10, 0.2).value, WithinAbs(0, 1e-12));
    CHECK_THAT(smoothRamp(10, 0.2).value, WithinAbs(10, 1e-12));
    CHECK_THAT(smoothStep(-10, 0.2).value, WithinAbs(0, 1e-12));
    CHECK_THAT(smoothStep(0, 0.2).value, WithinAbs(0.5, 1e-12));
    CHECK_THAT(smoothStep(10, 0.2).value, WithinAbs(1, 1e-12));
    CHECK_THAT(smoothLimit(1e9, 3).value, WithinAbs(3, 1e-12));
    CHECK_THAT(smoothLimit(1e-9, 3).value, WithinAbs(1e-9, 1e-20));
}

TEST_CASE("smooth functions are finite for every finite argument", "[parts][saturation]") {
    for (const double x : {-1e300, -1e6, 1e6, 1e300}) {
        CHECK(std::isfinite(smoothRamp(x, 0.1).value));
        CHECK(std::isfinite(smoothStep(x, 0.1).slope));
        CHECK(std::isfinite(smoothLimit(x, 0.1).slope));
    }
}

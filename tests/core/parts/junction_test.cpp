#include "core/parts/junction.h"
#include "tests/support/catch.h"

#include <cmath>
#include <limits>

using namespace pumpwright;
using Catch::WithinAbs;
using Catch::WithinRel;

TEST_CASE("Wright's omega solves its own equation over the whole range", "[parts][junction]") {
    for (double x = -40; x < 1e6; x += 0.37 + std::abs(x) / 7) {
        const double omega = wrightOmega(x);
        INFO("x = " << x);
        // Rounding of x itself is what limits the residual.
        CHECK_THAT(omega + std::log(omega), WithinAbs(x, 4e-15 * (1 + std::abs(x))));
    }
}

TEST_CASE("Wright's omega has its textbook values", "[parts][junction]") {
    CHECK_THAT(wrightOmega(1), WithinRel(1.0, 1e-15));
    // Omega constant, value from memory of mathematical tables.
    CHECK_THAT(wrightOmega(0), WithinRel(0.5671432904097838, 1e-15));
}

TEST_CASE("Wright's omega stays finite and positive far outside", "[parts][junction]") {
    for (const double x : {-1e300, -1e4, -700.0, -41.0, 1e4, 1e12, 1e300}) {
        CHECK(std::isfinite(wrightOmega(x)));
        CHECK(wrightOmega(x) > 0);
    }
}

TEST_CASE("a rectifier drops its forward voltage at its rated current", "[parts][junction]") {
    const JunctionElement diode(0, kReference, rectifierValues(0.9, 3, 0.02, 400));
    CHECK_THAT(diode.currentAt(0.9).value, WithinRel(3.0, 1e-9));
    CHECK_THAT(diode.currentAt(0).value, WithinAbs(0, 1e-15));
}

TEST_CASE("a rectifier whose leads would take all the drop keeps half for the junction",
          "[parts][junction]") {
    const JunctionElement diode(0, kReference, rectifierValues(0.9, 3, 5.0, 400));
    CHECK_THAT(diode.currentAt(0.9).value, WithinRel(3.0, 1e-9));
}

TEST_CASE("a rectifier blocks up to its reverse voltage and breaks down there", "[parts][junction]") {
    const JunctionElement diode(0, kReference, rectifierValues(0.9, 3, 0.02, 400));
    CHECK(diode.currentAt(-399).value > -1e-6);
    CHECK(diode.currentAt(-401).value < -1);
}

TEST_CASE("a Zener diode holds its voltage at the test current in both senses of the word",
          "[parts][junction]") {
    const JunctionElement zener(0, kReference, zenerValues(24, 0.05, 2));
    CHECK_THAT(zener.currentAt(-24).value, WithinRel(-0.05, 1e-6));
    CHECK(zener.currentAt(-23).value > -1e-5);
    CHECK(zener.currentAt(1.0).value > 0.1);
}

TEST_CASE("a diode's current rises with its voltage, and its slope is its derivative", "[parts][junction]") {
    const JunctionElement zener(0, kReference, zenerValues(24, 0.05, 2));
    double last = -std::numeric_limits<double>::infinity();
    for (double voltage = -60; voltage <= 10; voltage += 0.13) {
        const SmoothValue now = zener.currentAt(voltage);
        CHECK(now.value > last);
        last = now.value;
        const double step = 1e-6;
        const double difference =
            (zener.currentAt(voltage + step).value - zener.currentAt(voltage - step).value) / (2 * step);
        // The difference quotient itself is good for about 1e-6 of the larger of slope and i/step·1e-16.
        CHECK_THAT(now.slope, WithinRel(difference, 1e-4) || WithinAbs(difference, 1e-8));
    }
}

TEST_CASE("no voltage, however large, makes a diode's current other than finite", "[parts][junction]") {
    const JunctionElement zener(0, kReference, zenerValues(24, 0.05, 2));
    for (const double voltage : {-1e12, -1e6, -1e3, 1e3, 1e6, 1e12}) {
        CHECK(std::isfinite(zener.currentAt(voltage).value));
        CHECK(std::isfinite(zener.currentAt(voltage).slope));
    }
}

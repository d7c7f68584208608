#include "core/parts/sloped.h"
#include "tests/support/catch.h"

#include <functional>

using namespace pumpwright;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

using Pair = Sloped<2>;

/// True where both slopes of f at (a, b) are those of a central difference.
void requireSlopes(const std::function<Pair(const Pair&, const Pair&)>& f, double a, double b) {
    constexpr double kStep = 1e-6;
    const auto value = [&](double x, double y) { return f(Pair{x, {}}, Pair{y, {}}).value; };
    const Pair result = f(Pair::variable(a, 0), Pair::variable(b, 1));
    CHECK_THAT(result.value, WithinRel(value(a, b), 1e-15));
    CHECK_THAT(result.slopes[0], WithinAbs((value(a + kStep, b) - value(a - kStep, b)) / (2 * kStep), 1e-7));
    CHECK_THAT(result.slopes[1], WithinAbs((value(a, b + kStep) - value(a, b - kStep)) / (2 * kStep), 1e-7));
}

} // namespace

TEST_CASE("sloped numbers carry the slopes of sums, products and quotients", "[parts][sloped]") {
    requireSlopes([](const Pair& a, const Pair& b) { return a + b - 3.0 * a; }, 1.3, 0.4);
    requireSlopes([](const Pair& a, const Pair& b) { return a * b - (2.0 - b); }, 1.3, 0.4);
    requireSlopes([](const Pair& a, const Pair& b) { return a / b + 5.0 / a; }, 1.3, 0.7);
    requireSlopes([](const Pair& a, const Pair& b) { return -(a - 1.0) * (b + 2.0); }, 1.3, 0.7);
}

TEST_CASE("sloped numbers carry the slopes of roots, powers and saturation", "[parts][sloped]") {
    requireSlopes([](const Pair& a, const Pair& b) { return sqrt(a * b); }, 1.3, 0.7);
    requireSlopes([](const Pair& a, const Pair& b) { return pow(a + b, 0.2857); }, 1.3, 0.7);
    requireSlopes([](const Pair& a, const Pair& b) { return tanh(a - b); }, 1.3, 0.7);
    requireSlopes([](const Pair& a, const Pair& b) { return atLeast(a, 2) + atLeast(b, 0.1); }, 1.3, 0.7);
}

TEST_CASE("the smooth positive part is exact below zero and beyond its blend", "[parts][sloped]") {
    for (const double a : {-5.0, -1e-9, 0.0, 0.05, 0.1, 0.19, 0.2, 0.3, 7.0}) {
        const Pair part = smoothPositive(Pair::variable(a, 0), 0.2);
        CHECK(part.value >= 0);
        if (a <= 0 || a >= 0.2) {
            CHECK(part.value == std::max(0.0, a));
        }
    }
    for (const double a : {-0.1, 0.05, 0.1, 0.15, 0.3}) {
        requireSlopes([](const Pair& x, const Pair&) { return smoothPositive(x, 0.2); }, a, 0);
    }
}

TEST_CASE("the smooth step goes from 0 to 1 and is level at both ends", "[parts][sloped]") {
    for (const double a : {-2.0, 0.0, 0.25, 0.5, 1.0, 3.0}) {
        const Pair step = smoothStep(Pair::variable(a, 0));
        CHECK(step.value == (a <= 0 ? 0 : a >= 1 ? 1 : step.value));
        CHECK((step.slopes[0] == 0) == (a <= 0 || a >= 1));
    }
    CHECK(smoothStep(Pair::variable(0.5, 0)).value == 0.5);
    requireSlopes([](const Pair& x, const Pair&) { return smoothStep(x); }, 0.3, 0);
}

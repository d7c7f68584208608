#include "core/simulate/radau.h"
#include "tests/support/catch.h"
#include "tests/support/stiff_problems.h"

#include <cmath>
#include <vector>

// The two-state model, ARGESIM comparison C5: stiff, with a threshold and a differential like a vacuum
// switch's. The definition is from memory; the times are those of the exact solution, computed in 50 digits,
// which gives the final values that the benchmark publishes.

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::WithinAbs;

namespace {

struct Second {
    double c2;
    double c4;
    double lower;
};

struct Outcome {
    std::vector<double> switches_s;
    double y1 = 0;
};

StiffProblem twoState(double c2, double c4) {
    StiffProblem problem{"two states", 5, 1, {}, {}, {}, {}, {}};
    problem.start = {4.2, 0.3};
    problem.masses = {{0, 0, 1}, {1, 1, 1}};
    problem.right = [c2, c4](double, std::span<const double> y, std::span<double> f, double* slopes) {
        f[0] = 2.7e6 * (y[1] + c2 - y[0]);
        f[1] = 3.5651205 * (c4 - y[1]);
        if (slopes != nullptr) {
            slopes[0] = -2.7e6;
            slopes[1] = 2.7e6;
            slopes[2] = 0;
            slopes[3] = -3.5651205;
        }
    };
    return problem;
}

/// The instant within a step at which y1 has come to the mark, by halving.
double crossing_s(const StepPolynomial& step, double direction, double mark) {
    double before = step.begin_s;
    double after = step.end_s;
    std::vector<double> y(2);
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (before + after);
        step.evaluate(middle, y);
        (direction * (y[0] - mark) >= 0 ? after : before) = middle;
    }
    return after;
}

Outcome run(const Second& second, double tolerance) {
    Outcome outcome;
    double time_s = 0;
    std::vector<double> y{4.2, 0.3};
    while (time_s < 5) {
        const bool rising = outcome.switches_s.size() % 2 == 0;
        const StiffSystem system(rising ? twoState(0.4, 5.5) : twoState(second.c2, second.c4), tolerance);
        const double mark = rising ? 5.8 : second.lower;
        const double direction = rising ? 1 : -1;
        RadauStepper stepper(system, tolerance);
        stepper.start(time_s, y, 1e-7);
        while (stepper.time_s() < 5 && direction * (stepper.x()[0] - mark) < 0) {
            REQUIRE(stepper.step(5) == RadauStepper::Outcome::Accepted);
        }
        time_s = stepper.time_s();
        y.assign(stepper.x().begin(), stepper.x().end());
        if (direction * (y[0] - mark) >= 0) {
            time_s = crossing_s(stepper.polynomial(), direction, mark);
            stepper.polynomial().evaluate(time_s, y);
            outcome.switches_s.push_back(time_s);
        }
    }
    outcome.y1 = y[0];
    return outcome;
}

} // namespace

TEST_CASE("the two-state model switches five times, the last a third of a microsecond before its end",
          "[simulate][radau]") {
    const Outcome outcome = run({-0.3, 2.73, 2.5}, 1e-10);
    const std::vector<double> exact_s{1.108306167771131187, 2.129685355154713893, 3.054152906995719469,
                                      4.075532094379302175, 4.999999646220307751};
    REQUIRE(outcome.switches_s.size() == exact_s.size());
    for (std::size_t i = 0; i < exact_s.size(); ++i) {
        CHECK_THAT(outcome.switches_s[i], WithinAbs(exact_s[i], 1e-9));
    }
    CHECK_THAT(outcome.y1, WithinAbs(5.369312123556, 1e-4)); // still falling at 2.7e6 a second
}

TEST_CASE("with a narrow differential the two-state model switches 62 times", "[simulate][radau]") {
    const Outcome outcome = run({-1.25, 4.33, 4.1}, 1e-9);
    REQUIRE(outcome.switches_s.size() == 62);
    CHECK_THAT(outcome.switches_s[0], WithinAbs(1.108306167771131187, 3e-9));
    CHECK_THAT(outcome.switches_s[1], WithinAbs(1.121729967891427332, 3e-9));
    CHECK_THAT(outcome.switches_s[61], WithinAbs(4.936463907200045, 1e-7));
    CHECK_THAT(outcome.y1, WithinAbs(5.780402520562, 1e-6));
}

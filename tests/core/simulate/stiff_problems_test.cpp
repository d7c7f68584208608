#include "core/simulate/radau.h"
#include "tests/support/catch.h"
#include "tests/support/stiff_problems.h"
#include "tests/support/two_states.h"

using namespace pumpwright;
using namespace pumpwright::test;

namespace {

double digitsAt(const StiffProblem& problem, double relativeTolerance) {
    const StiffSystem system(problem, relativeTolerance);
    RadauStepper stepper(system, relativeTolerance);
    stepper.start(0, problem.start, 1e-9);
    while (stepper.time_s() < problem.end_s) {
        REQUIRE(stepper.step(problem.end_s) == RadauStepper::Outcome::Accepted);
    }
    return problem.digits(stepper.x());
}

/// When an unknown first passes a mark.
double passing_s(const StiffProblem& problem, std::size_t unknown, double mark, double relativeTolerance) {
    const StiffSystem system(problem, relativeTolerance);
    RadauStepper stepper(system, relativeTolerance);
    stepper.start(0, problem.start, 1e-9);
    const double direction = mark > problem.start[unknown] ? 1 : -1;
    while (direction * (stepper.x()[unknown] - mark) < 0) {
        REQUIRE(stepper.step(problem.end_s) == RadauStepper::Outcome::Accepted);
    }
    return passingWithin_s(stepper.polynomial(), unknown, direction, mark, problem.start.size());
}

} // namespace

// Test set for initial value problem solvers, transamp.F 1.3. An earlier study with a 3-stage Radau
// reached 5.3, 7.1 and 8.3 digits at these tolerances.
TEST_CASE("the transistor amplifier comes out to five, seven and eight digits", "[simulate][radau]") {
    CHECK(digitsAt(transistorAmplifier(), 1e-4) > 4);
    CHECK(digitsAt(transistorAmplifier(), 1e-6) > 6);
    CHECK(digitsAt(transistorAmplifier(), 1e-8) > 8);
}

// Test set for initial value problem solvers, ringmod.F 1.2: four diodes on stray capacitances of 2 pF.
TEST_CASE("the ring modulator comes out to three digits", "[simulate][radau]") {
    CHECK(digitsAt(ringModulator(), 1e-6) > 3);
}

// Test set for initial value problem solvers, HIRES.
TEST_CASE("HIRES comes out to five digits, and to eight with a tighter tolerance", "[simulate][radau]") {
    CHECK(digitsAt(hires(), 1e-6) > 5);
    CHECK(digitsAt(hires(), 1e-9) > 8);
}

TEST_CASE("a tighter tolerance never costs digits", "[simulate][radau]") {
    double last = 0;
    for (const double tolerance : {1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8}) {
        const double digits = digitsAt(hires(), tolerance);
        CHECK(digits > last + 0.3); // a tenth of the tolerance: at least half the error
        last = digits;
    }
}

// Test set for initial value problem solvers, vdpol: ε = 1e-6.
TEST_CASE("van der Pol's stiff oscillation comes out to six digits", "[simulate][radau]") {
    CHECK(digitsAt(vanDerPol(), 1e-8) > 6);
}

// Test set for initial value problem solvers, rober. Eleven decades of time, three unknowns that end ten
// decades apart.
TEST_CASE("Robertson's reaction comes out to five digits, and to seven with a tighter tolerance",
          "[simulate][radau]") {
    CHECK(digitsAt(robertson(), 1e-6) > 5);
    CHECK(digitsAt(robertson(), 1e-8) > 7);
}

// The times are those on which CVODE of SUNDIALS agrees with itself at 1e-12 and 1e-13; the sample outputs of
// that solver's own examples are 4e-4 and 3e-5 off.
TEST_CASE("Robertson's reaction passes its marks when it should", "[simulate][radau]") {
    CHECK_THAT(passing_s(robertson(), 2, 0.01, 1e-8), Catch::WithinRel(0.26401907819, 1e-6));
    CHECK_THAT(passing_s(robertson(), 0, 1e-4, 1e-8), Catch::WithinRel(2.0795496883e7, 1e-6));
}

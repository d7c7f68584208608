#include "core/simulate/radau.h"
#include "tests/support/catch.h"
#include "tests/support/stiff_problems.h"

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

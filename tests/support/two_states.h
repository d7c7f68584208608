#pragma once

#include "core/simulate/radau.h"
#include "tests/support/stiff_problems.h"

#include <vector>

namespace pumpwright::test {

/// The two-state model, ARGESIM comparison C5: stiff, with a threshold and a differential like a vacuum
/// switch's. The first unknown rises to 5.8 in the first state and falls to `lower` in the second, to t = 5.
///
/// The definition is from memory; the times are those of the exact solution, computed in 50 digits, which
/// gives the final values that the benchmark publishes.
struct TwoStates {
    double c2;
    double c4;
    double lower;
    double end; ///< exact value of the first unknown at the end

    /// Five switches, the last a third of a microsecond before the end.
    static TwoStates wide() { return {-0.3, 2.73, 2.5, 5.369312123556}; }
    static std::vector<double> wideSwitches_s() {
        return {1.108306167771131187, 2.129685355154713893, 3.054152906995719469, 4.075532094379302175,
                4.999999646220307751};
    }
    /// Sixty-two switches; first two and last.
    static TwoStates narrow() { return {-1.25, 4.33, 4.1, 5.780402520562}; }
    static constexpr double kNarrowFirst_s = 1.108306167771131187;
    static constexpr double kNarrowSecond_s = 1.121729967891427332;
    static constexpr double kNarrowLast_s = 4.936463907200045;

    /// One of the two states as a problem of its own.
    StiffProblem problem(bool rising) const;

    struct Run {
        std::vector<double> switches_s;
        double y1 = 0;
        long steps = 0;
        bool finished = false;
    };
    /// By our stepper, anew after each switch. With `repeated`, the step with a switch in it is made anew to
    /// end on it, as drives do.
    Run run(double tolerance, bool repeated) const;
};

/// The instant within a step at which an unknown has come to the mark, by halving.
double passingWithin_s(const StepPolynomial& step, std::size_t unknown, double direction, double mark,
                       std::size_t size);

} // namespace pumpwright::test

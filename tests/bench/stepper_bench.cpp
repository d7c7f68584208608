// Prints digits, steps and milliseconds of the stepper on published stiff problems, beside IDA of SUNDIALS on
// the same equations with exact slopes, as the table in docs/stepper.md. Times depend on the machine; compare
// within one run.

#include "core/simulate/radau.h"
#include "tests/support/ida_peer.h"

#include <fmt/core.h>

#include <algorithm>
#include <chrono>

using namespace pumpwright;
using namespace pumpwright::test;

namespace {

struct Run {
    double digits = 0;
    long steps = 0;
    double time_ms = 1e300;
};

Run radauRun(const StiffProblem& problem, double tolerance) {
    const StiffSystem system(problem, tolerance);
    RadauStepper stepper(system, tolerance);
    stepper.start(0, problem.start, 1e-9);
    while (stepper.time_s() < problem.end_s &&
           stepper.step(problem.end_s) == RadauStepper::Outcome::Accepted) {
    }
    return {problem.digits(stepper.x()), stepper.counts().steps, 0};
}

Run idaRun(const StiffProblem& problem, double tolerance) {
    IdaPeer peer(problem, tolerance);
    while (peer.step() == IdaPeer::Outcome::Step) {
    }
    return {problem.digits(peer.y()), peer.steps(), 0};
}

/// The best of a few runs.
template <class Solve>
void printRow(const StiffProblem& problem, const char* solver, double tolerance, Solve solve) {
    Run best;
    for (int i = 0; i < 3; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        Run run = solve(problem, tolerance);
        const double time_ms =
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
        run.time_ms = std::min(best.time_ms, time_ms);
        best = run;
    }
    fmt::print("| {} | {} | {:.0e} | {:.1f} | {} | {:.2f} |\n", problem.name, solver, tolerance, best.digits,
               best.steps, best.time_ms);
}

} // namespace

int main() {
    fmt::print("| Problem | Solver | Tolerance | Digits | Steps | Time, ms |\n| --- | --- | --- | --- | --- "
               "| --- |\n");
    for (const StiffProblem& problem : {transistorAmplifier(), hires(), ringModulator()}) {
        for (const double tolerance : {1e-4, 1e-6, 1e-8}) {
            printRow(problem, "ours", tolerance, radauRun);
            printRow(problem, "IDA", tolerance, idaRun);
        }
    }
    return 0;
}

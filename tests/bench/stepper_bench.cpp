// Prints digits, steps and milliseconds of the stepper on published stiff problems, beside IDA of SUNDIALS on
// the same equations with exact slopes, as the table in docs/stepper.md. Times depend on the machine; compare
// within one run.

#include "core/simulate/radau.h"
#include "tests/support/ida_peer.h"
#include "tests/support/two_states.h"

#include <fmt/core.h>

#include <algorithm>
#include <chrono>
#include <cmath>

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

/// Digits of the worst switch of the two-state model, of five; none where one is missed.
double switchDigits(const std::vector<double>& switches_s) {
    const std::vector<double> exact_s = TwoStates::wideSwitches_s();
    if (switches_s.size() != exact_s.size()) {
        return 0;
    }
    double worst = 1e-16;
    for (std::size_t i = 0; i < exact_s.size(); ++i) {
        worst = std::max(worst, std::abs(switches_s[i] - exact_s[i]));
    }
    return -std::log10(worst);
}

Run radauSwitches(const StiffProblem&, double tolerance) {
    const TwoStates::Run run = TwoStates::wide().run(tolerance, true);
    return {switchDigits(run.switches_s), run.steps, 0};
}

Run idaSwitches(const StiffProblem&, double tolerance) {
    const TwoStates model = TwoStates::wide();
    std::vector<double> switches_s;
    std::vector<double> y{4.2, 0.3};
    double begin_s = 0;
    long steps = 0;
    for (;;) {
        const bool rising = switches_s.size() % 2 == 0;
        const double mark = rising ? 5.8 : model.lower;
        StiffProblem problem = model.problem(rising);
        problem.start = y;
        problem.startRates.resize(2);
        problem.right(0, y, problem.startRates, nullptr);
        problem.end_s -= begin_s;
        IdaPeer peer(problem, tolerance, [mark](double, auto at) { return at[0] - mark; });
        auto outcome = peer.step();
        while (outcome == IdaPeer::Outcome::Step) {
            outcome = peer.step();
        }
        steps += peer.steps();
        if (outcome != IdaPeer::Outcome::Root) {
            return {switchDigits(switches_s), steps, 0};
        }
        begin_s += peer.time_s();
        y.assign(peer.y().begin(), peer.y().end());
        switches_s.push_back(begin_s);
    }
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
    for (const StiffProblem& problem :
         {transistorAmplifier(), hires(), robertson(), vanDerPol(), ringModulator()}) {
        for (const double tolerance : {1e-4, 1e-6, 1e-8}) {
            printRow(problem, "ours", tolerance, radauRun);
            printRow(problem, "IDA", tolerance, idaRun);
        }
    }
    StiffProblem switching;
    switching.name = "two states, five switches";
    for (const double tolerance : {1e-6, 1e-8, 1e-10}) {
        printRow(switching, "ours", tolerance, radauSwitches);
        printRow(switching, "IDA", tolerance, idaSwitches);
    }
    return 0;
}

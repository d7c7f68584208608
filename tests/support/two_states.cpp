#include "tests/support/two_states.h"

namespace pumpwright::test {
namespace {

constexpr double kUpper = 5.8;
constexpr double kEnd_s = 5;

} // namespace

double passingWithin_s(const StepPolynomial& step, std::size_t unknown, double direction, double mark,
                       std::size_t size) {
    double before = step.begin_s;
    double after = step.end_s;
    std::vector<double> y(size);
    for (int i = 0; i < 60; ++i) {
        const double middle = 0.5 * (before + after);
        step.evaluate(middle, y);
        (direction * (y[unknown] - mark) >= 0 ? after : before) = middle;
    }
    return after;
}

StiffProblem TwoStates::problem(bool rising) const {
    StiffProblem problem{"two states", kEnd_s, 1, {4.2, 0.3}, {}, {}, {{0, 0, 1}, {1, 1, 1}}, {}};
    const double sum = rising ? 0.4 : c2;
    const double goal = rising ? 5.5 : c4;
    problem.right = [sum, goal](double, std::span<const double> y, std::span<double> f, double* slopes) {
        f[0] = 2.7e6 * (y[1] + sum - y[0]);
        f[1] = 3.5651205 * (goal - y[1]);
        if (slopes != nullptr) {
            slopes[0] = -2.7e6;
            slopes[1] = 2.7e6;
            slopes[2] = 0;
            slopes[3] = -3.5651205;
        }
    };
    return problem;
}

TwoStates::Run TwoStates::run(double tolerance, bool repeated) const {
    Run run;
    double time_s = 0;
    std::vector<double> y{4.2, 0.3};
    while (time_s < kEnd_s) {
        const bool rising = run.switches_s.size() % 2 == 0;
        const StiffSystem system(problem(rising), tolerance);
        const double mark = rising ? kUpper : lower;
        const double direction = rising ? 1 : -1;
        RadauStepper stepper(system, tolerance);
        stepper.start(time_s, y, 1e-7);
        while (stepper.time_s() < kEnd_s && direction * (stepper.x()[0] - mark) < 0) {
            if (stepper.step(kEnd_s) != RadauStepper::Outcome::Accepted) {
                return run;
            }
        }
        run.steps += stepper.counts().steps;
        time_s = stepper.time_s();
        y.assign(stepper.x().begin(), stepper.x().end());
        if (direction * (y[0] - mark) < 0) {
            continue;
        }
        time_s = passingWithin_s(stepper.polynomial(), 0, direction, mark, 2);
        for (int round = 0; repeated && round < 3; ++round) {
            const double begin_s = stepper.polynomial().begin_s;
            stepper.polynomial().evaluate(begin_s, y);
            stepper.start(begin_s, y, time_s - begin_s);
            if (stepper.step(time_s) != RadauStepper::Outcome::Accepted || stepper.time_s() < time_s) {
                return run;
            }
            ++run.steps;
            // Newton's method on the end of the step: the slope there is that of the equations.
            const double slope = 2.7e6 * (stepper.x()[1] + (rising ? 0.4 : c2) - stepper.x()[0]);
            time_s += (mark - stepper.x()[0]) / slope;
        }
        stepper.polynomial().evaluate(time_s, y);
        run.switches_s.push_back(time_s);
    }
    run.y1 = y[0];
    run.finished = true;
    return run;
}

} // namespace pumpwright::test

#include "core/simulate/radau.h"
#include "tests/support/catch.h"

#include <cmath>
#include <functional>
#include <limits>

using namespace pumpwright;

namespace {

/// A system from two functions, with M = identity or the diagonal given.
class FunctionSystem final : public DifferentialSystem {
public:
    using Slopes = std::function<void(std::span<const double>, SparseMatrix&)>;
    using Right = std::function<void(double, std::span<const double>, std::span<double>)>;

    FunctionSystem(std::vector<double> massDiagonal, Right right, Slopes slopes, double tolerance)
        : m_masses(std::move(massDiagonal)), m_right(std::move(right)), m_slopes(std::move(slopes)),
          m_tolerances(m_masses.size(), tolerance) {}
    int size() const override { return static_cast<int>(m_masses.size()); }
    void rightSide(double t, std::span<const double> x, std::span<double> f) const override {
        m_right(t, x, f);
    }
    void rightSideAndSlopes(double t, std::span<const double> x, std::span<double> f,
                            SparseMatrix& slopes) const override {
        m_right(t, x, f);
        m_slopes(x, slopes);
    }
    void masses(SparseMatrix& masses) const override {
        for (int i = 0; i < size(); ++i) {
            if (m_masses[static_cast<std::size_t>(i)] != 0) {
                masses.add(i, i, m_masses[static_cast<std::size_t>(i)]);
            }
        }
    }
    std::span<const double> tolerances() const override { return m_tolerances; }

private:
    std::vector<double> m_masses;
    Right m_right;
    Slopes m_slopes;
    std::vector<double> m_tolerances;
};

} // namespace

TEST_CASE("an algebraic unknown follows its equation while a state decays", "[simulate][radau]") {
    // x' = −z, 0 = z − 3·x: x = e^(−3t)
    const FunctionSystem system(
        {1, 0},
        [](double, std::span<const double> y, std::span<double> f) {
            f[0] = -y[1];
            f[1] = 3 * y[0] - y[1];
        },
        [](std::span<const double>, SparseMatrix& s) {
            s.add(0, 1, -1);
            s.add(1, 0, 3);
            s.add(1, 1, -1);
        },
        1e-10);
    RadauStepper stepper(system, 1e-8);
    std::vector<double> x{1, 0};
    REQUIRE(stepper.settle(0, x));
    CHECK(x[0] == Approx(1).epsilon(1e-8));
    CHECK(x[1] == Approx(3).epsilon(1e-8));
    stepper.start(0, x, 1e-3);
    while (stepper.time_s() < 1) {
        REQUIRE(stepper.step(1) == RadauStepper::Outcome::Accepted);
        CHECK(stepper.x()[1] == Approx(3 * stepper.x()[0]).epsilon(1e-7));
    }
    CHECK(stepper.time_s() == 1.0);
    CHECK(stepper.x()[0] == Approx(std::exp(-3.0)).epsilon(1e-7));
}

TEST_CASE("the polynomial of a step meets its ends and the solution between them", "[simulate][radau]") {
    const FunctionSystem system(
        {1}, [](double, std::span<const double> y, std::span<double> f) { f[0] = -y[0]; },
        [](std::span<const double>, SparseMatrix& s) { s.add(0, 0, -1); }, 1e-9);
    RadauStepper stepper(system, 1e-7);
    stepper.start(0, std::vector<double>{1}, 0.01);
    for (int i = 0; i < 20; ++i) {
        REQUIRE(stepper.step(10) == RadauStepper::Outcome::Accepted);
        const StepPolynomial& step = stepper.polynomial();
        for (const double share : {0.0, 0.3, 0.7, 1.0}) {
            const double t = step.begin_s + share * (step.end_s - step.begin_s);
            double y = 0;
            step.evaluate(t, std::span(&y, 1));
            CHECK(y == Approx(std::exp(-t)).epsilon(1e-4));
        }
    }
}

TEST_CASE("a system without a solution is reported, not stepped", "[simulate][radau]") {
    const FunctionSystem system(
        {0}, [](double, std::span<const double> y, std::span<double> f) { f[0] = 1 + y[0] * y[0]; },
        [](std::span<const double> y, SparseMatrix& s) { s.add(0, 0, 2 * y[0]); }, 1e-6);
    RadauStepper stepper(system, 1e-4);
    std::vector<double> x{1};
    CHECK_FALSE(stepper.settle(0, x));
    CHECK(stepper.culprit() == 0);
}

TEST_CASE("right sides that are not numbers end the step, not the program", "[simulate][radau]") {
    const FunctionSystem system(
        {1},
        [](double t, std::span<const double> y, std::span<double> f) {
            f[0] = t > 0.5 ? std::numeric_limits<double>::quiet_NaN() : -y[0];
        },
        [](std::span<const double>, SparseMatrix& s) { s.add(0, 0, -1); }, 1e-6);
    RadauStepper stepper(system, 1e-4);
    stepper.start(0, std::vector<double>{1}, 0.01);
    auto outcome = RadauStepper::Outcome::Accepted;
    while (outcome == RadauStepper::Outcome::Accepted && stepper.time_s() < 1) {
        outcome = stepper.step(1);
    }
    CHECK(outcome == RadauStepper::Outcome::TooFine);
    CHECK(stepper.time_s() == Approx(0.5).margin(1e-6));
}

#include "tests/support/stiff_problems.h"

#include "core/parts/sloped.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pumpwright::test {
namespace {

template <std::size_t N>
Sloped<N> exponential(const Sloped<N>& a) {
    const double value = std::exp(a.value);
    return chained(a, value, value);
}

/// A right side that is written once, for numbers that carry their slopes.
template <std::size_t N, class Formula>
StiffProblem::Right rightOf(Formula formula) {
    return [formula](double t, std::span<const double> y, std::span<double> f, double* slopes) {
        std::array<Sloped<N>, N> variables;
        for (std::size_t i = 0; i < N; ++i) {
            variables[i] = Sloped<N>::variable(y[i], i);
        }
        const std::array<Sloped<N>, N> result = formula(t, variables);
        for (std::size_t i = 0; i < N; ++i) {
            f[i] = result[i].value;
            if (slopes != nullptr) {
                std::copy(result[i].slopes.begin(), result[i].slopes.end(), slopes + i * N);
            }
        }
    };
}

using Eight = std::array<Sloped<8>, 8>;
using Fifteen = std::array<Sloped<15>, 15>;

Eight transistorAmplifierRight(double t, const Eight& y) {
    constexpr double kUb = 6;
    constexpr double kAlpha = 0.99;
    constexpr double kR = 9000;
    const auto g = [](const Sloped<8>& x) { return 1e-6 * (exponential((1 / 0.026) * x) - 1); };
    const double input = 0.1 * std::sin(200 * std::numbers::pi * t);
    const Sloped<8> first = g(y[1] - y[2]);
    const Sloped<8> second = g(y[4] - y[5]);
    return {(1.0 / 1000) * (y[0] - input),
            (1 / kR) * y[1] + (1 / kR) * (y[1] - kUb) + (1 - kAlpha) * first,
            (1 / kR) * y[2] - first,
            (1 / kR) * (y[3] - kUb) + kAlpha * first,
            (1 / kR) * y[4] + (1 / kR) * (y[4] - kUb) + (1 - kAlpha) * second,
            (1 / kR) * y[5] - second,
            (1 / kR) * (y[6] - kUb) + kAlpha * second,
            (1 / kR) * y[7]};
}

Fifteen ringModulatorRight(double t, const Fifteen& y) {
    constexpr double kC = 1.6e-8;
    constexpr double kCs = 2e-12;
    constexpr double kCp = 1e-8;
    constexpr double kLh = 4.45;
    constexpr double kLs1 = 2e-3;
    constexpr double kLs = 5e-4;
    constexpr double kR = 25e3;
    const double u1 = 0.5 * std::sin(2000 * std::numbers::pi * t);
    const double u2 = 2 * std::sin(20000 * std::numbers::pi * t);
    const auto q = [](const Sloped<15>& d) { return 40.67286402e-9 * (exponential(17.7493332 * d) - 1); };
    const auto q1 = q(y[2] - y[4] - y[6] - u2);
    const auto q2 = q(-y[3] + y[5] - y[6] - u2);
    const auto q3 = q(y[3] + y[4] + y[6] + u2);
    const auto q4 = q(-y[2] - y[5] + y[6] + u2);
    return {(1 / kC) * (y[7] - 0.5 * y[9] + 0.5 * y[10] + y[13] - (1 / kR) * y[0]),
            (1 / kC) * (y[8] - 0.5 * y[11] + 0.5 * y[12] + y[14] - (1 / kR) * y[1]),
            (1 / kCs) * (y[9] - q1 + q4),
            (1 / kCs) * (-y[10] + q2 - q3),
            (1 / kCs) * (y[11] + q1 - q3),
            (1 / kCs) * (-y[12] - q2 + q4),
            (1 / kCp) * (-(1 / 50.0) * y[6] + q1 + q2 - q3 - q4),
            (-1 / kLh) * y[0],
            (-1 / kLh) * y[1],
            (1 / kLs) * (0.5 * y[0] - y[2] - 17.3 * y[9]),
            (1 / kLs) * (-0.5 * y[0] + y[3] - 17.3 * y[10]),
            (1 / kLs) * (0.5 * y[1] - y[4] - 17.3 * y[11]),
            (1 / kLs) * (-0.5 * y[1] + y[5] - 17.3 * y[12]),
            (1 / kLs1) * (-y[0] + u1 - (50 + 36.3) * y[13]),
            (1 / kLs1) * (-y[1] - (600 + 36.3) * y[14])};
}

Eight hiresRight(double, const Eight& y) {
    const Sloped<8> meeting = 280 * (y[5] * y[7]);
    const Sloped<8> seventh = meeting - 1.81 * y[6];
    return {-1.71 * y[0] + 0.43 * y[1] + 8.32 * y[2] + 0.0007,
            1.71 * y[0] - 8.75 * y[1],
            -10.03 * y[2] + 0.43 * y[3] + 0.035 * y[4],
            8.32 * y[1] + 1.71 * y[2] - 1.12 * y[3],
            -1.745 * y[4] + 0.43 * y[5] + 0.43 * y[6],
            0.69 * y[3] + 1.71 * y[4] - 0.43 * y[5] + 0.69 * y[6] - meeting,
            seventh,
            -seventh};
}

using Three = std::array<Sloped<3>, 3>;
using Two = std::array<Sloped<2>, 2>;

Three robertsonRight(double, const Three& y) {
    const Sloped<3> back = 1e4 * (y[1] * y[2]);
    const Sloped<3> onward = 3e7 * (y[1] * y[1]);
    return {-0.04 * y[0] + back, 0.04 * y[0] - back - onward, onward};
}

Two vanDerPolRight(double, const Two& y) {
    return {y[1], 1e6 * ((1 - y[0] * y[0]) * y[1] - y[0])};
}

std::vector<StiffProblem::Mass> unit(int size) {
    std::vector<StiffProblem::Mass> masses;
    for (int i = 0; i < size; ++i) {
        masses.push_back({i, i, 1});
    }
    return masses;
}

/// y' of a problem whose M is the unit matrix.
std::vector<double> ratesAtStart(const StiffProblem& problem) {
    std::vector<double> rates(problem.start.size());
    problem.right(0, problem.start, rates, nullptr);
    return rates;
}

} // namespace

double StiffProblem::digits(std::span<const double> y) const {
    double worst = 1e-16;
    for (std::size_t i = 0; i < y.size(); ++i) {
        worst = std::max(worst, std::abs(y[i] / reference[i] - 1));
    }
    return -std::log10(worst);
}

StiffProblem transistorAmplifier() {
    StiffProblem problem{"transistor amplifier", 0.2, 1, {0, 3, 3, 6, 3, 3, 6, 0}, {}, {}, {}, {}};
    // Consistent rates: values from memory of the test set; the solver starts from them and corrects.
    problem.startRates = {51.338775,  51.338775,  -166.666667, -24.975767,
                          -24.975767, -83.333333, -10.005645,  -10.005645};
    problem.reference = {-0.5562145012262709e-2, 3.006522471903042, 2.849958788608128, 2.926422536206241,
                         2.704617865010554,      2.761837778393145, 4.770927631616772, 1.236995868091548};
    const auto capacitor = [&](int a, int b, double farad) {
        problem.masses.insert(problem.masses.end(),
                              {{a, a, -farad}, {a, b, farad}, {b, a, farad}, {b, b, -farad}});
    };
    capacitor(0, 1, 1e-6);
    problem.masses.push_back({2, 2, -2e-6});
    capacitor(3, 4, 3e-6);
    problem.masses.push_back({5, 5, -4e-6});
    capacitor(6, 7, 5e-6);
    problem.right = rightOf<8>(transistorAmplifierRight);
    return problem;
}

StiffProblem ringModulator() {
    StiffProblem problem{"ring modulator", 1e-3, 1, std::vector<double>(15, 0.0), {}, {}, unit(15), {}};
    problem.reference = {-0.2339057358486745e-1, -0.7367485485540825e-2, 0.2582956709291169,
                         -0.4064465721283450,    -0.4039455665149794,    0.2607966765422943,
                         0.1106761861269975,     0.2939904342435596e-6,  -0.2840029933642329e-7,
                         0.7267198267264553e-3,  0.7929487196960840e-3,  -0.7255283495698965e-3,
                         -0.7941401968526521e-3, 0.7088495416976114e-4,  0.2390059075236570e-4};
    problem.right = rightOf<15>(ringModulatorRight);
    problem.startRates = ratesAtStart(problem);
    return problem;
}

StiffProblem hires() {
    StiffProblem problem{"HIRES", 321.8122, 1e-4, {1, 0, 0, 0, 0, 0, 0, 0.0057}, {}, {}, unit(8), {}};
    problem.reference = {0.7371312573325668e-3, 0.1442485726316185e-3, 0.5888729740967575e-4,
                         0.1175651343283149e-2, 0.2386356198831331e-2, 0.6238968252742796e-2,
                         0.2849998395185769e-2, 0.2850001604814231e-2};
    problem.right = rightOf<8>(hiresRight);
    problem.startRates = ratesAtStart(problem);
    return problem;
}

StiffProblem robertson() {
    // Values of the test set; its end time is from memory. The second unknown ends at 8e-14.
    StiffProblem problem{"Robertson", 1e11, 1e-14, {1, 0, 0}, {}, {}, unit(3), {}};
    problem.reference = {0.2083340149701255e-7, 0.8333360770334713e-13, 0.9999999791665050};
    problem.right = rightOf<3>(robertsonRight);
    problem.startRates = ratesAtStart(problem);
    return problem;
}

StiffProblem vanDerPol() {
    StiffProblem problem{"van der Pol", 2, 1, {2, 0}, {}, {}, unit(2), {}};
    problem.reference = {1.706167732170483, -0.8928097010247975};
    problem.right = rightOf<2>(vanDerPolRight);
    problem.startRates = ratesAtStart(problem);
    return problem;
}

StiffSystem::StiffSystem(StiffProblem problem, double relativeTolerance)
    : m_problem(std::move(problem)),
      m_tolerances(m_problem.start.size(), relativeTolerance * m_problem.absoluteShare) {}

void StiffSystem::rightSide(double t, std::span<const double> y, std::span<double> f) const {
    m_problem.right(t, y, f, nullptr);
}

void StiffSystem::rightSideAndSlopes(double t, std::span<const double> y, std::span<double> f,
                                     SparseMatrix& slopes) const {
    const std::size_t count = y.size();
    std::vector<double> dense(count * count);
    m_problem.right(t, y, f, dense.data());
    for (std::size_t i = 0; i < count * count; ++i) {
        if (dense[i] != 0 || i % (count + 1) == 0) {
            slopes.add(static_cast<int>(i / count), static_cast<int>(i % count), dense[i]);
        }
    }
}

void StiffSystem::masses(SparseMatrix& masses) const {
    for (const StiffProblem::Mass& mass : m_problem.masses) {
        masses.add(mass.row, mass.column, mass.value);
    }
}

} // namespace pumpwright::test

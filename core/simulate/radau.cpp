#include "core/simulate/radau.h"

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

const double kRoot6 = std::sqrt(6.0);
const double kNode1 = (4 - kRoot6) / 10;
const double kNode2 = (4 + kRoot6) / 10;
const std::array<double, 3> kNodes{kNode1, kNode2, 1.0};

// Eigenvalues of the inverse of the method's matrix, and the matrix that brings it to block-diagonal form
// [HairerWanner-II, IV.8]. radau_test.cpp holds them against the method's matrix itself.
const double kCube9 = std::cbrt(9.0);
const double kRealEigenvalue = 30 / (6 + kCube9 * (kCube9 - 1));
const double kAlphaRaw = (12 - kCube9 * (kCube9 - 1)) / 60;
const double kBetaRaw = kCube9 * (kCube9 + 1) * std::sqrt(3.0) / 60;
const double kAlpha = kAlphaRaw / (kAlphaRaw * kAlphaRaw + kBetaRaw * kBetaRaw);
const double kBeta = kBetaRaw / (kAlphaRaw * kAlphaRaw + kBetaRaw * kBetaRaw);

constexpr double kT[3][3] = {
    {9.1232394870892942792e-02, -0.14125529502095420843, -3.0029194105147424492e-02},
    {0.24171793270710701896, 0.20412935229379993199, 0.38294211275726193779},
    {0.96604818261509293619, 1.0, 0.0},
};
constexpr double kInverseT[3][3] = {
    {4.3255798900631553510, 0.33919925181580986954, 0.54177053993587487119},
    {-4.1787185915519047273, -0.32768282076106238708, 0.47662355450055045196},
    {-0.50287263494578687595, 2.5719269498556054292, -0.59603920482822492497},
};

// Weights of the embedded error estimate.
const std::array<double, 3> kErrorWeights{-(13 + 7 * kRoot6) / 3, (-13 + 7 * kRoot6) / 3, -1.0 / 3};

constexpr int kMostIterations = 8;
constexpr double kQuickRate = 1e-3; ///< iterations that shrink as fast need no newer slopes
constexpr double kSameStep = 1.2;   ///< growth that is not worth new factors
constexpr int kMostSettling = 100;
constexpr int kFailuresToSettle = 2;  ///< of the iteration, within one step
constexpr double kSettledMove = 1e-3; ///< in units of each unknown's tolerance
constexpr double kLeastDamping = 1e-4;
constexpr double kSafety = 0.9;
constexpr double kMostGrowth = 8;
constexpr double kMostShrink = 0.125;
constexpr double kFinestStep_s = 1e-15;

/// Three vectors, each a combination of three others.
void combine(const double (&weights)[3][3], const std::array<std::vector<double>, 3>& from,
             std::array<std::vector<double>, 3>& to) {
    for (std::size_t row = 0; row < 3; ++row) {
        const double first = weights[row][0];
        const double second = weights[row][1];
        const double third = weights[row][2];
        for (std::size_t i = 0; i < to[row].size(); ++i) {
            to[row][i] = first * from[0][i] + second * from[1][i] + third * from[2][i];
        }
    }
}

} // namespace

void StepPolynomial::evaluate(double time_s, std::span<double> x) const {
    const double s = (time_s - end_s) / (end_s - begin_s);
    for (std::size_t i = 0; i < x.size(); ++i) {
        x[i] = m_end[i] +
               s * (m_coefficients[0][i] +
                    (s - (kNode2 - 1)) * (m_coefficients[1][i] + (s - (kNode1 - 1)) * m_coefficients[2][i]));
    }
}

RadauStepper::RadauStepper(const DifferentialSystem& system, double relativeTolerance)
    : m_system(system), m_kernel(system), m_relativeTolerance(relativeTolerance),
      m_newtonTolerance(std::max(1e-14 / relativeTolerance, std::min(0.03, std::sqrt(relativeTolerance)))) {
    const auto size = static_cast<std::size_t>(system.size());
    for (auto* vector : {&m_x, &m_f, &m_inverseScale, &m_point, &m_error}) {
        vector->assign(size, 0.0);
    }
    for (auto* group :
         {&m_stages, &m_transformed, &m_stageSlopes, &m_residual, &m_polynomial.m_coefficients}) {
        for (auto& vector : *group) {
            vector.assign(size, 0.0);
        }
    }
    m_polynomial.m_end.assign(size, 0.0);
    m_complexRight.assign(size, {});
}

void RadauStepper::start(double time_s, std::span<const double> x, double firstStep_s) {
    m_time_s = time_s;
    std::copy(x.begin(), x.end(), m_x.begin());
    m_step_s = firstStep_s;
    m_first = true;
    m_slopesUsable = false;
    m_rate = 1;
    updateScale();
}

RadauStepper::Outcome RadauStepper::step(double latest_s) {
    bool rejected = false;
    int failures = 0;
    for (;;) {
        const double room_s = latest_s - m_time_s;
        double h = std::min(m_step_s, room_s);
        if (h < room_s && h > 0.5 * room_s) {
            h = 0.5 * room_s; // two even steps rather than a long one and a sliver
        }
        if (h < std::max(kFinestStep_s, 1e-15 * m_time_s)) {
            return Outcome::TooFine;
        }
        if (!prepare(h)) {
            shrink(h / 4);
            rejected = true;
            continue;
        }
        guessStages(h);
        if (iterate(h) == Newton::Diverged) {
            if (m_slopesFromHere) {
                shrink(h / 4);
                rejected = true;
                if (++failures % kFailuresToSettle == 0) {
                    settleHere();
                }
            }
            m_slopesUsable = m_slopesUsable && m_slopesFromHere;
            continue;
        }
        const double error = estimateError(h, m_first || rejected);
        const double next = nextStep(h, error);
        if (error < 1) {
            accept(h < room_s ? m_time_s + h : latest_s);
            m_lastError = std::max(error, 1e-2);
            m_lastStep_s = h;
            m_step_s = rejected ? std::min(next, h) : next;
            if (m_rate > kQuickRate) {
                m_slopesUsable = false;
            } else if (m_step_s >= h && m_step_s <= kSameStep * h) {
                m_step_s = h;
            }
            return Outcome::Accepted;
        }
        shrink(m_first ? h / 10 : next);
        m_slopesUsable = m_slopesFromHere;
        rejected = true;
    }
}

/// The step before left the algebraic unknowns within tolerance, yet at a bend of a diode too far from their
/// equations for slopes taken there: shorter steps do not help, Newton's method with new slopes does.
void RadauStepper::settleHere() {
    std::vector<double> x = m_x;
    if (settle(m_time_s, x)) {
        start(m_time_s, x, m_step_s);
    }
}

void RadauStepper::shrink(double step_s) {
    m_step_s = step_s;
    ++m_counts.rejected;
}

/// Slopes and factors for a step of this length, those of an earlier step where they still do.
bool RadauStepper::prepare(double h_s) {
    if (!m_slopesUsable) {
        m_kernel.linearise(m_time_s, m_x, m_f);
        m_slopesUsable = true;
        m_slopesFromHere = true;
        m_factorisedStep_s = 0;
    } else if (!m_slopesFromHere) {
        m_system.rightSide(m_time_s, m_x, m_f);
    }
    if (h_s == m_factorisedStep_s) {
        return true;
    }
    m_factorisedStep_s = 0;
    if (!m_kernel.factoriseReal(kRealEigenvalue / h_s) ||
        !m_kernel.factoriseComplex({kAlpha / h_s, kBeta / h_s})) {
        return false;
    }
    m_factorisedStep_s = h_s;
    return true;
}

void RadauStepper::guessStages(double h_s) {
    if (m_first) {
        for (auto& vector : m_stages) {
            std::fill(vector.begin(), vector.end(), 0.0);
        }
    } else {
        for (std::size_t stage = 0; stage < 3; ++stage) {
            m_polynomial.evaluate(m_time_s + kNodes[stage] * h_s, m_stages[stage]);
            for (std::size_t i = 0; i < m_x.size(); ++i) {
                m_stages[stage][i] -= m_x[i];
            }
        }
    }
    combine(kInverseT, m_stages, m_transformed);
}

void RadauStepper::transformedResidual(double h_s) {
    for (std::size_t stage = 0; stage < 3; ++stage) {
        for (std::size_t i = 0; i < m_x.size(); ++i) {
            m_point[i] = m_x[i] + m_stages[stage][i];
        }
        m_system.rightSide(m_time_s + kNodes[stage] * h_s, m_point, m_stageSlopes[stage]);
    }
    combine(kInverseT, m_stageSlopes, m_residual);
    m_kernel.addMassTimes(-kRealEigenvalue / h_s, m_transformed[0], m_residual[0]);
    m_kernel.addMassTimes(-kAlpha / h_s, m_transformed[1], m_residual[1]);
    m_kernel.addMassTimes(kBeta / h_s, m_transformed[2], m_residual[1]);
    m_kernel.addMassTimes(-kAlpha / h_s, m_transformed[2], m_residual[2]);
    m_kernel.addMassTimes(-kBeta / h_s, m_transformed[1], m_residual[2]);
}

double RadauStepper::advance() {
    m_kernel.solveReal(m_residual[0]);
    for (std::size_t i = 0; i < m_x.size(); ++i) {
        m_complexRight[i] = {m_residual[1][i], m_residual[2][i]};
    }
    m_kernel.solveComplex(m_complexRight);
    double sum = 0;
    for (std::size_t i = 0; i < m_x.size(); ++i) {
        const double first = m_residual[0][i];
        const double second = m_complexRight[i].real();
        const double third = m_complexRight[i].imag();
        m_transformed[0][i] += first;
        m_transformed[1][i] += second;
        m_transformed[2][i] += third;
        sum += (first * first + second * second + third * third) * (m_inverseScale[i] * m_inverseScale[i]);
    }
    combine(kT, m_transformed, m_stages);
    return std::sqrt(sum / static_cast<double>(3 * std::max<std::size_t>(m_x.size(), 1)));
}

RadauStepper::Newton RadauStepper::iterate(double h_s) {
    double leftOver = 1; // of an iteration's move, still to go
    double last = 0;
    for (int iteration = 1; iteration <= kMostIterations; ++iteration) {
        transformedResidual(h_s);
        const double move = advance();
        ++m_counts.newtonIterations;
        m_iterationsUsed = iteration;
        if (!std::isfinite(move)) {
            return Newton::Diverged;
        }
        if (iteration > 1) {
            m_rate = move / last;
            if (m_rate >= 0.99) {
                return Newton::Diverged;
            }
            leftOver = m_rate / (1 - m_rate);
        }
        if (leftOver * move < m_newtonTolerance) {
            return Newton::Converged;
        }
        last = std::max(move, 1e-300);
    }
    return Newton::Diverged;
}

double RadauStepper::errorNorm(std::span<const double> error) {
    double sum = 0;
    double worst = -1;
    for (std::size_t i = 0; i < error.size(); ++i) {
        const double share = error[i] * m_inverseScale[i];
        sum += share * share;
        if (!(std::abs(share) <= worst)) {
            worst = std::abs(share);
            m_culprit = static_cast<int>(i);
        }
    }
    return std::max(std::sqrt(sum / static_cast<double>(std::max<std::size_t>(error.size(), 1))), 1e-10);
}

double RadauStepper::estimateError(double h_s, bool refine) {
    std::vector<double>& combination = m_residual[0];
    std::vector<double>& massPart = m_residual[1];
    for (std::size_t i = 0; i < m_x.size(); ++i) {
        combination[i] = (kErrorWeights[0] * m_stages[0][i] + kErrorWeights[1] * m_stages[1][i] +
                          kErrorWeights[2] * m_stages[2][i]) /
                         h_s;
        massPart[i] = 0;
    }
    m_kernel.addMassTimes(1, combination, massPart);
    for (std::size_t i = 0; i < m_x.size(); ++i) {
        m_error[i] = m_f[i] + massPart[i];
    }
    m_kernel.solveReal(m_error);
    double norm = errorNorm(m_error);
    if (norm >= 1 && refine) {
        for (std::size_t i = 0; i < m_x.size(); ++i) {
            m_point[i] = m_x[i] + m_error[i];
        }
        m_system.rightSide(m_time_s, m_point, m_error);
        for (std::size_t i = 0; i < m_x.size(); ++i) {
            m_error[i] += massPart[i];
        }
        m_kernel.solveReal(m_error);
        norm = errorNorm(m_error);
    }
    return std::isfinite(norm) ? norm : 1e6;
}

double RadauStepper::nextStep(double h_s, double error) const {
    const double effort = kSafety * (2.0 * kMostIterations + 1) / (2.0 * kMostIterations + m_iterationsUsed);
    double growth = effort * std::pow(error, -0.25);
    if (!m_first && error < 1 && m_lastStep_s > 0) {
        // predictive control after Gustafsson [HairerWanner-II, IV.8]
        const double predicted =
            kSafety * (h_s / m_lastStep_s) * std::pow(m_lastError / (error * error), 0.25);
        growth = std::min(growth, predicted);
    }
    return h_s * std::clamp(growth, kMostShrink, kMostGrowth);
}

void RadauStepper::accept(double end_s) {
    m_polynomial.begin_s = m_time_s;
    m_polynomial.end_s = end_s;
    for (std::size_t i = 0; i < m_x.size(); ++i) {
        const double z1 = m_stages[0][i];
        const double z2 = m_stages[1][i];
        const double z3 = m_stages[2][i];
        const double first = (z2 - z3) / (kNode2 - 1);
        const double between = (z1 - z2) / (kNode1 - kNode2);
        const double second = (between - first) / (kNode1 - 1);
        m_polynomial.m_coefficients[0][i] = first;
        m_polynomial.m_coefficients[1][i] = second;
        m_polynomial.m_coefficients[2][i] = second - (between - z1 / kNode1) / kNode2;
        m_x[i] += z3;
        m_polynomial.m_end[i] = m_x[i];
    }
    m_time_s = end_s;
    m_first = false;
    m_slopesFromHere = false;
    ++m_counts.steps;
    updateScale();
}

void RadauStepper::refine() {
    const double end_s = m_time_s;
    const double h_s = end_s - m_polynomial.begin_s;
    m_time_s = m_polynomial.begin_s;
    for (std::size_t i = 0; i < m_x.size(); ++i) {
        m_x[i] -= m_stages[2][i];
    }
    transformedResidual(h_s);
    advance();
    ++m_counts.newtonIterations;
    accept(end_s);
    --m_counts.steps;
}

void RadauStepper::updateScale() {
    const auto tolerances = m_system.tolerances();
    for (std::size_t i = 0; i < m_x.size(); ++i) {
        m_inverseScale[i] = 1 / (tolerances[i] + m_relativeTolerance * std::abs(m_x[i]));
    }
}

/// Turns f in m_error into Newton's correction at x.
void RadauStepper::settlingCorrection(std::span<const double> x, double within_s) {
    for (std::size_t i = 0; i < x.size(); ++i) {
        m_point[i] = x[i] - m_x[i];
    }
    m_kernel.addMassTimes(-1 / within_s, m_point, m_error);
    m_kernel.solveReal(m_error);
}

// Newton's method on M·(x − from)/within = f(x), damped so that each correction is smaller than the one
// before, as far as the same slopes can tell [Deuflhard, Newton Methods for Nonlinear Problems, natural
// monotonicity test].
bool RadauStepper::settle(double time_s, std::span<double> x, double within_s) {
    m_slopesUsable = false;
    std::copy(x.begin(), x.end(), m_x.begin());
    updateScale();
    std::vector<double> move(x.size());
    std::vector<double> trial(x.size());
    double damping = 1;
    for (int iteration = 0; iteration < kMostSettling; ++iteration) {
        m_kernel.linearise(time_s, x, m_error);
        if (!m_kernel.factoriseReal(1 / within_s)) {
            return false;
        }
        settlingCorrection(x, within_s);
        ++m_counts.newtonIterations;
        const double norm = errorNorm(m_error);
        if (!std::isfinite(norm)) {
            return false;
        }
        move = m_error;
        damping = std::min(1.0, 4 * damping);
        for (;; damping /= 2) {
            for (std::size_t i = 0; i < x.size(); ++i) {
                trial[i] = x[i] + damping * move[i];
            }
            if (norm < kSettledMove || damping < kLeastDamping) {
                break;
            }
            m_system.rightSide(time_s, trial, m_error);
            settlingCorrection(trial, within_s);
            if (errorNorm(m_error) <= (1 - damping / 4) * norm) {
                break;
            }
        }
        std::copy(trial.begin(), trial.end(), x.begin());
        if (norm < kSettledMove) {
            return true;
        }
    }
    return false;
}

RadauStepper::Counts RadauStepper::counts() const {
    Counts counts = m_counts;
    counts.factorisations = m_kernel.factorisations();
    return counts;
}

} // namespace pumpwright

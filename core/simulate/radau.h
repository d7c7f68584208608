#pragma once

#include "core/simulate/linear_kernel.h"

#include <array>
#include <span>
#include <vector>

namespace pumpwright {

/// Continuous solution within one accepted step: the collocation polynomial, of order 3.
class StepPolynomial {
public:
    double begin_s = 0;
    double end_s = 0;
    /// The unknowns at a time within the step.
    void evaluate(double time_s, std::span<double> x) const;

private:
    friend class RadauStepper;
    std::vector<double> m_end;
    std::array<std::vector<double>, 3> m_coefficients;
};

/// Three-stage Radau IIA method of order 5 with simplified Newton iteration and error control, L-stable, for
/// systems of index 1 [HairerWanner-II, IV.8]. It restarts at full order, which is what a circuit that
/// switches often needs.
class RadauStepper {
public:
    enum class Outcome { Accepted, TooFine };

    RadauStepper(const DifferentialSystem& system, double relativeTolerance);

    /// Starts anew at a point that satisfies the algebraic equations, with a first step of about
    /// `firstStep_s`.
    void start(double time_s, std::span<const double> x, double firstStep_s);
    /// Makes one step that ends at `latest_s` or before. TooFine: the step would have to be shorter than time
    /// resolves; culprit() then says which unknown stood in the way.
    Outcome step(double latest_s);

    /// One more iteration of Newton's method on the step that was accepted last, where it stopped too early.
    void refine();

    /// The nearest point that satisfies the algebraic equations, with capacitor voltages, coil currents and
    /// other states as they are. False where Newton's iteration finds none; culprit() says which unknown
    /// moved most.
    bool settle(double time_s, std::span<double> x, double within_s = 1e-10);

    double time_s() const { return m_time_s; }
    std::span<const double> x() const { return m_x; }
    const StepPolynomial& polynomial() const { return m_polynomial; }
    int culprit() const { return m_culprit; }

    struct Counts {
        long steps = 0;
        long rejected = 0;
        long newtonIterations = 0;
        long factorisations = 0;
    };
    Counts counts() const;

private:
    enum class Newton { Converged, Diverged };

    Newton iterate(double h_s);
    void guessStages(double h_s);
    void transformedResidual(double h_s);
    double advance();
    double estimateError(double h_s, bool refine);
    double errorNorm(std::span<const double> error);
    void updateScale();
    void settlingCorrection(std::span<const double> x, double within_s);
    void accept(double end_s);
    double nextStep(double h_s, double error) const;
    bool prepare(double h_s);
    void shrink(double step_s);
    void settleHere();

    const DifferentialSystem& m_system;
    LinearKernel m_kernel;
    double m_relativeTolerance;
    double m_newtonTolerance;
    double m_time_s = 0;
    double m_step_s = 0;
    bool m_first = true;
    bool m_slopesUsable = false;
    bool m_slopesFromHere = false; ///< taken at the point where the step begins
    double m_factorisedStep_s = 0; ///< that the factors are for; 0 for none
    int m_iterationsUsed = 0;
    double m_rate = 1; ///< of convergence: each iteration's move against the one before
    int m_culprit = 0;
    double m_lastError = 1;
    double m_lastStep_s = 0;
    std::vector<double> m_x;
    std::vector<double> m_f;
    std::vector<double> m_inverseScale;               ///< of what each unknown may be off by
    std::array<std::vector<double>, 3> m_stages;      ///< increments Z
    std::array<std::vector<double>, 3> m_transformed; ///< W = T⁻¹·Z
    std::array<std::vector<double>, 3> m_stageSlopes; ///< f at the stages
    std::array<std::vector<double>, 3> m_residual;
    std::vector<double> m_point;
    std::vector<double> m_error;
    std::vector<std::complex<double>> m_complexRight;
    StepPolynomial m_polynomial;
    Counts m_counts;
};

} // namespace pumpwright

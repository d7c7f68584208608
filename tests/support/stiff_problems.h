#pragma once

#include "core/simulate/differential_system.h"

#include <functional>
#include <string>
#include <vector>

namespace pumpwright::test {

/// A published stiff problem M·y' = f(y, t) with its reference solution.
struct StiffProblem {
    struct Mass {
        int row;
        int column;
        double value;
    };
    /// f, and its slopes row by row where they are asked for.
    using Right =
        std::function<void(double t, std::span<const double> y, std::span<double> f, double* slopes)>;

    std::string name;
    double end_s;
    double absoluteShare; ///< absolute tolerance, as a share of the relative one
    std::vector<double> start;
    std::vector<double> startRates; ///< y' at the start
    std::vector<double> reference;  ///< y at the end
    std::vector<Mass> masses;
    Right right;

    int size() const { return static_cast<int>(start.size()); }
    /// Digits of the worst component: −log10 of its relative error.
    double digits(std::span<const double> y) const;
};

/// Reference solutions of the test set for initial value problem solvers (transamp 1.3, ringmod 1.2, hires,
/// rober, vdpol).
StiffProblem transistorAmplifier();
StiffProblem ringModulator();
StiffProblem hires();
StiffProblem robertson();
StiffProblem vanDerPol();

/// Such a problem as the stepper sees it.
class StiffSystem final : public DifferentialSystem {
public:
    StiffSystem(StiffProblem problem, double relativeTolerance);
    int size() const override { return m_problem.size(); }
    void rightSide(double t, std::span<const double> y, std::span<double> f) const override;
    void rightSideAndSlopes(double t, std::span<const double> y, std::span<double> f,
                            SparseMatrix& slopes) const override;
    void masses(SparseMatrix& masses) const override;
    std::span<const double> tolerances() const override { return m_tolerances; }

private:
    StiffProblem m_problem;
    std::vector<double> m_tolerances;
};

} // namespace pumpwright::test

#pragma once

#include "core/simulate/differential_system.h"
#include "core/simulate/static_lu.h"

#include <complex>
#include <span>
#include <vector>

namespace pumpwright {

/// The linear algebra of one system: its slopes J and masses M, and solutions with a·M − J for real and
/// complex a.
class LinearKernel {
public:
    explicit LinearKernel(const DifferentialSystem& system);

    /// Takes J at this instant, and f with it.
    void linearise(double time_s, std::span<const double> x, std::span<double> f);

    /// Prepares a·M − J. False where it is singular.
    bool factoriseReal(double a);
    bool factoriseComplex(std::complex<double> a);
    void solveReal(std::span<double> right) const { m_realLu.solve(right); }
    void solveComplex(std::span<std::complex<double>> right) const { m_complexLu.solve(right); }

    /// result += factor · M · x
    void addMassTimes(double factor, std::span<const double> x, std::span<double> result) const;

    long factorisations() const { return m_factorisations; }

private:
    struct Mass {
        int row;
        int column;
        std::size_t slot;
        double value;
    };

    void planIfNew();

    const DifferentialSystem& m_system;
    SparseMatrix m_slopes;
    std::vector<Mass> m_masses;
    EliminationPlan m_plan;
    StaticLu<double> m_realLu;
    StaticLu<std::complex<double>> m_complexLu;
    std::vector<double> m_real;
    std::vector<std::complex<double>> m_complex;
    long m_factorisations = 0;
};

} // namespace pumpwright

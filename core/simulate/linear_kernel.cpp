#include "core/simulate/linear_kernel.h"

namespace pumpwright {

LinearKernel::LinearKernel(const DifferentialSystem& system) : m_system(system), m_slopes(system.size()) {
    SparseMatrix masses(system.size());
    system.masses(masses);
    const auto places = masses.places();
    for (std::size_t i = 0; i < places.size(); ++i) {
        const auto [row, column] = places[i];
        m_masses.push_back({row, column, m_slopes.slot(row, column), masses.values()[i]});
    }
}

void LinearKernel::linearise(double time_s, std::span<const double> x, std::span<double> f) {
    m_slopes.setZero();
    m_system.rightSideAndSlopes(time_s, x, f, m_slopes);
    planIfNew();
}

void LinearKernel::planIfNew() {
    if (m_plan.size != m_slopes.size() || m_plan.entries != m_slopes.places().size()) {
        m_plan = planElimination(m_slopes);
    }
}

bool LinearKernel::factoriseReal(double a) {
    const auto slopes = m_slopes.values();
    m_real.resize(slopes.size());
    for (std::size_t i = 0; i < slopes.size(); ++i) {
        m_real[i] = -slopes[i];
    }
    for (const Mass& mass : m_masses) {
        m_real[mass.slot] += a * mass.value;
    }
    ++m_factorisations;
    return m_realLu.factorise(m_plan, m_real);
}

bool LinearKernel::factoriseComplex(std::complex<double> a) {
    const auto slopes = m_slopes.values();
    m_complex.resize(slopes.size());
    for (std::size_t i = 0; i < slopes.size(); ++i) {
        m_complex[i] = -slopes[i];
    }
    for (const Mass& mass : m_masses) {
        m_complex[mass.slot] += a * mass.value;
    }
    ++m_factorisations;
    return m_complexLu.factorise(m_plan, m_complex);
}

void LinearKernel::addMassTimes(double factor, std::span<const double> x, std::span<double> result) const {
    for (const Mass& mass : m_masses) {
        result[static_cast<std::size_t>(mass.row)] +=
            factor * mass.value * x[static_cast<std::size_t>(mass.column)];
    }
}

} // namespace pumpwright

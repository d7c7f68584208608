#pragma once

#include "core/simulate/balances.h"
#include "core/simulate/drive_system.h"
#include "core/simulate/radau.h"

#include <span>
#include <vector>

namespace pumpwright {

/// Keeps the books of a run: adds up what the laws take in and give off, by the quadrature of the stepper's
/// own stages, with which sums that the equations conserve come out to rounding where Newton's iteration has
/// converged.
class Bookkeeper {
public:
    /// `full`: all books; else only those of gas and charge, by which the run judges its steps.
    Bookkeeper(const DriveSystem& system, bool full);

    /// Begins at this state.
    void open(double time_s, std::span<const double> x);
    /// Looks at a step from its begin to `to_s`; of several looks the last one counts.
    void weigh(const StepPolynomial& step, double to_s);
    /// Gas that the step weighed last makes of nothing, of all that is held, or charge that it loses at the
    /// nodes, of all that the sources moved, whichever is more.
    double offShare() const;
    /// Enters that step.
    void enter();
    Balances balances() const;

private:
    struct Page {
        Account flows; ///< each times time
        double held_J = 0;
        double held_kg = 0;
        std::vector<double> missing_C; ///< at each node
    };

    Account accountAt(double time_s, std::span<const double> x) const;

    const DriveSystem& m_system;
    bool m_full;
    std::vector<std::size_t> m_laws; ///< that are asked
    std::vector<double> m_x;
    std::vector<double> m_f;
    Account m_first;
    Page m_sum;
    Page m_pending;
};

} // namespace pumpwright

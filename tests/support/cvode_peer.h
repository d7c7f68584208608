#pragma once

#include <functional>
#include <memory>
#include <span>
#include <vector>

namespace pumpwright::test {

/// Ordinary differential equations with events, solved by the variable-order BDF solver CVODE of SUNDIALS
/// with its own difference quotients and root finding.
class CvodePeer {
public:
    struct Problem {
        std::vector<double> start;
        std::vector<double> absoluteTolerances;
        std::function<void(double t, std::span<const double> y, std::span<double> rates)> right;
        int rootCount = 0;
        std::function<void(double t, std::span<const double> y, std::span<double> values)> roots;
    };

    CvodePeer(Problem problem, double relativeTolerance);
    ~CvodePeer();
    CvodePeer(const CvodePeer&) = delete;
    CvodePeer& operator=(const CvodePeer&) = delete;

    enum class Outcome { Step, Stop, Root, Failed };
    /// One step of CVODE's own choice, to `stop_s` at most.
    Outcome step(double stop_s);
    /// Begins anew where it is, after something has jumped.
    void restart();
    double time_s() const { return m_time_s; }
    std::span<const double> y() const;
    /// At a time within the last step.
    std::vector<double> at(double time_s) const;
    long steps() const;

private:
    struct Solver;

    double m_time_s = 0;
    long m_stepsBefore = 0;
    std::unique_ptr<Solver> m_solver;
};

} // namespace pumpwright::test

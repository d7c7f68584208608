#pragma once

#include "tests/support/stiff_problems.h"

#include <functional>
#include <memory>

namespace pumpwright::test {

/// A problem solved by the variable-order BDF solver IDA of SUNDIALS, with exact slopes and, where asked for,
/// the first root of a function.
class IdaPeer {
public:
    using Root = std::function<double(double t, std::span<const double> y)>;

    explicit IdaPeer(const StiffProblem& problem, double relativeTolerance, Root root = {});
    ~IdaPeer();
    IdaPeer(const IdaPeer&) = delete;
    IdaPeer& operator=(const IdaPeer&) = delete;

    enum class Outcome { Step, End, Root, Failed };
    /// One step of IDA's own choice.
    Outcome step();
    double time_s() const { return m_time_s; }
    std::span<const double> y() const;
    long steps() const;

private:
    struct Solver;

    double m_time_s = 0;
    std::unique_ptr<Solver> m_solver;
};

} // namespace pumpwright::test

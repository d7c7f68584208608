#pragma once

#include "core/study/adjustable.h"
#include "core/study/bench_log.h"
#include "core/study/least_squares.h"
#include "core/study/study_run.h"

#include <optional>
#include <string>
#include <vector>

namespace pumpwright {

/// One value of the circuit, before and after the fit.
struct FittedValue {
    Adjustable what;
    double before = 0;
    double value = 0;
    std::optional<double> standardError; ///< nothing where the log does not tell
    bool isAtLimit = false;              ///< of the range that the value may have
};

/// A trace that is left further from the simulation than this share of its spread is not met. Common
/// practice, no published source.
inline constexpr double kMissedShare = 0.1;

/// How well one trace of the log is met: root of the mean square of what is between it and the simulation.
struct TraceMatch {
    std::string name;
    QuantityKind kind = QuantityKind::Number;
    std::size_t readings = 0;
    double before = 0; ///< [SI]
    double after = 0;
    double spread = 0; ///< [SI] standard deviation of the readings themselves

    /// The simulation does not do what the log shows: the values say nothing, however small their errors.
    bool isMissed() const { return after > kMissedShare * spread; }
};

/// Two values that the log cannot tell apart: one makes up for the other.
struct Tangle {
    std::size_t one = 0; ///< places in FitResult::values
    std::size_t other = 0;
    double correlation = 0;
};

struct FitResult {
    enum class Status { Finished, NotSettled, Cancelled, Useless };
    Status status = Status::Finished;
    std::string message; ///< why it is useless
    std::vector<FittedValue> values;
    std::vector<TraceMatch> traces;
    std::vector<Tangle> tangles;
    int drives = 0;
};

/// From here on, two values have errors five times as large as each alone would have: 1/√(1 − r²).
inline constexpr double kTangled = 0.98;

/// Sets the values so that the drive comes as near as it can to the log, in the least-squares sense. Traces
/// of different quantities count by their own scatter: first by how far their values spread, then by how far
/// the first fit left them from the simulation. Readings outside the drive are left out. Standard errors hold
/// for readings whose errors have nothing to do with each other. The same on any number of threads.
FitResult runFit(const Circuit& circuit, const BenchLog& log, const std::vector<Adjustable>& what,
                 const StudyOptions& options = {});

/// The change that takes the fitted values into the circuit.
Edit fitEdit(const Circuit& circuit, const FitResult& result);

} // namespace pumpwright

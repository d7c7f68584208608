#include "core/study/fit.h"

#include "core/simulate/drive.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

/// [relative] of the stepper in a fit: slopes by differences need a smooth drive.
constexpr double kDriveTolerance = 1e-6;
/// Share of a value by which it is moved for a slope: well above what the stepper leaves.
constexpr double kMoveShare = 2e-3;
constexpr double kFitTolerance = 1e-5;
constexpr int kMostRounds = 60;
/// Stands, in scatters of its trace, for a residual of a drive that could not be finished.
constexpr double kHopeless = 100;

/// Readings within the drive, and nothing of traces that have none there.
BenchLog within(const BenchLog& log, double duration_s) {
    BenchLog kept;
    for (const LogTrace& trace : log.traces) {
        LogTrace one{trace.key, trace.name, trace.kind, {}, {}};
        for (std::size_t i = 0; i < trace.times_s.size(); ++i) {
            if (trace.times_s[i] >= 0 && trace.times_s[i] <= duration_s) {
                one.times_s.push_back(trace.times_s[i]);
                one.values.push_back(trace.values[i]);
            }
        }
        if (!one.times_s.empty()) {
            kept.traces.push_back(std::move(one));
        }
    }
    return kept;
}

std::size_t readingsOf(const BenchLog& log) {
    std::size_t readings = 0;
    for (const LogTrace& trace : log.traces) {
        readings += trace.values.size();
    }
    return readings;
}

double rootMeanSquare(const std::vector<double>& values) {
    double squares = 0;
    for (const double value : values) {
        squares += value * value;
    }
    return std::sqrt(squares / static_cast<double>(values.size()));
}

/// Standard deviation about the mean; 1 where all values are equal.
double spreadOf(std::vector<double> values) {
    double mean = 0;
    for (const double value : values) {
        mean += value / static_cast<double>(values.size());
    }
    for (double& value : values) {
        value -= mean;
    }
    const double spread = rootMeanSquare(values);
    return spread > 0 ? spread : 1;
}

/// The fit of one circuit to one log.
class Fit {
public:
    Fit(const Circuit& circuit, const BenchLog& log, const std::vector<Adjustable>& what,
        const StudyOptions& options)
        : m_circuit(circuit), m_what(what), m_options(options), m_log(within(log, circuit.plan.duration_s)) {
        double last_s = 0;
        for (const LogTrace& trace : m_log.traces) {
            m_scatters.push_back(spreadOf(trace.values));
            last_s = std::max(last_s, trace.times_s.back());
        }
        constexpr double kShortest_s = 1e-3;
        m_circuit.plan.duration_s = std::max(last_s, kShortest_s);
    }

    FitResult run() {
        FitResult result;
        if (const std::string why = whyUseless(); !why.empty()) {
            result.status = FitResult::Status::Useless;
            result.message = why;
            return result;
        }
        std::vector<double> values = startValues();
        LeastSquares found = search(values);
        if (m_log.traces.size() > 1 && found.status != LeastSquares::Status::Cancelled) {
            weighByWhatIsLeft(found.values);
            found = search(found.values);
        }
        return resultOf(values, found);
    }

private:
    std::string whyUseless() const {
        if (readingsOf(m_log) <= m_what.size()) {
            return "The log has too few readings within the drive: check its times and the time offset.";
        }
        const DriveResult drive = driven(startValues(), m_options.cancel);
        if (drive.status == DriveStatus::Cancelled) {
            return {}; // the search tells
        }
        if (drive.status == DriveStatus::Stopped) {
            return "The drive could not be finished: " + drive.message;
        }
        for (const LogTrace& trace : m_log.traces) {
            if (drive.recording.find(trace.key) == nullptr) {
                return fmt::format("The simulation knows no {}.", trace.name);
            }
        }
        return {};
    }

    std::vector<double> startValues() const {
        std::vector<double> values;
        for (const Adjustable& what : m_what) {
            values.push_back(valueOf(m_circuit, what));
        }
        return values;
    }

    DriveResult driven(const std::vector<double>& values, const std::atomic<bool>* stop) const {
        Circuit circuit = m_circuit;
        for (std::size_t i = 0; i < m_what.size(); ++i) {
            setValue(circuit, m_what[i], values[i]);
        }
        DriveOptions options;
        options.relativeTolerance = kDriveTolerance;
        options.cancel = stop;
        options.balances = false;
        return simulateDrive(circuit, options);
    }

    /// What is between log and simulation, trace by trace, in SI.
    std::optional<std::vector<std::vector<double>>> gapsOf(const DriveResult& drive) const {
        if (drive.status != DriveStatus::Finished) {
            return std::nullopt;
        }
        std::vector<std::vector<double>> gaps;
        for (const LogTrace& trace : m_log.traces) {
            const Channel& channel = *drive.recording.find(trace.key);
            std::vector<double> gap;
            for (std::size_t i = 0; i < trace.values.size(); ++i) {
                gap.push_back(channel.at(trace.times_s[i]) - trace.values[i]);
            }
            gaps.push_back(std::move(gap));
        }
        return gaps;
    }

    std::vector<double> residualsOf(const DriveResult& drive) const {
        const auto gaps = gapsOf(drive);
        std::vector<double> residuals;
        for (std::size_t trace = 0; trace < m_log.traces.size(); ++trace) {
            for (std::size_t i = 0; i < m_log.traces[trace].values.size(); ++i) {
                residuals.push_back(gaps ? (*gaps)[trace][i] / m_scatters[trace] : kHopeless);
            }
        }
        return residuals;
    }

    std::optional<std::vector<std::vector<double>>>
    residualsAt(const std::vector<std::vector<double>>& points) {
        std::vector<std::vector<double>> all;
        StudyOptions options = m_options;
        const std::size_t expected = kMostRounds * (2 * m_what.size() + 1);
        options.progress = [&](std::size_t, std::size_t) {
            ++m_drives;
            if (m_options.progress) {
                m_options.progress(m_drives, std::max(expected, m_drives));
            }
        };
        OrderedRun<std::vector<double>>::run(
            points.size(), options,
            [&](std::size_t index, const std::atomic<bool>& stop) {
                return residualsOf(driven(points[index], &stop));
            },
            [&](std::size_t, std::vector<double> residuals) {
                all.push_back(std::move(residuals));
                return true;
            });
        return all.size() == points.size() ? std::optional(all) : std::nullopt;
    }

    LeastSquares search(const std::vector<double>& values) {
        std::vector<FitStart> starts;
        for (std::size_t i = 0; i < m_what.size(); ++i) {
            const ParameterSpec& spec = *m_what[i].spec;
            constexpr double kInside = 1e-3; // at a bound nothing would move
            const double margin = spec.low > 0 ? kInside * spec.low : kInside * (spec.high - spec.low);
            starts.push_back(
                {std::clamp(values[i], spec.low + margin, spec.high - margin), spec.low, spec.high});
        }
        LeastSquaresOptions options;
        options.mostRounds = kMostRounds;
        options.tolerance = kFitTolerance;
        options.moveShare = kMoveShare;
        return leastSquares(
            starts, [this](const auto& points) { return residualsAt(points); }, options);
    }

    /// Each trace by the scatter that the first fit left it with.
    void weighByWhatIsLeft(const std::vector<double>& values) {
        constexpr double kLeastShare =
            1e-6; // of its spread: a trace without noise does not outweigh all others
        const auto gaps = gapsOf(driven(values, m_options.cancel));
        for (std::size_t i = 0; gaps && i < m_scatters.size(); ++i) {
            m_scatters[i] = std::max(rootMeanSquare((*gaps)[i]), kLeastShare * m_scatters[i]);
        }
    }

    FitResult resultOf(const std::vector<double>& before, const LeastSquares& found) {
        FitResult result;
        result.status = found.status == LeastSquares::Status::Cancelled      ? FitResult::Status::Cancelled
                        : found.status == LeastSquares::Status::RoundsUsedUp ? FitResult::Status::NotSettled
                                                                             : FitResult::Status::Finished;
        for (std::size_t i = 0; i < m_what.size(); ++i) {
            const auto& error = found.standardErrors[i];
            result.values.push_back({m_what[i], before[i], found.values[i], error, found.isAtBound[i]});
            for (std::size_t j = i + 1; j < m_what.size(); ++j) {
                if (std::abs(found.correlations[i][j]) >= kTangled) {
                    result.tangles.push_back({i, j, found.correlations[i][j]});
                }
            }
        }
        if (result.status != FitResult::Status::Cancelled) {
            addMatches(before, found.values, result);
        }
        result.drives = static_cast<int>(m_drives);
        return result;
    }

    void addMatches(const std::vector<double>& before, const std::vector<double>& after, FitResult& result) {
        const auto gapsBefore = gapsOf(driven(before, m_options.cancel));
        const auto gapsAfter = gapsOf(driven(after, m_options.cancel));
        if (m_options.cancel != nullptr && *m_options.cancel) {
            result.status = FitResult::Status::Cancelled;
        }
        for (std::size_t i = 0; gapsBefore && gapsAfter && i < m_log.traces.size(); ++i) {
            const LogTrace& trace = m_log.traces[i];
            result.traces.push_back({trace.name, trace.kind, trace.values.size(),
                                     rootMeanSquare((*gapsBefore)[i]), rootMeanSquare((*gapsAfter)[i]),
                                     spreadOf(trace.values)});
        }
    }

    Circuit m_circuit;
    const std::vector<Adjustable>& m_what;
    const StudyOptions& m_options;
    BenchLog m_log;
    std::vector<double> m_scatters; ///< [SI] of each trace
    std::size_t m_drives = 0;
};

} // namespace

FitResult runFit(const Circuit& circuit, const BenchLog& log, const std::vector<Adjustable>& what,
                 const StudyOptions& options) {
    return Fit(circuit, log, what, options).run();
}

Edit fitEdit(const Circuit& circuit, const FitResult& result) {
    Circuit fitted = circuit;
    Edit edit{"Take the fitted values", {}};
    for (const FittedValue& value : result.values) {
        edit.changes.push_back(settingOf(fitted, value.what, value.value));
        applyEdit(fitted, {"", {edit.changes.back()}});
    }
    return edit;
}

} // namespace pumpwright

#include "core/files/bench_log_csv.h"

#include "core/files/nearest_word.h"
#include "core/files/samples_csv.h"
#include "core/parts/surroundings.h"
#include "core/simulate/drive.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace pumpwright {
namespace {

constexpr std::string_view kTime = "time";
constexpr std::string_view kAbsolute = " abs";

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') {
        text.remove_prefix(1);
    }
    while (!text.empty() && text.back() == ' ') {
        text.remove_suffix(1);
    }
    return text;
}

tl::unexpected<Error> fault(ErrorCode code, std::string text) {
    return tl::unexpected(Error{code, std::move(text), {}});
}

/// Without the unit in brackets.
std::string_view bareName(std::string_view name) {
    const std::size_t bracket = name.find_last_of("[(");
    return trimmed(unitInName(name).empty() ? name : name.substr(0, bracket));
}

bool beginsWithTime(std::string_view name) {
    std::string lower(trimmed(name).substr(0, kTime.size()));
    std::ranges::transform(lower, lower.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return lower == kTime;
}

bool neverFalls(const std::vector<double>& values) {
    return std::ranges::is_sorted(values) && values.front() < values.back();
}

/// si = zero + step · shown
struct Scale {
    double zero = 0;
    double step = 1;
};

Result<Scale> scaleOf(QuantityKind kind, const std::string& unit) {
    if (unit.empty() && siUnit(kind).empty()) {
        return Scale{}; // shares and plain numbers, as samplesCsv() writes them
    }
    if (unit.empty()) {
        const DisplayUnit first = displayUnits(kind).front();
        return Scale{first.offset, first.factor};
    }
    const Result<double> one = parseQuantity("1 " + unit, kind);
    const Result<double> two = parseQuantity("2 " + unit, kind);
    if (!one || !two) {
        return tl::unexpected(one ? two.error() : one.error());
    }
    return Scale{2 * *one - *two, *two - *one};
}

const LogTarget* targetCalled(const std::vector<LogTarget>& targets, std::string_view name) {
    const auto found = std::ranges::find(targets, name, &LogTarget::name);
    return found == targets.end() ? nullptr : &*found;
}

Error unknownTarget(const std::vector<LogTarget>& targets, std::string_view name) {
    std::vector<std::string_view> names;
    for (const LogTarget& target : targets) {
        names.emplace_back(target.name);
    }
    const std::string_view nearest = nearestWord(name, names);
    return {ErrorCode::DanglingReference,
            fmt::format("The simulation knows no \"{}\".{}", name,
                        nearest.empty() ? " The head line of \"drive --csv\" lists what it knows."
                                        : fmt::format(" Is \"{}\" meant?", nearest)),
            {}};
}

/// A vacuum may be logged as what a gauge shows below zero.
void turnRound(LogTrace& trace) {
    const bool below = std::ranges::all_of(trace.values, [](double value) { return value <= 0; });
    if (trace.kind == QuantityKind::GaugeVacuum && below) {
        for (double& value : trace.values) {
            value = -value;
        }
    }
}

/// The readings of one column in order of time, without cells that hold no number.
void addReadings(LogTrace& trace, const std::vector<double>& times_s, const std::vector<double>& shown,
                 const Scale& scale) {
    std::vector<std::pair<double, double>> readings;
    for (std::size_t i = 0; i < times_s.size(); ++i) {
        if (!std::isnan(times_s[i]) && !std::isnan(shown[i])) {
            readings.emplace_back(times_s[i], scale.zero + scale.step * shown[i]);
        }
    }
    std::ranges::stable_sort(readings, {}, &std::pair<double, double>::first);
    for (const auto& [time_s, value] : readings) {
        trace.times_s.push_back(time_s);
        trace.values.push_back(value);
    }
}

Result<LogTrace> traceOf(const Circuit& circuit, const LogTarget& target, const CsvNumbers& table,
                         const LogColumn& column, const std::vector<double>& times_s) {
    LogTrace trace{target.key, target.name, target.kind, {}, {}};
    const bool absolute =
        target.kind == QuantityKind::GaugeVacuum && std::string_view(column.unit).ends_with(kAbsolute);
    const std::string unit =
        absolute ? column.unit.substr(0, column.unit.size() - kAbsolute.size()) : column.unit;
    const Result<Scale> scale = scaleOf(target.kind, unit);
    if (!scale) {
        return tl::unexpected(scale.error());
    }
    addReadings(trace, times_s, table.columns[column.column], *scale);
    if (absolute) {
        const Surroundings around(circuit.plan);
        for (std::size_t i = 0; i < trace.values.size(); ++i) {
            trace.values[i] = around.ambientPressure_Pa(std::max(0.0, trace.times_s[i])) - trace.values[i];
        }
    } else {
        turnRound(trace);
    }
    return trace;
}

Result<std::size_t> columnCalled(const CsvNumbers& table, std::string_view name) {
    const auto found = std::ranges::find(table.names, name);
    if (found != table.names.end() && !name.empty()) {
        return static_cast<std::size_t>(found - table.names.begin());
    }
    const auto bare =
        std::ranges::find_if(table.names, [&](const auto& one) { return bareName(one) == bareName(name); });
    if (bare != table.names.end() && !name.empty()) {
        return static_cast<std::size_t>(bare - table.names.begin());
    }
    std::size_t number = 0;
    const auto [stop, error] = std::from_chars(name.data(), name.data() + name.size(), number);
    if (error == std::errc() && stop == name.data() + name.size() && number >= 1 &&
        number <= table.columns.size()) {
        return number - 1;
    }
    return fault(ErrorCode::MissingKey,
                 fmt::format("The log has no column \"{}\"; it has {} columns.", name, table.columns.size()));
}

} // namespace

std::vector<LogTarget> logTargets(const Circuit& circuit) {
    Circuit glance = circuit;
    glance.plan.duration_s = 1e-6; // its channels are there from the first step on
    const DriveResult drive = simulateDrive(glance);
    std::vector<LogTarget> targets;
    for (const Channel& channel : drive.recording.channels) {
        targets.push_back({channel.key, channelName(circuit, channel.key), channel.probe.kind});
    }
    return targets;
}

std::string unitInName(std::string_view name) {
    name = trimmed(name);
    const std::size_t begin = name.find_last_of("[(");
    if (begin == std::string_view::npos || name.empty() || (name.back() != ']' && name.back() != ')')) {
        return {};
    }
    return std::string(trimmed(name.substr(begin + 1, name.size() - begin - 2)));
}

std::size_t timeColumnOf(const CsvNumbers& table) {
    const auto named = std::ranges::find_if(table.names, beginsWithTime);
    if (named != table.names.end()) {
        return static_cast<std::size_t>(named - table.names.begin());
    }
    const auto rising = std::ranges::find_if(table.columns, neverFalls);
    return rising == table.columns.end() ? 0 : static_cast<std::size_t>(rising - table.columns.begin());
}

LogReading guessedReading(const Circuit& circuit, const CsvNumbers& table) {
    LogReading reading;
    reading.timeColumn = timeColumnOf(table);
    reading.timeUnit = unitInName(table.names[reading.timeColumn]);
    const std::vector<LogTarget> targets = logTargets(circuit);
    for (std::size_t i = 0; i < table.names.size(); ++i) {
        const LogTarget* target = targetCalled(targets, bareName(table.names[i]));
        if (i != reading.timeColumn && target != nullptr) {
            reading.columns.push_back({i, target->name, unitInName(table.names[i])});
        }
    }
    return reading;
}

Result<void> addToReading(LogReading& reading, const CsvNumbers& table, std::string_view text) {
    const std::size_t equals = text.rfind('=');
    if (equals == std::string_view::npos) {
        return fault(
            ErrorCode::MissingKey,
            fmt::format("\"{}\" says of no column what it is. Write for example \"Vacuum=A1:vacuum in "
                        "kPa\".",
                        text));
    }
    const Result<std::size_t> column = columnCalled(table, trimmed(text.substr(0, equals)));
    if (!column) {
        return tl::unexpected(column.error());
    }
    std::string_view target = trimmed(text.substr(equals + 1));
    std::string unit = unitInName(table.names[*column]);
    if (const std::size_t in = target.rfind(" in "); in != std::string_view::npos) {
        unit = trimmed(target.substr(in + 4));
        target = trimmed(target.substr(0, in));
    }
    std::erase_if(reading.columns, [&](const LogColumn& one) { return one.column == *column; });
    if (target == kTime) {
        reading.timeColumn = *column;
        reading.timeUnit = unit;
    } else {
        reading.columns.push_back({*column, std::string(target), unit});
    }
    return {};
}

Result<BenchLog> benchLog(const Circuit& circuit, const CsvNumbers& table, const LogReading& reading) {
    const Result<Scale> timeScale = scaleOf(QuantityKind::Time, reading.timeUnit);
    if (!timeScale) {
        return tl::unexpected(timeScale.error());
    }
    std::vector<double> times_s;
    for (const double shown : table.columns[reading.timeColumn]) {
        times_s.push_back(timeScale->step * shown + reading.timeOffset_s);
    }
    const std::vector<LogTarget> targets = logTargets(circuit);
    BenchLog log;
    for (const LogColumn& column : reading.columns) {
        const LogTarget* target = targetCalled(targets, column.target);
        if (target == nullptr) {
            return tl::unexpected(unknownTarget(targets, column.target));
        }
        Result<LogTrace> trace = traceOf(circuit, *target, table, column, times_s);
        if (!trace) {
            return tl::unexpected(trace.error());
        }
        if (!trace->values.empty()) {
            log.traces.push_back(std::move(*trace));
        }
    }
    if (log.traces.empty()) {
        return fault(ErrorCode::MissingKey,
                     "No column of the log is known to be something of the circuit: say which is what, for "
                     "example \"Vacuum=A1:vacuum in kPa\".");
    }
    return log;
}

} // namespace pumpwright

#include "core/files/speed_trace_csv.h"

#include "core/files/bench_log_csv.h"
#include "core/files/csv_numbers.h"
#include "core/units/quantity_kind.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

/// Exact: the mile is 1609.344 m.
constexpr std::array kSpeedUnits{std::pair("km/h", 1 / 3.6), std::pair("mph", 1609.344 / 3600),
                                 std::pair("m/s", 1.0)};

tl::unexpected<Error> fault(ErrorCode code, std::string text, const std::string& fileName) {
    return tl::unexpected(Error{code, std::move(text), {fileName, 0, {}}});
}

Result<double> speedFactor(const std::string& unit, const std::string& fileName) {
    const auto found = std::ranges::find(kSpeedUnits, unit, [](const auto& pair) { return pair.first; });
    if (unit.empty() || found != kSpeedUnits.end()) {
        return unit.empty() ? kSpeedUnits.front().second : found->second;
    }
    return fault(ErrorCode::WrongUnit,
                 fmt::format("\"{}\" is no unit of speed that is known here. Use km/h, mph or m/s.", unit),
                 fileName);
}

Result<double> timeFactor(const std::string& unit) {
    return unit.empty() ? 1.0 : parseQuantity("1 " + unit, QuantityKind::Time);
}

std::size_t speedColumn(const CsvNumbers& table, std::size_t timeColumn) {
    const auto named = std::ranges::find_if(table.names, [](const std::string& name) {
        return name.starts_with("speed") || name.starts_with("Speed");
    });
    return named != table.names.end() ? static_cast<std::size_t>(named - table.names.begin())
                                      : (timeColumn + 1) % table.columns.size();
}

Result<SpeedTrace> speedTrace(const CsvNumbers& table, const std::string& fileName) {
    const std::size_t time = timeColumnOf(table);
    const std::size_t speed = speedColumn(table, time);
    const Result<double> second = timeFactor(unitInName(table.names[time]));
    const Result<double> meterPerSecond = speedFactor(unitInName(table.names[speed]), fileName);
    if (!second || !meterPerSecond) {
        return tl::unexpected(second ? meterPerSecond.error() : second.error());
    }
    SpeedTrace trace;
    for (std::size_t row = 0; row < table.columns[time].size(); ++row) {
        const double at_s = *second * table.columns[time][row];
        const double speed_mps = *meterPerSecond * table.columns[speed][row];
        const bool isLater = trace.times_s.empty() || at_s > trace.times_s.back();
        if (std::isfinite(speed_mps) && std::isfinite(at_s) && isLater) {
            trace.times_s.push_back(at_s);
            trace.speeds_mps.push_back(speed_mps);
        }
    }
    if (trace.times_s.size() < 3) {
        return fault(ErrorCode::NotANumber,
                     "There are fewer than three rows with time and speed, time rising.", fileName);
    }
    return trace;
}

} // namespace

Result<SpeedTrace> parseSpeedTrace(std::string_view text, const std::string& fileName) {
    return parseCsvNumbers(text, fileName).and_then([&](const CsvNumbers& table) {
        return speedTrace(table, fileName);
    });
}

Result<SpeedTrace> readSpeedTrace(const std::filesystem::path& path) {
    return readCsvNumbers(path).and_then([&](const CsvNumbers& table) -> Result<SpeedTrace> {
        if (table.rowsInTwo > 1) {
            return fault(ErrorCode::TooLarge,
                         fmt::format("The trace has {} rows, more than are kept. Cut it into parts, or leave "
                                     "columns out.",
                                     table.rows),
                         path.string());
        }
        return speedTrace(table, path.string());
    });
}

} // namespace pumpwright

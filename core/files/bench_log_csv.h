#pragma once

#include "core/circuit/circuit.h"
#include "core/files/csv_numbers.h"
#include "core/study/bench_log.h"
#include "core/units/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// Something that a log may hold: a channel of the simulation.
struct LogTarget {
    ChannelKey key;
    std::string name; ///< as samplesCsv() heads its columns: "A1:vacuum", "M1 current"
    QuantityKind kind = QuantityKind::Number;
};

/// Everything that the simulation of this circuit knows.
std::vector<LogTarget> logTargets(const Circuit& circuit);

/// What one column of a table is.
struct LogColumn {
    std::size_t column = 0; ///< of the table, from 0
    std::string target;     ///< name of a LogTarget
    std::string unit;       ///< symbol; empty: the first that is offered for the quantity
};

/// How a table is read as a log.
struct LogReading {
    std::size_t timeColumn = 0;
    std::string timeUnit;    ///< empty: seconds
    double timeOffset_s = 0; ///< added to the table's times
    std::vector<LogColumn> columns;
};

/// What the names of the columns say by themselves: the first that begins with "time", else the first that
/// never falls, is the time; columns called like a target are it; units stand in brackets, "[kPa]" or
/// "(kPa)".
LogReading guessedReading(const Circuit& circuit, const CsvNumbers& table);

/// The first column whose name begins with "time", else the first that never falls, else the first.
std::size_t timeColumnOf(const CsvNumbers& table);

/// The unit in brackets at the end of a column's name; empty where there is none.
std::string unitInName(std::string_view name);

/// "Vacuum rear [kPa]=A1:vacuum in kPa" or "3=M1 current": name or number, from 1, of a column, what it is,
/// and its unit, unless the name says it. "time" as target makes it the time.
[[nodiscard]] Result<void> addToReading(LogReading& reading, const CsvNumbers& table, std::string_view text);

/// The log in SI, times of the drive. A vacuum given as pressure below zero is turned round; a unit with
/// "abs" behind it is absolute pressure, taken from the plan's ambient. The error says which column is wrong.
[[nodiscard]] Result<BenchLog> benchLog(const Circuit& circuit, const CsvNumbers& table,
                                        const LogReading& reading);

} // namespace pumpwright

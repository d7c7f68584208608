#include "core/files/csv_numbers.h"

#include "core/files/clock_time.h"
#include "core/files/csv_table.h"
#include "core/files/whole_file.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

namespace pumpwright {
namespace {

constexpr double kNoNumber = std::numeric_limits<double>::quiet_NaN();

Error faultAt(ErrorCode code, std::string text, const std::string& fileName, int line) {
    return {code, std::move(text), {fileName, line, {}}};
}

bool isBlank(std::string_view cell) {
    return cell.find_first_not_of(" \t") == std::string_view::npos;
}

/// Numbers or clock times in at least two cells, and in none of them anything else.
bool isDataRow(const std::vector<std::string>& cells, char separator) {
    std::size_t numbers = 0;
    for (const std::string& cell : cells) {
        const bool isNumber = csvNumber(cell, separator) || clockTime(cell);
        if (!isNumber && !isBlank(cell)) {
            return false;
        }
        numbers += isNumber ? 1 : 0;
    }
    return numbers >= 2;
}

/// The least and the greatest of some values, in the order in which they came.
struct Extremes {
    double first = kNoNumber;
    double second = kNoNumber;

    void add(double value) {
        if (std::isnan(first)) {
            first = second = value;
        } else if (value < std::min(first, second)) {
            first = std::max(first, second);
            second = value;
        } else if (value > std::max(first, second)) {
            first = std::min(first, second);
            second = value;
        }
    }
};

/// "Time [hh:mm]" to "Time [s]".
std::string nameInSeconds(std::string_view name) {
    std::string_view bare = name.substr(0, name.find_first_of("[("));
    while (bare.ends_with(' ')) {
        bare.remove_suffix(1);
    }
    return bare.empty() ? std::string("Time [s]") : fmt::format("{} [s]", bare);
}

/// One column as it grows.
class Column {
public:
    double valueOf(const std::string& cell, char separator) {
        if (const std::optional<double> number = csvNumber(cell, separator)) {
            return *number;
        }
        const std::optional<ClockTime> time = clockTime(cell);
        m_isClock = m_isClock || time;
        return time ? m_clock.secondsAt(*time) : kNoNumber;
    }

    void keep(double value) { m_kept.push_back(value); }
    void collect(double value) { m_extremes.add(value); }
    void keepCollected() {
        keep(m_extremes.first);
        keep(m_extremes.second);
        m_extremes = {};
    }

    /// Two rows for every four.
    void halve() {
        for (std::size_t i = 0; i + 3 < m_kept.size(); i += 4) {
            Extremes extremes;
            std::ranges::for_each(std::span(m_kept).subspan(i, 4), [&](double v) { extremes.add(v); });
            m_kept[i / 2] = extremes.first;
            m_kept[i / 2 + 1] = extremes.second;
        }
        m_kept.resize(m_kept.size() / 2);
    }

    std::size_t size() const { return m_kept.size(); }
    bool isClock() const { return m_isClock; }
    std::vector<double> take() { return std::move(m_kept); }

private:
    std::vector<double> m_kept;
    Extremes m_extremes;
    RunningClock m_clock;
    bool m_isClock = false;
};

/// A table as it grows, of which no more is kept than there is room for.
class GrowingTable {
public:
    GrowingTable(const std::vector<std::string>& cells, const std::vector<std::string>& above)
        : m_columns(cells.size()), m_mostRows(kMostCsvValues / cells.size() / 4 * 4) {
        m_table.names = above.size() == cells.size() ? above : std::vector<std::string>(cells.size());
    }

    std::size_t rows() const { return m_table.rows; }

    void add(const std::vector<std::string>& cells, char separator) {
        ++m_table.rows;
        if (cells.size() != m_columns.size()) {
            return;
        }
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const double value = m_columns[i].valueOf(cells[i], separator);
            m_table.rowsInTwo == 1 ? m_columns[i].keep(value) : m_columns[i].collect(value);
        }
        if (m_table.rowsInTwo > 1 && ++m_collected == m_table.rowsInTwo) {
            keepCollected();
        }
        if (m_columns.front().size() == m_mostRows) {
            halve();
        }
    }

    CsvNumbers finished() {
        if (m_collected > 0) {
            keepCollected();
        }
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            m_table.columns.push_back(m_columns[i].take());
            m_table.names[i] = m_columns[i].isClock() ? nameInSeconds(m_table.names[i]) : m_table.names[i];
        }
        return std::move(m_table);
    }

private:
    void keepCollected() {
        std::ranges::for_each(m_columns, &Column::keepCollected);
        m_collected = 0;
    }

    void halve() {
        std::ranges::for_each(m_columns, &Column::halve);
        m_table.rowsInTwo = m_table.rowsInTwo == 1 ? 4 : 2 * m_table.rowsInTwo;
    }

    CsvNumbers m_table;
    std::vector<Column> m_columns;
    std::size_t m_mostRows;
    std::size_t m_collected = 0;
};

std::optional<Error> faultOf(const CsvReader& reader, const std::string& fileName) {
    if (reader.fault()) {
        Error fault = *reader.fault();
        fault.place.file = fileName;
        return fault;
    }
    if (reader.isCutOff()) {
        return faultAt(ErrorCode::NotANumber,
                       "A quotation mark is never closed: the file may have been cut off.", fileName,
                       reader.line());
    }
    return std::nullopt;
}

std::optional<Error> tooMuch(const CsvReader& reader, std::size_t rows, const std::string& fileName) {
    if (reader.cells().size() > kMostCsvColumns) {
        return faultAt(
            ErrorCode::TooLarge,
            fmt::format("There are more than {} columns, the most that are read.", kMostCsvColumns), fileName,
            reader.line());
    }
    if (rows > kMostCsvRows) {
        return faultAt(ErrorCode::TooLarge,
                       fmt::format("There are more than {} rows, the most that are read. Cut the table into "
                                   "parts.",
                                   kMostCsvRows),
                       fileName, reader.line());
    }
    return std::nullopt;
}

} // namespace

Result<CsvNumbers> parseCsvNumbers(std::string_view text, const std::string& fileName) {
    return readCsvNumbers(blocksOf(text), fileName);
}

Result<CsvNumbers> readCsvNumbers(const std::filesystem::path& path) {
    return fileBlocks(path, kMostCsvBytes).and_then([&](std::unique_ptr<TextBlocks> bytes) {
        return readCsvNumbers(std::move(bytes), path.string());
    });
}

Result<CsvNumbers> readCsvNumbers(std::unique_ptr<TextBlocks> bytes, const std::string& fileName) {
    CsvReader reader(inUtf8(std::move(bytes)));
    std::optional<GrowingTable> table;
    std::vector<std::string> above;
    while (reader.next()) {
        if (!table && !isDataRow(reader.cells(), reader.separator())) {
            above = reader.cells();
            continue;
        }
        if (!table) {
            table.emplace(reader.cells(), above);
        }
        if (auto fault = tooMuch(reader, table->rows() + 1, fileName)) {
            return tl::unexpected(std::move(*fault));
        }
        table->add(reader.cells(), reader.separator());
    }
    if (auto fault = faultOf(reader, fileName)) {
        return tl::unexpected(std::move(*fault));
    }
    if (!table) {
        return tl::unexpected(
            faultAt(ErrorCode::NotANumber,
                    "There is no row with two numbers or more, separated by commas, semicolons or tabs.",
                    fileName, 0));
    }
    return table->finished();
}

std::string thinningNote(const CsvNumbers& table) {
    if (table.rowsInTwo == 1) {
        return {};
    }
    return fmt::format(
        "The table has {} rows, more than are kept: of every {} rows, the least and the greatest "
        "value of each column were kept.",
        table.rows, table.rowsInTwo);
}

} // namespace pumpwright

#pragma once

#include "core/units/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// Goes through the rows of a text after RFC 4180, or with semicolons or tabs as spreadsheets of other
/// countries and loggers write it. A byte-order mark of UTF-8 is passed over; so are empty lines. The text
/// must outlive it.
class CsvReader {
public:
    /// `separator` as csvSeparator() finds it.
    CsvReader(std::string_view text, char separator);

    /// To the next row; false after the last.
    bool next();
    const std::vector<std::string>& cells() const { return m_cells; }
    /// In which the row begins, from 1.
    int line() const { return m_line; }
    /// Whether a quotation mark was never closed, so that the last row is not to be trusted.
    bool isCutOff() const { return m_isCutOff; }

private:
    void readRow();
    std::string readCell();
    std::string readQuoted();

    std::string_view m_text;
    char m_separator;
    std::size_t m_at = 0;
    int m_line = 0;
    int m_nextLine = 1;
    bool m_isCutOff = false;
    std::vector<std::string> m_cells;
};

/// Tab, semicolon or comma: the first of them that the first lines hold outside quotation marks.
char csvSeparator(std::string_view text);

/// A number with point, or, where the separator is not the comma, with comma. Nothing of what is none, is not
/// finite, or has both.
std::optional<double> csvNumber(std::string_view cell, char separator);

/// A table of numbers below one row of names. What stands above the names is passed over, rows of another
/// length than theirs too.
struct CsvNumbers {
    std::vector<std::string> names;           ///< empty texts where a file has no names
    std::vector<std::vector<double>> columns; ///< NaN where a cell holds no number
};

inline constexpr std::size_t kMostCsvBytes = 64U << 20U;

/// The error says what is wrong in which line: no row of numbers, a mark that is not closed, UTF-16.
[[nodiscard]] Result<CsvNumbers> parseCsvNumbers(std::string_view text, const std::string& fileName = {});

} // namespace pumpwright

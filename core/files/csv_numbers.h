#pragma once

#include "core/files/text_blocks.h"
#include "core/units/result.h"

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

inline constexpr std::size_t kMostCsvBytes = 256U << 20U;
inline constexpr std::size_t kMostCsvRows = 10'000'000;
inline constexpr std::size_t kMostCsvColumns = 1'000;
/// In all columns together; what a larger table would need is not held.
inline constexpr std::size_t kMostCsvValues = 1U << 20U;

/// A table of numbers below one row of names. What stands above the names is passed over, rows of another
/// length than theirs too. A column of clock times holds seconds since its first row, and its name says so.
struct CsvNumbers {
    std::vector<std::string> names;           ///< empty texts where a file has no names
    std::vector<std::vector<double>> columns; ///< NaN where a cell holds no number
    std::size_t rows = 0;                     ///< of the file
    /// Above 1 the table was too large to be held: of so many rows, the least and the greatest value of each
    /// column are kept, in the order in which they came, as two rows.
    std::size_t rowsInTwo = 1;
};

/// The error says what is wrong in which line: no row of numbers, a mark that is not closed, too much.
[[nodiscard]] Result<CsvNumbers> parseCsvNumbers(std::string_view text, const std::string& fileName = {});
/// The same of a file in UTF-8 or, with a byte-order mark, UTF-16, of which little is held at a time.
[[nodiscard]] Result<CsvNumbers> readCsvNumbers(const std::filesystem::path& path);
[[nodiscard]] Result<CsvNumbers> readCsvNumbers(std::unique_ptr<TextBlocks> bytes,
                                                const std::string& fileName);

/// For people: that not every row was kept. Empty where it was.
std::string thinningNote(const CsvNumbers& table);

} // namespace pumpwright

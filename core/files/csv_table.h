#pragma once

#include "core/files/text_blocks.h"
#include "core/units/result.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// The longest row of a table that comes in blocks.
inline constexpr std::size_t kMostRowBytes = 1U << 20U;

/// Goes through the rows of a text after RFC 4180, or with semicolons or tabs as spreadsheets of other
/// countries and loggers write it. A byte-order mark of UTF-8 is passed over; so are empty lines.
class CsvReader {
public:
    /// `separator` as csvSeparator() finds it. The text must outlive the reader.
    CsvReader(std::string_view text, char separator);
    /// Holds no more of the text than a block and a row. The separator is found in the first block.
    explicit CsvReader(std::unique_ptr<TextBlocks> blocks);

    CsvReader(const CsvReader&) = delete;
    CsvReader& operator=(const CsvReader&) = delete;

    /// To the next row; false after the last, and where the text cannot be read on.
    bool next();
    const std::vector<std::string>& cells() const { return m_cells; }
    char separator() const { return m_separator; }
    /// In which the row begins, from 1.
    int line() const { return m_line; }
    /// Whether a quotation mark was never closed, so that the last row is not to be trusted.
    bool isCutOff() const { return m_isCutOff; }
    /// Why the text could not be read to its end.
    const std::optional<Error>& fault() const { return m_fault; }

private:
    bool readWholeRow();
    bool readOn(std::size_t keepFrom);
    void readRow();
    void readCell(std::string& cell);
    void readQuoted(std::string& cell);

    std::unique_ptr<TextBlocks> m_blocks; ///< none where the whole text is known
    std::string m_buffer;                 ///< what of the blocks is not read yet
    std::string_view m_text;
    char m_separator = ',';
    std::size_t m_at = 0;
    int m_line = 0;
    int m_nextLine = 1;
    bool m_isCutOff = false;
    bool m_isWhole = true; ///< nothing follows after m_text
    std::optional<Error> m_fault;
    std::vector<std::string> m_cells;
};

/// Tab, semicolon or comma: the first of them that the first lines hold outside quotation marks.
char csvSeparator(std::string_view text);

/// A number with point, or, where the separator is not the comma, with comma. Nothing of what is none, is not
/// finite, or has both.
std::optional<double> csvNumber(std::string_view cell, char separator);

} // namespace pumpwright

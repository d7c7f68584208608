#include "core/files/csv_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>

namespace pumpwright {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
constexpr int kLinesLookedAt = 50;

bool isLineEnd(char c) {
    return c == '\n' || c == '\r';
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) {
        text.remove_prefix(1);
    }
    while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) {
        text.remove_suffix(1);
    }
    return text;
}

Error faultAt(ErrorCode code, std::string text, const std::string& fileName, int line) {
    return {code, std::move(text), {fileName, line, {}}};
}

/// Numbers in at least two cells, and in none of them anything else.
bool isDataRow(const std::vector<std::string>& cells, char separator) {
    std::size_t numbers = 0;
    for (const std::string& cell : cells) {
        const bool isNumber = csvNumber(cell, separator).has_value();
        if (!isNumber && !trimmed(cell).empty()) {
            return false;
        }
        numbers += isNumber ? 1 : 0;
    }
    return numbers >= 2;
}

void addRow(CsvNumbers& table, const std::vector<std::string>& cells, char separator) {
    if (cells.size() != table.columns.size()) {
        return;
    }
    for (std::size_t i = 0; i < cells.size(); ++i) {
        table.columns[i].push_back(
            csvNumber(cells[i], separator).value_or(std::numeric_limits<double>::quiet_NaN()));
    }
}

} // namespace

CsvReader::CsvReader(std::string_view text, char separator) : m_text(text), m_separator(separator) {
    if (m_text.starts_with(kByteOrderMark)) {
        m_at = kByteOrderMark.size();
    }
}

bool CsvReader::next() {
    do {
        if (m_at >= m_text.size()) {
            return false;
        }
        readRow();
    } while (m_cells.size() == 1 && trimmed(m_cells.front()).empty());
    return true;
}

void CsvReader::readRow() {
    m_line = m_nextLine;
    m_cells.clear();
    m_cells.push_back(readCell());
    while (m_at < m_text.size() && m_text[m_at] == m_separator) {
        ++m_at;
        m_cells.push_back(readCell());
    }
    if (m_text.substr(m_at, 2) == "\r\n") {
        ++m_at;
    }
    if (m_at < m_text.size()) {
        ++m_at;
        ++m_nextLine;
    }
}

std::string CsvReader::readCell() {
    if (m_at < m_text.size() && m_text[m_at] == '"') {
        return readQuoted();
    }
    const std::size_t begin = m_at;
    while (m_at < m_text.size() && m_text[m_at] != m_separator && !isLineEnd(m_text[m_at])) {
        ++m_at;
    }
    return std::string(m_text.substr(begin, m_at - begin));
}

std::string CsvReader::readQuoted() {
    std::string cell;
    for (++m_at; m_at < m_text.size(); ++m_at) {
        if (m_text[m_at] == '"') {
            if (m_text.substr(m_at, 2) != "\"\"") {
                break;
            }
            ++m_at;
        }
        m_nextLine += m_text[m_at] == '\n' ? 1 : 0;
        cell += m_text[m_at];
    }
    m_isCutOff = m_at >= m_text.size();
    ++m_at;
    while (m_at < m_text.size() && m_text[m_at] != m_separator && !isLineEnd(m_text[m_at])) {
        cell += m_text[m_at++]; // what stands behind the mark, against the standard
    }
    m_at = std::min(m_at, m_text.size());
    return cell;
}

char csvSeparator(std::string_view text) {
    bool quoted = false;
    bool semicolon = false;
    int lines = 0;
    for (const char c : text) {
        quoted = c == '"' ? !quoted : quoted;
        if (c == '\t' && !quoted) {
            return '\t';
        }
        semicolon = semicolon || (c == ';' && !quoted);
        lines += c == '\n' ? 1 : 0;
        if (lines == kLinesLookedAt) {
            break;
        }
    }
    return semicolon ? ';' : ',';
}

std::optional<double> csvNumber(std::string_view cell, char separator) {
    std::string text(trimmed(cell));
    if (separator != ',' && text.find('.') == std::string::npos) {
        std::ranges::replace(text, ',', '.');
    }
    const bool plus = text.size() > 1 && text.front() == '+' && text[1] != '-';
    double value = 0;
    const char* end = text.data() + text.size();
    const auto [stop, fault] = std::from_chars(text.data() + (plus ? 1 : 0), end, value);
    return fault == std::errc() && stop == end && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

Result<CsvNumbers> parseCsvNumbers(std::string_view text, const std::string& fileName) {
    if (text.starts_with("\xFF\xFE") || text.starts_with("\xFE\xFF")) {
        return tl::unexpected(faultAt(
            ErrorCode::NotANumber, "The table is in UTF-16. Save it as UTF-8, and open that.", fileName, 1));
    }
    const char separator = csvSeparator(text);
    CsvReader reader(text, separator);
    CsvNumbers table;
    std::vector<std::string> above;
    while (reader.next()) {
        const bool begun = !table.columns.empty();
        if (!begun && !isDataRow(reader.cells(), separator)) {
            above = reader.cells();
            continue;
        }
        if (!begun) {
            table.columns.resize(reader.cells().size());
            table.names = above.size() == reader.cells().size()
                              ? above
                              : std::vector<std::string>(reader.cells().size());
        }
        addRow(table, reader.cells(), separator);
    }
    if (reader.isCutOff()) {
        return tl::unexpected(faultAt(ErrorCode::NotANumber,
                                      "A quotation mark is never closed: the file may have been cut off.",
                                      fileName, reader.line()));
    }
    if (table.columns.empty()) {
        return tl::unexpected(
            faultAt(ErrorCode::NotANumber,
                    "There is no row with two numbers or more, separated by commas, semicolons or tabs.",
                    fileName, 0));
    }
    return table;
}

} // namespace pumpwright

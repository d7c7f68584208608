#include "core/files/csv_table.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace pumpwright {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
constexpr int kLinesLookedAt = 50;
constexpr std::size_t kLongestNumber = 64;

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

std::optional<double> numberWithPoint(std::string_view text) {
    const bool plus = text.size() > 1 && text.front() == '+' && text[1] != '-';
    double value = 0;
    const char* end = text.data() + text.size();
    const auto [stop, fault] = std::from_chars(text.data() + (plus ? 1 : 0), end, value);
    return fault == std::errc() && stop == end && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

} // namespace

CsvReader::CsvReader(std::string_view text, char separator) : m_text(text), m_separator(separator) {
    if (m_text.starts_with(kByteOrderMark)) {
        m_at = kByteOrderMark.size();
    }
}

CsvReader::CsvReader(std::unique_ptr<TextBlocks> blocks) : m_blocks(std::move(blocks)), m_isWhole(false) {
    if (readOn(0)) {
        m_separator = csvSeparator(m_text);
        m_at = m_text.starts_with(kByteOrderMark) ? kByteOrderMark.size() : 0;
    }
}

bool CsvReader::next() {
    do {
        if (!readWholeRow()) {
            return false;
        }
    } while (m_cells.size() == 1 && trimmed(m_cells.front()).empty());
    return true;
}

/// A row that touches the end of what is known may go on behind it: it is read again with what follows.
bool CsvReader::readWholeRow() {
    std::size_t begin = m_at;
    const int line = m_nextLine;
    for (;;) {
        if (m_at < m_text.size()) {
            m_isCutOff = false;
            readRow();
        }
        if (m_isWhole || m_at < m_text.size()) {
            return m_at > begin;
        }
        if (!readOn(begin)) {
            return false;
        }
        begin = m_at = 0;
        m_nextLine = line;
    }
}

bool CsvReader::readOn(std::size_t keepFrom) {
    m_buffer.erase(0, keepFrom);
    const Result<std::string_view> block = m_blocks->next();
    if (!block) {
        m_fault = block.error();
    } else if (m_buffer.size() > kMostRowBytes) {
        m_fault = Error{ErrorCode::TooLarge,
                        "A row is longer than 1 MiB, the most that is read: this may be no table, or a "
                        "quotation mark is never closed.",
                        {{}, m_line, {}}};
    } else {
        m_isWhole = block->empty();
        m_buffer += *block;
    }
    m_text = m_buffer;
    return !m_fault;
}

void CsvReader::readRow() {
    m_line = m_nextLine;
    std::size_t count = 0;
    for (bool more = true; more; ++count) {
        if (count == m_cells.size()) {
            m_cells.emplace_back();
        }
        readCell(m_cells[count]);
        more = m_at < m_text.size() && m_text[m_at] == m_separator;
        m_at += more ? 1 : 0;
    }
    m_cells.resize(count);
    if (m_text.substr(m_at, 2) == "\r\n") {
        ++m_at;
    }
    if (m_at < m_text.size()) {
        ++m_at;
        ++m_nextLine;
    }
}

void CsvReader::readCell(std::string& cell) {
    if (m_at < m_text.size() && m_text[m_at] == '"') {
        readQuoted(cell);
        return;
    }
    const std::size_t begin = m_at;
    while (m_at < m_text.size() && m_text[m_at] != m_separator && !isLineEnd(m_text[m_at])) {
        ++m_at;
    }
    cell.assign(m_text, begin, m_at - begin);
}

void CsvReader::readQuoted(std::string& cell) {
    cell.clear();
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
    const std::string_view text = trimmed(cell);
    const bool comma = separator != ',' && text.find(',') != std::string_view::npos;
    if (!comma) {
        return numberWithPoint(text);
    }
    if (text.size() > kLongestNumber || text.find('.') != std::string_view::npos) {
        return std::nullopt;
    }
    std::array<char, kLongestNumber> point{};
    std::ranges::replace_copy(text, point.begin(), ',', '.');
    return numberWithPoint({point.data(), text.size()});
}

} // namespace pumpwright

#include "core/files/csv_text.h"

#include <charconv>
#include <string_view>

namespace pumpwright {
namespace {

bool isNumber(std::string_view text) {
    text.remove_prefix(text.starts_with('+') ? 1 : 0);
    double value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    return read.ec == std::errc() && read.ptr == text.data() + text.size();
}

/// A spreadsheet takes a text that begins like this for a formula. An apostrophe before it keeps it a text.
bool looksLikeFormula(std::string_view text) {
    return text.size() > 1 && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos &&
           !isNumber(text);
}

} // namespace

std::string csvLine(const std::vector<std::string>& cells) {
    std::string line;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        line += i > 0 ? "," : "";
        const std::string cell = (looksLikeFormula(cells[i]) ? "'" : "") + cells[i];
        if (cell.find_first_of(",\"\r\n") == std::string::npos) {
            line += cell;
            continue;
        }
        line += '"';
        for (const char c : cell) {
            line += c == '"' ? std::string("\"\"") : std::string(1, c);
        }
        line += '"';
    }
    return line + "\n";
}

std::string csvTable(const SheetTable& table) {
    std::string text = csvLine(table.columns);
    for (const std::vector<std::string>& row : table.rows) {
        text += csvLine(row);
    }
    return text;
}

} // namespace pumpwright

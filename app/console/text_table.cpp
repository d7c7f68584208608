#include "app/console/text_table.h"

#include <algorithm>
#include <charconv>
#include <numeric>

namespace pumpwright {
namespace {

using Cells = std::vector<std::string>;

constexpr std::size_t kGap = 2;
constexpr std::size_t kNarrowest = 6;

/// Characters, counted as the bytes that do not continue a UTF-8 sequence.
std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

/// The bytes of the first `count` characters.
std::size_t bytesOf(std::string_view text, std::size_t count) {
    std::size_t at = 0;
    while (at < text.size() && characters(text.substr(0, at + 1)) <= count) {
        ++at;
    }
    return at;
}

/// Takes one line of at most `width` characters off the front; a word that is longer is cut.
std::string takeLine(std::string_view& text, std::size_t width) {
    if (characters(text) <= width) {
        return std::string(std::exchange(text, {}));
    }
    const std::size_t most = bytesOf(text, width);
    const std::size_t space = text.substr(0, most + 1).rfind(' ');
    const bool cut = space == std::string_view::npos || space == 0;
    std::string line(text.substr(0, cut ? most : space));
    text.remove_prefix(cut ? most : space + 1);
    return line;
}

std::vector<std::string> linesOf(std::string_view text, std::size_t width) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        lines.push_back(takeLine(text, width));
    }
    return lines;
}

std::vector<std::size_t> columnWidths(const SheetTable& table) {
    std::vector<std::size_t> widths;
    for (const std::string& head : table.columns) {
        widths.push_back(characters(head));
    }
    for (const Cells& row : table.rows) {
        for (std::size_t i = 0; i < widths.size(); ++i) {
            widths[i] = std::max(widths[i], characters(row[i]));
        }
    }
    const auto total = [&] {
        return std::accumulate(widths.begin(), widths.end(), kGap * (widths.size() - 1));
    };
    while (!widths.empty() && total() > kTextWidth) {
        const auto widest = std::ranges::max_element(widths);
        if (*widest <= kNarrowest) {
            break;
        }
        --*widest;
    }
    return widths;
}

void appendCell(std::string& line, const std::string& text, std::size_t width, bool right) {
    const std::string padding(width - std::min(width, characters(text)), ' ');
    line += right ? padding + text : text + padding;
}

std::string rowText(const Cells& cells, const std::vector<std::size_t>& widths,
                    const std::vector<bool>& numeric) {
    std::vector<std::vector<std::string>> columns;
    std::size_t height = 0;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        columns.push_back(linesOf(cells[i], widths[i]));
        height = std::max(height, columns.back().size());
    }
    std::string text;
    for (std::size_t row = 0; row < height; ++row) {
        std::string line;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const std::string cell = row < columns[i].size() ? columns[i][row] : "";
            line += i > 0 ? std::string(kGap, ' ') : "";
            appendCell(line, cell, widths[i], numeric[i]);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
    }
    return text;
}

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

std::string textTable(const SheetTable& table) {
    const std::vector<std::size_t> widths = columnWidths(table);
    std::string text = table.title + "\n" + rowText(table.columns, widths, table.numeric);
    text +=
        std::string(std::accumulate(widths.begin(), widths.end(), kGap * (widths.size() - 1)), '-') + "\n";
    for (const Cells& row : table.rows) {
        text += rowText(row, widths, table.numeric);
    }
    return text;
}

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
    for (const Cells& row : table.rows) {
        text += csvLine(row);
    }
    return text;
}

std::string wrapped(std::string_view text, std::size_t width, std::string_view indent) {
    std::string result;
    bool first = true;
    for (const std::string& line : linesOf(text, width - characters(indent))) {
        result += first ? line : "\n" + std::string(indent) + line;
        first = false;
    }
    return result;
}

std::string tableInForm(const SheetTable& table, OutputForm form) {
    return form == OutputForm::Csv ? csvTable(table) : textTable(table);
}

} // namespace pumpwright

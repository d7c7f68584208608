#include "app/console/text_table.h"

#include "core/files/csv_text.h"

#include <algorithm>
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

std::size_t longestWord(std::string_view text) {
    std::size_t longest = 0;
    while (!text.empty()) {
        const std::string_view word = text.substr(0, text.find(' '));
        longest = std::max(longest, characters(word));
        text.remove_prefix(std::min(text.size(), word.size() + 1));
    }
    return longest;
}

struct ColumnWidth {
    std::size_t width = 0; ///< every cell on one line
    std::size_t least = 0; ///< no word broken
};

ColumnWidth widthOf(const SheetTable& table, std::size_t column) {
    ColumnWidth width{characters(table.columns[column]), longestWord(table.columns[column])};
    for (const Cells& row : table.rows) {
        width.width = std::max(width.width, characters(row[column]));
        width.least = std::max(width.least, longestWord(row[column]));
    }
    return width;
}

/// Takes from the widest column, and from one that can give without breaking a word as long as there is one.
/// False where none can give.
bool narrowOne(std::vector<ColumnWidth>& columns) {
    const auto spare = [](const ColumnWidth& column) {
        return std::pair(column.width > column.least, column.width);
    };
    const auto widest = std::ranges::max_element(columns, {}, spare);
    if (widest == columns.end() || widest->width <= kNarrowest) {
        return false;
    }
    --widest->width;
    return true;
}

std::vector<std::size_t> columnWidths(const SheetTable& table) {
    std::vector<ColumnWidth> columns;
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        columns.push_back(widthOf(table, i));
    }
    const auto total = [&] {
        return std::accumulate(columns.begin(), columns.end(),
                               kGap * (std::max<std::size_t>(columns.size(), 1) - 1),
                               [](std::size_t sum, const ColumnWidth& column) { return sum + column.width; });
    };
    while (total() > kTextWidth && narrowOne(columns)) {
    }
    std::vector<std::size_t> widths;
    for (const ColumnWidth& column : columns) {
        widths.push_back(column.width);
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

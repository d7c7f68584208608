// The input is cells, parted by the byte 0x1f; a reader after RFC 4180, section 2, must find them again in
// the line that is written of them.

#include "core/files/csv_text.h"
#include "tests/fuzz/promise.h"

#include <algorithm>
#include <vector>

using namespace pumpwright;

namespace {

constexpr char kParting = '\x1f';

/// The cells of one record that ends with a line feed. Quoted cells may hold anything, others no quote, comma
/// or break.
std::vector<std::string> cellsOf(const std::string& line) {
    std::vector<std::string> cells(1);
    bool quoted = false;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const char c = line[i];
        if (quoted && c == '"' && line[i + 1] == '"') {
            cells.back() += line[++i];
        } else if (c == '"') {
            require(quoted || cells.back().empty(), "a quote begins a cell");
            quoted = !quoted;
            require(quoted || line[i + 1] == ',' || i + 2 == line.size(), "a closing quote ends a cell");
        } else if (quoted || (c != ',' && c != '\n' && c != '\r')) {
            cells.back() += c;
        } else {
            require(c == ',', "a break stands in quotes");
            cells.emplace_back();
        }
    }
    require(!quoted && line.back() == '\n', "a record ends outside quotes");
    return cells;
}

std::vector<std::string> parted(const std::string& text) {
    std::vector<std::string> cells(1);
    for (const char c : text) {
        if (c == kParting) {
            cells.emplace_back();
        } else {
            cells.back() += c;
        }
    }
    return cells;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::vector<std::string> cells = parted(textOf(data, size));
    const std::vector<std::string> read = cellsOf(csvLine(cells));
    require(read.size() == cells.size(), "as many cells are read as were written");
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const bool kept = read[i] == cells[i];
        require(kept || read[i] == "'" + cells[i], "a cell is read as it was written, or marked as a text");
        const bool formula =
            cells[i].size() > 1 && std::string_view("=@\t\r").find(cells[i][0]) != std::string_view::npos;
        require(!formula || !kept, "what a spreadsheet takes for a formula is marked as a text");
    }
    return 0;
}

#include "app/desktop/studies/spoken_table.h"

#include "app/desktop/shown_text.h"

#include <algorithm>

namespace pumpwright {
namespace {

/// The head of the one column that holds what somebody wrote: the names of trials.
constexpr std::string_view kWritten = "Idea";

std::string spokenWords(const std::string& english) {
    return english.empty() ? english : translatedWords(english).toStdString();
}

/// Words as they stand, or two of which the second is behind a comma: "Pump runs for, s", "yes, good".
std::string spoken(const std::string& english) {
    std::string whole = spokenWords(english);
    const auto comma = english.rfind(", ");
    if (whole != english || comma == std::string::npos) {
        return whole;
    }
    return spokenWords(english.substr(0, comma)) + ", " + spokenWords(english.substr(comma + 2));
}

} // namespace

std::string inUsersLanguage(const Text& sentence) {
    return translated(sentence).toStdString();
}

SheetTable spokenTable(SheetTable table) {
    for (auto& row : table.rows) {
        for (std::size_t i = 0; i < row.size() && i < table.columns.size(); ++i) {
            if (table.columns[i] != kWritten) {
                row[i] = spoken(row[i]);
            }
        }
    }
    std::ranges::transform(table.columns, table.columns.begin(), spoken);
    table.title = spoken(table.title);
    return table;
}

} // namespace pumpwright

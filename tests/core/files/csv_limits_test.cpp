// The limits of tables, each just below, at it and just beyond, and what memory they take.

#include "core/files/csv_numbers.h"
#include "core/files/csv_table.h"
#include "tests/support/catch.h"
#include "tests/support/temp_folder.h"

#include <fmt/format.h>

#include <fstream>

using namespace pumpwright;

namespace {

/// "VmHWM" and "VmRSS" of this program, in bytes.
std::size_t memory(std::string_view what) {
    std::ifstream status("/proc/self/status");
    std::string word;
    std::size_t kibibytes = 0;
    while (status >> word && word != what) {
    }
    status >> kibibytes;
    REQUIRE(status.good());
    return kibibytes << 10U;
}

/// What is held at most from now on, above what is held now.
class PeakOfMemory {
public:
    PeakOfMemory() : m_before(memory("VmRSS:")) {
        std::ofstream("/proc/self/clear_refs") << 5; // lets the peak begin anew
    }
    std::size_t bytes() const { return memory("VmHWM:") - std::min(memory("VmHWM:"), m_before); }

private:
    std::size_t m_before;
};

std::string rowsOfBytes(std::size_t bytes) {
    const std::string row = "1,2" + std::string(1020, ' ') + "\n";
    std::string text;
    while (text.size() + row.size() <= bytes) {
        text += row;
    }
    return text + std::string(bytes - text.size(), '\n');
}

std::string tableOfRows(std::size_t rows) {
    std::string text;
    for (std::size_t i = 0; i < rows; ++i) {
        text += "1,2\n";
    }
    return text;
}

ErrorCode refusal(std::string_view text) {
    const auto table = parseCsvNumbers(text);
    REQUIRE_FALSE(table);
    return table.error().code;
}

} // namespace

TEST_CASE("a table may have 256 MiB, of which little is held at a time", "[files][csv-limits]") {
    const TempFolder folder;
    const std::filesystem::path path = folder.write("log.csv", rowsOfBytes(kMostCsvBytes - 1));
    const PeakOfMemory peak;
    CHECK(readCsvNumbers(path));
    std::ofstream(path, std::ios::app) << '\n';
    CHECK(readCsvNumbers(path));
    std::ofstream(path, std::ios::app) << '\n';
    const auto larger = readCsvNumbers(path);
    REQUIRE_FALSE(larger);
    CHECK(larger.error().code == ErrorCode::TooLarge);
    CHECK(larger.error().text.find("256 MiB") != std::string::npos);
    CHECK(peak.bytes() < std::size_t{64} << 20U);
}

TEST_CASE("a table may have ten million rows, of which the extremes are held", "[files][csv-limits]") {
    std::string text = tableOfRows(kMostCsvRows - 1);
    const PeakOfMemory peak;
    CHECK(parseCsvNumbers(text)->rows == kMostCsvRows - 1);
    text += "1,2";
    CHECK(parseCsvNumbers(text)->rows == kMostCsvRows);
    text += "\n3,4";
    CHECK(refusal(text) == ErrorCode::TooLarge);
    CHECK(peak.bytes() < std::size_t{64} << 20U);
}

TEST_CASE("a table may have a thousand columns", "[files][csv-limits]") {
    const auto columns = [](std::size_t count) {
        std::string text = "0";
        for (std::size_t i = 1; i < count; ++i) {
            text += ",1";
        }
        return text;
    };
    CHECK(parseCsvNumbers(columns(kMostCsvColumns - 1)));
    CHECK(parseCsvNumbers(columns(kMostCsvColumns))->columns.size() == kMostCsvColumns);
    CHECK(refusal(columns(kMostCsvColumns + 1)) == ErrorCode::TooLarge);
}

TEST_CASE("a row without end is refused, not held", "[files][csv-limits]") {
    CHECK(refusal("1,2\n\"" + std::string(4 * kMostRowBytes, '\n')) == ErrorCode::TooLarge);
    CHECK(refusal("1,2\n" + std::string(4 * kMostRowBytes, '3')) == ErrorCode::TooLarge);
    CHECK(parseCsvNumbers("1,2\n" + std::string(kMostRowBytes / 2, '3')));
}

// Tables of numbers as loggers write them: common practice, no published source.

#include "core/files/csv_numbers.h"
#include "tests/support/catch.h"
#include "tests/support/temp_folder.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

using namespace pumpwright;

TEST_CASE("numbers are found below a preamble and their names", "[files][csv-numbers]") {
    const auto table = parseCsvNumbers(
        "Logger 7;;\nstarted;today;\nTime [s];Vacuum [kPa];U [V]\n0;1,5;12\n1;;12,1\n2;3\n3;x;1\n");
    REQUIRE(table);
    CHECK(table->names == std::vector<std::string>{"Time [s]", "Vacuum [kPa]", "U [V]"});
    CHECK(table->columns[0] == std::vector<double>{0, 1, 3}); // the short row is passed over
    CHECK(table->columns[1][0] == 1.5);
    CHECK(std::isnan(table->columns[1][1]));
    CHECK(table->columns[2][1] == 12.1);
}

TEST_CASE("a table without names has columns without names", "[files][csv-numbers]") {
    const auto table = parseCsvNumbers("0,1\n1,2\n");
    REQUIRE(table);
    CHECK(table->names == std::vector<std::string>{"", ""});
    CHECK(table->columns[1].size() == 2);
}

TEST_CASE("what is no table of numbers is refused with a reason", "[files][csv-numbers]") {
    CHECK_FALSE(parseCsvNumbers(""));
    CHECK_FALSE(parseCsvNumbers("name,colour\nK1,red\n"));
    const auto cutOff = parseCsvNumbers("t,u\n0,1\n1,\"2\n", "log.csv");
    REQUIRE_FALSE(cutOff);
    CHECK(cutOff.error().place.line == 3);
}

TEST_CASE("clock times become seconds since the first, and the column's name says so",
          "[files][csv-numbers]") {
    const auto day = parseCsvNumbers("Time (hh:mm:ss),U [V]\n23:59:59.5,12\n00:00:00.25,12.1\n");
    REQUIRE(day);
    CHECK(day->names == std::vector<std::string>{"Time [s]", "U [V]"});
    CHECK(day->columns[0] == std::vector<double>{0, 0.75});
    const auto dates = parseCsvNumbers("when;U\n2024-02-29T23:59:58;12,5\n2024-03-01T00:00:00,5;12\n");
    REQUIRE(dates);
    CHECK(dates->names[0] == "when [s]");
    CHECK(dates->columns[0] == std::vector<double>{0, 2.5});
    CHECK(dates->columns[1] == std::vector<double>{12.5, 12});
    const auto nameless = parseCsvNumbers("2024-02-29 10:00:00\t1\n2024-02-29 10:00:01\t2\n");
    REQUIRE(nameless);
    CHECK(nameless->names[0] == "Time [s]");
}

TEST_CASE("a table in UTF-16 that ends within a character says so", "[files][csv-numbers]") {
    const auto cutOff = parseCsvNumbers(std::string_view("\xFF\xFE"
                                                         "1\0,\0"
                                                         "2\0\n\0"
                                                         "3",
                                                         11),
                                        "log.csv");
    REQUIRE_FALSE(cutOff);
    CHECK(cutOff.error().text.find("cut off") != std::string::npos);
    CHECK(cutOff.error().place.file == "log.csv");
}

TEST_CASE("of a table too large to be held the extremes stay, in their order, and people are told",
          "[files][csv-numbers]") {
    constexpr std::size_t kRows = kMostCsvValues * 3;
    std::string text = "Time [s],p,gaps\n";
    for (std::size_t i = 0; i < kRows; ++i) {
        const int p = i == 1'000'003 ? -7 : i == 2'000'001 ? 9 : 1;
        text += fmt::format("{},{},{}\n", i, p, i == 77 ? "5" : "");
    }
    const auto table = parseCsvNumbers(text);
    REQUIRE(table);
    CHECK(table->rows == kRows);
    const std::vector<double>& times = table->columns[0];
    CHECK(3 * times.size() <= kMostCsvValues);
    CHECK(6 * times.size() >= kMostCsvValues);
    CHECK(std::ranges::is_sorted(times));
    CHECK(times.front() == 0);
    CHECK(times.back() == kRows - 1);
    const std::vector<double>& p = table->columns[1];
    const auto low = std::ranges::find(p, -7);
    const auto high = std::ranges::find(p, 9);
    REQUIRE((low != p.end() && high != p.end()));
    const auto timeOf = [&](auto at) { return times[static_cast<std::size_t>(at - p.begin())]; };
    CHECK(std::abs(timeOf(low) - 1'000'003) <= static_cast<double>(table->rowsInTwo));
    CHECK(std::abs(timeOf(high) - 2'000'001) <= static_cast<double>(table->rowsInTwo));
    CHECK(std::ranges::count(table->columns[2], 5) == 2); // both the least and the greatest of its rows
    CHECK(thinningNote(*table).find(fmt::format("{} rows, more than are kept", kRows)) != std::string::npos);
}

TEST_CASE("a table that can be held is kept row by row", "[files][csv-numbers]") {
    const auto table = parseCsvNumbers("t,u\n0,3\n1,2\n2,3\n3,1\n");
    REQUIRE(table);
    CHECK(table->columns[1] == std::vector<double>{3, 2, 3, 1});
    CHECK(table->rows == 4);
    CHECK(thinningNote(*table).empty());
}

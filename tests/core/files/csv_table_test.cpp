// RFC 4180: rows, quotes, quotes within quotes, line ends within quotes. Other separators and decimal commas
// are common practice of spreadsheets, no published source.

#include "core/files/csv_table.h"
#include "tests/support/catch.h"

#include <cmath>

using namespace pumpwright;

namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rowsOf(std::string_view text, char separator = ',') {
    CsvReader reader(text, separator);
    Rows rows;
    while (reader.next()) {
        rows.push_back(reader.cells());
    }
    return rows;
}

} // namespace

TEST_CASE("rows and quotes are those of RFC 4180", "[files][csv-table]") {
    CHECK(rowsOf("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}});
    CHECK(rowsOf("aaa,bbb") == Rows{{"aaa", "bbb"}}); // no last line end
    CHECK(rowsOf("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nz,y,x") == Rows{{"aaa", "b\r\nbb", "ccc"}, {"z", "y", "x"}});
    CHECK(rowsOf("\"aaa\",\"b\"\"bb\",\"ccc\"") == Rows{{"aaa", "b\"bb", "ccc"}});
    CHECK(rowsOf("a,,\n,b,") == Rows{{"a", "", ""}, {"", "b", ""}});
}

TEST_CASE("lines end as any system ends them, and empty ones are passed over", "[files][csv-table]") {
    CHECK(rowsOf("a,b\n\n\nc,d\n") == Rows{{"a", "b"}, {"c", "d"}});
    CHECK(rowsOf("a,b\rc,d\r") == Rows{{"a", "b"}, {"c", "d"}});
    CHECK(rowsOf("\xEF\xBB\xBF"
                 "a,b") == Rows{{"a", "b"}});
    CHECK(rowsOf("").empty());
}

TEST_CASE("a row knows the line in which it begins", "[files][csv-table]") {
    CsvReader reader("a,\"1\n2\n3\"\n\nb,c\n", ',');
    REQUIRE(reader.next());
    CHECK(reader.line() == 1);
    REQUIRE(reader.next());
    CHECK(reader.line() == 5);
    CHECK_FALSE(reader.isCutOff());
}

TEST_CASE("the separator is found, not asked for", "[files][csv-table]") {
    CHECK(csvSeparator("a,b\n1,2\n") == ',');
    CHECK(csvSeparator("a;b\n1,5;2,5\n") == ';');
    CHECK(csvSeparator("a\tb\n1,5\t2;5\n") == '\t');
    CHECK(csvSeparator("\"a;b\",c\n1,2\n") == ',');
}

TEST_CASE("numbers are read with the decimal sign that the separator leaves", "[files][csv-table]") {
    CHECK(csvNumber(" 1.5 ", ',') == 1.5);
    CHECK(csvNumber("1,5", ';') == 1.5);
    CHECK(csvNumber("-1.5e-3", ';') == -1.5e-3);
    CHECK(csvNumber("+2", ',') == 2);
    for (const char* none : {"", "1 5", "1,5,2", "1.234,5", "nan", "inf", "1e999", "+-1", "1.5V", "0x10"}) {
        CAPTURE(none);
        CHECK_FALSE(csvNumber(none, ';').has_value());
    }
}

TEST_CASE("numbers are found below a preamble and their names", "[files][csv-table]") {
    const auto table = parseCsvNumbers(
        "Logger 7;;\nstarted;today;\nTime [s];Vacuum [kPa];U [V]\n0;1,5;12\n1;;12,1\n2;3\n3;x;1\n");
    REQUIRE(table);
    CHECK(table->names == std::vector<std::string>{"Time [s]", "Vacuum [kPa]", "U [V]"});
    CHECK(table->columns[0] == std::vector<double>{0, 1, 3}); // the short row is passed over
    CHECK(table->columns[1][0] == 1.5);
    CHECK(std::isnan(table->columns[1][1]));
    CHECK(table->columns[2][1] == 12.1);
}

TEST_CASE("a table without names has columns without names", "[files][csv-table]") {
    const auto table = parseCsvNumbers("0,1\n1,2\n");
    REQUIRE(table);
    CHECK(table->names == std::vector<std::string>{"", ""});
    CHECK(table->columns[1].size() == 2);
}

TEST_CASE("what is no table of numbers is refused with a reason", "[files][csv-table]") {
    CHECK_FALSE(parseCsvNumbers(""));
    CHECK_FALSE(parseCsvNumbers("name,colour\nK1,red\n"));
    const auto wide = parseCsvNumbers(std::string_view("\xFF\xFEt\0", 4), "log.csv");
    REQUIRE_FALSE(wide);
    CHECK(wide.error().text.find("UTF-8") != std::string::npos);
    const auto cutOff = parseCsvNumbers("t,u\n0,1\n1,\"2\n", "log.csv");
    REQUIRE_FALSE(cutOff);
    CHECK(cutOff.error().place.line == 3);
}

// RFC 4180: rows, quotes, quotes within quotes, line ends within quotes. Other separators and decimal commas
// are common practice of spreadsheets, no published source.

#include "core/files/csv_table.h"
#include "tests/support/catch.h"

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

#include "core/files/csv_text.h"
#include "tests/support/catch.h"

using namespace pumpwright;

TEST_CASE("CSV cells are quoted where they must be, as RFC 4180 says", "[files][csv]") {
    CHECK(csvLine({"plain", "1.5"}) == "plain,1.5\n");
    CHECK(csvLine({"a,b", "say \"x\"", "two\nlines"}) == "\"a,b\",\"say \"\"x\"\"\",\"two\nlines\"\n");
    CHECK(csvLine({"", ""}) == ",\n");
}

TEST_CASE("texts that a spreadsheet would run stay texts, numbers and signs stay as they are",
          "[files][csv]") {
    CHECK(csvLine({"=1+1", "-1.5", "+2e3", "-", "+"}) == "'=1+1,-1.5,+2e3,-,+\n");
    CHECK(csvLine({"@a", "-cmd|' /C x'!A0"}) == "'@a,'-cmd|' /C x'!A0\n");
}

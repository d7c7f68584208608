// The grammar of RFC 4180, section 2, at its corners, and what it leaves open, as any spreadsheet of any
// country may write it. CsvForm says what stands for what.

#include "core/files/csv_numbers.h"
#include "core/files/csv_table.h"
#include "tests/core/files/csv_forms.h"
#include "tests/support/catch.h"

#include <fmt/format.h>

using namespace pumpwright;

namespace {

using Rows = std::vector<std::vector<std::string>>;

struct Corner {
    const char* sample;
    Rows rows;
};

const std::vector<Corner> kCorners{
    {"", {}},
    {"/", {}},
    {"//", {}},
    {"a", {{"a"}}},
    {"a/", {{"a"}}},
    {"a//", {{"a"}}},
    {"/a", {{"a"}}},
    {"a|b", {{"a", "b"}}},
    {"a|b/", {{"a", "b"}}},
    {"a|b/c|d", {{"a", "b"}, {"c", "d"}}},
    {"a|b//c|d", {{"a", "b"}, {"c", "d"}}},
    {"|", {{"", ""}}},
    {"||", {{"", "", ""}}},
    {"|/|", {{"", ""}, {"", ""}}},
    {"a|", {{"a", ""}}},
    {"|a", {{"", "a"}}},
    {"a||b", {{"a", "", "b"}}},
    {"a|b|c/d/e|f", {{"a", "b", "c"}, {"d"}, {"e", "f"}}},
    {" a | b ", {{" a ", " b "}}},
    {"  /a", {{"a"}}},
    {"'a'", {{"a"}}},
    {"'a'/", {{"a"}}},
    {"'a'|'b'", {{"a", "b"}}},
    {"'a'|b", {{"a", "b"}}},
    {"a|'b'", {{"a", "b"}}},
    {"''|a", {{"", "a"}}},
    {"a|''", {{"a", ""}}},
    {"''|''", {{"", ""}}},
    {"''''|a", {{"'", "a"}}},
    {"''''''|a", {{"''", "a"}}},
    {"'a''b'", {{"a'b"}}},
    {"'a'''", {{"a'"}}},
    {"'''a'", {{"'a"}}},
    {"'''a'''|b", {{"'a'", "b"}}},
    {"'a''''b'", {{"a''b"}}},
    {"'a^b'", {{"a^b"}}},
    {"'a^b'|c", {{"a^b", "c"}}},
    {"'^'|'^'", {{"^", "^"}}},
    {"'''^'''|a", {{"'^'", "a"}}},
    {"'a$b'", {{"a$b"}}},
    {"'a$b'|c/d|e", {{"a$b", "c"}, {"d", "e"}}},
    {"'$'|a", {{"$", "a"}}},
    {"'$$'|a/b|c", {{"$$", "a"}, {"b", "c"}}},
    {"'a$'/b", {{"a$"}, {"b"}}},
    {"'$a'|'b$'", {{"$a", "b$"}}},
    {"'a''$''b'|c", {{"a'$'b", "c"}}},
    {"'a^$^b'|c", {{"a^$^b", "c"}}},
    {"a'b|c", {{"a'b", "c"}}},
    {"a''b|c", {{"a''b", "c"}}},
    {"a'|b", {{"a'", "b"}}},
    {" 'a'|b", {{" 'a'", "b"}}},
    {"'a'b|c", {{"ab", "c"}}},
    {"'a' |c", {{"a ", "c"}}},
    {"'a' 'b'|c", {{"a 'b'", "c"}}},
    {"'1~5'|'2~5'", {{"1~5", "2~5"}}},
    {"'-1~5e3'|x", {{"-1~5e3", "x"}}},
    {"'1~5'/'2~5'", {{"1~5"}, {"2~5"}}},
    {"'1~5 V'|'= 2'", {{"1~5 V", "= 2"}}},
    {"'a|b'|c/'d'", {{"a|b", "c"}, {"d"}}},
    {"a|b/''/c", {{"a", "b"}, {"c"}}},
    {"'  '|a", {{"  ", "a"}}},
    {"a|' b '", {{"a", " b "}}},
};

Rows rowsOf(CsvReader& reader) {
    Rows rows;
    while (reader.next()) {
        rows.push_back(reader.cells());
    }
    CHECK_FALSE(reader.fault());
    return rows;
}

std::string wholeText(std::unique_ptr<TextBlocks> blocks) {
    std::string text;
    for (;;) {
        const auto block = blocks->next();
        REQUIRE(block);
        if (block->empty()) {
            return text;
        }
        text += *block;
    }
}

Rows inForm(const CsvForm& form, Rows rows) {
    for (std::vector<std::string>& row : rows) {
        for (std::string& cell : row) {
            cell = form.text(cell);
        }
    }
    return rows;
}

} // namespace

TEST_CASE("sixty corners of tables are read the same in thirty forms", "[files][csv-table]") {
    CHECK(kCorners.size() >= 60);
    for (const CsvForm& form : csvForms()) {
        for (const Corner& corner : kCorners) {
            CAPTURE(corner.sample, form.separator, form.decimal, static_cast<int>(form.bytes));
            const std::string bytes = form.file(form.text(corner.sample));
            const std::string text = wholeText(inUtf8(blocksOf(bytes)));
            CsvReader whole(text, form.separator);
            CHECK(rowsOf(whole) == inForm(form, corner.rows));
            CHECK_FALSE(whole.isCutOff());
            CsvReader inPieces(inUtf8(blocksOf(bytes, 4)));
            CsvReader atOnce(text, inPieces.separator());
            CHECK(rowsOf(inPieces) == rowsOf(atOnce));
            CHECK(inPieces.isCutOff() == atOnce.isCutOff());
        }
    }
}

TEST_CASE("numbers are read the same in every form, in pieces of any size", "[files][csv-table]") {
    for (const CsvForm& form : csvForms()) {
        const bool quoted = form.separator == ',' && form.decimal == ',';
        const std::string bytes =
            form.file(form.text(quoted ? "t|u/0|'-1~5'/1|'2~25e1'/" : "t|u/0|-1~5/'1'|2~25e1/"));
        for (std::size_t piece = 8; piece < 40; ++piece) {
            CAPTURE(form.separator, form.decimal, static_cast<int>(form.bytes), piece);
            const auto table = readCsvNumbers(blocksOf(bytes, piece), "log.csv");
            REQUIRE(table.has_value() != quoted); // "1,5" between commas may be one thousand and more
            if (!quoted) {
                CHECK(table->names == std::vector<std::string>{"t", "u"});
                CHECK(table->columns == std::vector<std::vector<double>>{{0, 1}, {-1.5, 22.5}});
            }
        }
    }
}

TEST_CASE("UTF-16 becomes UTF-8, half pairs of surrogates the sign for what is none", "[files][csv-table]") {
    // RFC 2781, section 5, has the sign U+12345 as D8 08 DF 45.
    const std::string_view big("\xFE\xFF\xD8\x08\xDF\x45\x00=\x20\xAC\x00\xE9", 12);
    CHECK(wholeText(inUtf8(blocksOf(big, 3))) == "\xF0\x92\x8D\x85=\xE2\x82\xAC\xC3\xA9");
    const std::string_view halves("\xFF\xFE\x08\xD8"
                                  "a\x00\x45\xDF"
                                  "b\x00",
                                  10);
    CHECK(wholeText(inUtf8(blocksOf(halves))) == "\xEF\xBF\xBD"
                                                 "a\xEF\xBF\xBD"
                                                 "b");
}

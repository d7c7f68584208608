#include "app/console/text_table.h"
#include "tests/support/catch.h"

using namespace pumpwright;

TEST_CASE("columns are aligned, numbers to the right", "[console][text]") {
    const SheetTable table{"Things", {"Name", "Count"}, {false, true}, {{"bolt", "12"}, {"washer", "3"}}};
    CHECK(textTable(table) == "Things\n"
                              "Name    Count\n"
                              "-------------\n"
                              "bolt       12\n"
                              "washer      3\n");
}

TEST_CASE("letters outside ASCII count as one column", "[console][text]") {
    const SheetTable table{"", {"Ω", "x"}, {false, false}, {{"µµ", "y"}, {"aa", "z"}}};
    CHECK(textTable(table) == "\nΩ   x\n-----\nµµ  y\naa  z\n");
}

TEST_CASE("the widest column is broken at spaces to keep lines at a hundred characters", "[console][text]") {
    std::string words;
    for (int i = 0; i < 50; ++i) {
        words += "words ";
    }
    const std::string text = textTable({"T", {"A", "B"}, {false, false}, {{words, "end"}}});
    std::size_t start = 0;
    int lines = 0;
    while (start < text.size()) {
        const std::size_t end = text.find('\n', start);
        CHECK(end - start <= kTextWidth);
        start = end + 1;
        ++lines;
    }
    CHECK(lines > 5);
}

TEST_CASE("a word longer than its column is cut between characters, not inside one", "[console][text]") {
    CHECK(wrapped("ΩΩΩΩΩ", 2, "") == "ΩΩ\nΩΩ\nΩ");
    CHECK(wrapped("one two three", 7, "") == "one two\nthree");
    CHECK(wrapped("", 7, "").empty());
}

TEST_CASE("words are broken only where nothing else helps", "[console][text]") {
    const std::string words = "one two three four five six seven eight nine ten eleven twelve thirteen";
    const SheetTable table{"T",
                           {"From terminal", "Insulation", "A", "B"},
                           {false, false, false, false},
                           {{"30", "T105", words, words}}};
    const std::string text = textTable(table);
    for (const char* whole : {"terminal", "Insulation", "thirteen"}) {
        CHECK(text.find(whole) != std::string::npos);
    }
    const SheetTable impossible{
        "T", {"A", "B"}, {false, false}, {{std::string(80, 'x'), std::string(80, 'y')}}};
    CHECK(textTable(impossible).find(std::string(80, 'x')) == std::string::npos);
}

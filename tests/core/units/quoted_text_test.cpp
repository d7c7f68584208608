#include "core/units/quoted_text.h"
#include "tests/support/catch.h"

#include <string>

namespace pumpwright {

TEST_CASE("a harmless text is quoted as it is", "[units][quoted-text]") {
    CHECK(quotedText("") == "\"\"");
    CHECK(quotedText("0,75 mm²") == "\"0,75 mm²\"");
    CHECK(quotedText("\U0001F697") == "\"\U0001F697\"");
}

TEST_CASE("the first and last character of each length of UTF-8 is kept", "[units][quoted-text]") {
    for (const std::string character :
         {"\x20", "\x7E", "\xC2\xA0", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEF\xBF\xBF",
          "\xF0\x90\x80\x80", "\xF0\xBF\xBF\xBF", "\xF4\x80\x80\x80", "\xF4\x8F\xBF\xBF"}) {
        CHECK(quotedText(character) == '"' + character + '"');
    }
}

TEST_CASE("control characters and bytes that are not UTF-8 are replaced", "[units][quoted-text]") {
    CHECK(quotedText(std::string("a\0b", 3)) == "\"a\uFFFDb\"");
    CHECK(quotedText("\x1b[31m") == "\"\uFFFD[31m\"");
    CHECK(quotedText("\x7f") == "\"\uFFFD\"");
    CHECK(quotedText("\xC2\x85") == "\"\uFFFD\"");
    CHECK(quotedText("\x80\x80\x80\x80") == "\"\uFFFD\uFFFD\uFFFD\uFFFD\"");
    CHECK(quotedText("\xff") == "\"\uFFFD\"");
    CHECK(quotedText("\xC2\x9F") == "\"\uFFFD\"");
    CHECK(quotedText("\xF5\x80") == "\"\uFFFD\uFFFD\"");
    CHECK(quotedText("\xF0\x8F\x80\x80") == "\"\uFFFD\uFFFD\uFFFD\uFFFD\"");
    CHECK(quotedText("\xC3") == "\"\uFFFD\"");
    CHECK(quotedText("\xC3(") == "\"\uFFFD(\"");
    CHECK(quotedText("\xC0\xAF") == "\"\uFFFD\uFFFD\"");           // overlong
    CHECK(quotedText("\xED\xA0\x80") == "\"\uFFFD\uFFFD\uFFFD\""); // surrogate
    CHECK(quotedText("\xE2\x82") == "\"\uFFFD\uFFFD\"");           // cut short
    CHECK(quotedText("\xE2\x82(") == "\"\uFFFD\uFFFD(\"");
    CHECK(quotedText("\xF4\x90\x80\x80") == "\"\uFFFD\uFFFD\uFFFD\uFFFD\""); // beyond U+10FFFF
}

TEST_CASE("a long text is cut between characters", "[units][quoted-text]") {
    const std::string quoted = quotedText(std::string(1000, 'x'));
    CHECK(quoted.size() < 80);
    CHECK(quoted.ends_with("…\""));
    std::string umlauts;
    for (int i = 0; i < 100; ++i) {
        umlauts += "ü";
    }
    CHECK(quotedText(umlauts).find("\uFFFD") == std::string::npos);
}

} // namespace pumpwright

#include "core/units/quoted_text.h"
#include "tests/support/catch.h"

#include <string>

namespace pumpwright {

TEST_CASE("a harmless text is quoted as it is", "[units][quoted-text]") {
    CHECK(quotedText("") == "\"\"");
    CHECK(quotedText("0,75 mm²") == "\"0,75 mm²\"");
    CHECK(quotedText("\U0001F697") == "\"\U0001F697\"");
}

TEST_CASE("control characters and bytes that are not UTF-8 are replaced", "[units][quoted-text]") {
    CHECK(quotedText(std::string("a\0b", 3)) == "\"a\uFFFDb\"");
    CHECK(quotedText("\x1b[31m") == "\"\uFFFD[31m\"");
    CHECK(quotedText("\x7f") == "\"\uFFFD\"");
    CHECK(quotedText("\xC2\x85") == "\"\uFFFD\"");
    CHECK(quotedText("\xff") == "\"\uFFFD\"");
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

#include "core/units/visible_text.h"
#include "tests/support/catch.h"

#include <string>

namespace pumpwright {

TEST_CASE("a harmless text stays as it is, whatever a program might take it for", "[units][visible-text]") {
    for (const std::string text : {"", "0,75 mm²", "<b>&amp;</b>", "%s %n", "${HOME}", "../../etc",
                                   "=cmd|' /C'!A0", "\U0001F697\u200D\U0001F527", "\uFFFD"}) {
        CHECK(visibleText(text) == text);
    }
}

TEST_CASE("what turns the direction of writing is shown as a mark", "[units][visible-text]") {
    // Explicit directional formatting characters: Unicode Standard Annex 9, table 1 and section 2.
    CHECK(visibleText("a\u202Ecba") == "a⟨U+202E⟩cba");
    for (const std::string character : {"\u061C", "\u200E", "\u200F", "\u202A", "\u202B", "\u202C", "\u202D",
                                        "\u202E", "\u2066", "\u2067", "\u2068", "\u2069"}) {
        CHECK(visibleText(character).starts_with("⟨U+"));
    }
}

TEST_CASE("line breaks become spaces, other control characters marks", "[units][visible-text]") {
    CHECK(visibleText("a\nb\tc\rd") == "a b c d");
    CHECK(visibleText("\x1b[31m") == "⟨U+001B⟩[31m");
    CHECK(visibleText(std::string("a\0b", 3)) == "a⟨U+0000⟩b");
    CHECK(visibleText("\u0085") == "⟨U+0085⟩");
    CHECK(visibleText("\u2028") == "⟨U+2028⟩");
    CHECK(visibleText("\xff\xc2") == "\uFFFD\uFFFD");
}

} // namespace pumpwright

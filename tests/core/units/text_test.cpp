#include "core/units/text.h"
#include "tests/support/catch.h"

using namespace pumpwright;

TEST_CASE("a sentence says its facts in their order", "[units][text]") {
    CHECK(say("{} carries {}.", std::string("W3"), 12).english() == "W3 carries 12.");
    CHECK(say("Nothing to add.").english() == "Nothing to add.");
}

TEST_CASE("a fact may be a sentence, and is kept apart from the pattern", "[units][text]") {
    const Text text = say("{}, which has {}", std::string("K1"), say("{} wires", 2));
    CHECK(text.english() == "K1, which has 2 wires");
    CHECK(text.pattern() == "{}, which has {}");
    REQUIRE(text.facts().size() == 2);
    CHECK_FALSE(text.facts()[0].isSentence());
    CHECK(text.facts()[1].isSentence());
}

TEST_CASE("braces in a name are no places for facts", "[units][text]") {
    CHECK(say("{} is open.", std::string("S{0}")).english() == "S{0} is open.");
    CHECK(Text(std::string("{}")).english() == "{}");
}

TEST_CASE("another language may turn facts round, and leave one out", "[units][text]") {
    CHECK(filledIn("{1} an {0}", {"K1", "12 V"}) == "12 V an K1");
    CHECK(filledIn("nur {1}", {"K1", "12 V"}) == "nur 12 V");
}

TEST_CASE("a text without words is empty", "[units][text]") {
    CHECK(Text().isEmpty());
    CHECK(Text().english().empty());
    CHECK_FALSE(say("x").isEmpty());
}

TEST_CASE("marked words are a sentence that can be looked up", "[units][text]") {
    CHECK(said(words("a motor")).isSentence());
    CHECK(said(words("a motor")) == say("a motor"));
    CHECK_FALSE(said("a motor") == Text(std::string("a motor")));
}

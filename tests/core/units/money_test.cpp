#include "core/units/money.h"
#include "tests/support/catch.h"

namespace pumpwright {

TEST_CASE("an amount is read with its currency on either side or without", "[units][money]") {
    for (const char* text :
         {"129.90", "129,90", "129.9 EUR", "EUR 129.90", " EUR129.90 ", " 129.90 EUR  ", "129.90EUR"}) {
        INFO(text);
        CHECK(parseMoney(text, "EUR").value() == 129.9);
    }
    CHECK(parseMoney("-5", "USD").value() == -5.0);
}

TEST_CASE("an amount in another currency is refused", "[units][money]") {
    for (const char* text : {"129.90 USD", "USD 129.90"}) {
        const auto read = parseMoney(text, "EUR");
        REQUIRE_FALSE(read.has_value());
        CHECK(read.error().code == ErrorCode::WrongUnit);
        CHECK(read.error().text.find("12.50 EUR") != std::string::npos);
    }
}

TEST_CASE("what is no amount is refused", "[units][money]") {
    for (const char* text : {"", "EUR", "EUR EUR", "12 €", "1,299.90", "12 eur", "12 V"}) {
        INFO(text);
        CHECK_FALSE(parseMoney(text, "EUR").has_value());
    }
}

TEST_CASE("an amount is written with two decimals and its currency, and read back", "[units][money]") {
    CHECK(formatMoney(129.9, "EUR") == "129.90 EUR");
    CHECK(formatMoney(0.0, "CHF") == "0.00 CHF");
    CHECK(parseMoney(formatMoney(1234.56, "SEK"), "SEK").value() == 1234.56);
}

TEST_CASE("a currency code is three capital letters", "[units][money]") {
    CHECK(isCurrencyCode("EUR"));
    CHECK(isCurrencyCode("ZAR"));
    CHECK_FALSE(isCurrencyCode("eur"));
    CHECK_FALSE(isCurrencyCode("EU"));
    CHECK_FALSE(isCurrencyCode("EURO"));
    CHECK_FALSE(isCurrencyCode("E1R"));
}

} // namespace pumpwright

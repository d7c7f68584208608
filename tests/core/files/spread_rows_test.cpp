#include "core/files/spread_rows.h"
#include "tests/support/catch.h"

using namespace pumpwright;

namespace {

const SpreadOrigin kOrigin{"abc12345", 7};

SpreadCar car(std::uint64_t number) {
    SpreadCar made{number, DriveStatus::Finished, {}};
    made.numbers.chatters = number % 2 == 0;
    made.numbers.mostClosings = 3;
    made.numbers.presses = 2;
    made.numbers.leastAssistShare = 1.0 / 3;
    made.numbers.lowestVacuum_Pa = 51234.567 + static_cast<double>(number) / 7;
    made.numbers.pumpRunning_s = 0.1;
    return made;
}

std::string rowsOf(std::initializer_list<std::uint64_t> numbers) {
    std::string text = spreadHead();
    for (const std::uint64_t number : numbers) {
        text += spreadRow(kOrigin, car(number));
    }
    return text;
}

} // namespace

TEST_CASE("cars are read back to the last digit, in order of their numbers", "[files][spread-rows]") {
    const auto rows = parseSpreadRows(rowsOf({2, 3}) + rowsOf({0, 1}));
    REQUIRE(rows);
    CHECK(rows->origin == kOrigin);
    REQUIRE(rows->cars.size() == 4);
    for (std::uint64_t number = 0; number < 4; ++number) {
        CHECK(rows->cars[number] == car(number));
    }
}

TEST_CASE("a car without a press and one that stopped are read back", "[files][spread-rows]") {
    const SpreadCar stopped{5, DriveStatus::Stopped, {}};
    const auto rows = parseSpreadRows(spreadRow(kOrigin, stopped));
    REQUIRE(rows);
    CHECK(rows->cars.front() == stopped);
}

TEST_CASE("rows that do not make one study are refused", "[files][spread-rows]") {
    CHECK(parseSpreadRows(rowsOf({0, 1, 1})).error().text.find("twice") != std::string::npos);
    CHECK(parseSpreadRows(rowsOf({0, 4})).error().text.find("--from 1 --count 3") != std::string::npos);
    CHECK(parseSpreadRows(rowsOf({0}) + spreadRow({"other", 7}, car(1))).error().place.line == 3);
    CHECK(parseSpreadRows(rowsOf({0}) + spreadRow({"abc12345", 8}, car(1))).error().place.line == 3);
    CHECK(parseSpreadRows(rowsOf({0}) + "1,2,3\n").error().place.line == 3);
    CHECK_FALSE(parseSpreadRows(spreadHead()));
}

#include "core/sheet/trial_tables.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <algorithm>

using namespace pumpwright;

namespace {

TrialOutcome outcomeWith(int starts, double price) {
    TrialOutcome outcome;
    outcome.name = "as drawn";
    outcome.circuit = CircuitBuilder().part("pump", "M1").build();
    outcome.circuit.parts.at(PartId{"M1"}).price = price;
    outcome.numbers.pumpStarts = starts;
    outcome.numbers.lowestVacuum_Pa = 40e3;
    return outcome;
}

std::vector<std::string> row(const SheetTable& table, const std::string& label) {
    const auto found =
        std::ranges::find_if(table.rows, [&](const auto& cells) { return cells.front() == label; });
    REQUIRE(found != table.rows.end());
    return *found;
}

} // namespace

TEST_CASE("best and worst trials are told in words", "[sheet][trial-tables]") {
    const SheetTable table =
        trialResults({outcomeWith(9, 80), outcomeWith(2, 95.5), outcomeWith(2, 60), outcomeWith(4, 80)});
    CHECK(table.columns == std::vector<std::string>{"Result", "Base", "1", "2", "3", "Best", "Worst"});
    CHECK(row(table, "Pump starts") ==
          std::vector<std::string>{"Pump starts", "9", "2", "2", "4", "1, 2", "Base"});
    CHECK(row(table, "Price, EUR") ==
          std::vector<std::string>{"Price, EUR", "80.00", "95.50", "60.00", "80.00", "2", "1"});
}

TEST_CASE("results that look alike are alike", "[sheet][trial-tables]") {
    const SheetTable table = trialResults({outcomeWith(1, 5), outcomeWith(1, 5.001)});
    CHECK(row(table, "Price, EUR")[3] == "all alike");
    CHECK(row(table, "Lowest vacuum in a press, kPa") ==
          std::vector<std::string>{"Lowest vacuum in a press, kPa", "40.0", "40.0", "all alike", "–"});
}

TEST_CASE("the ideas are named with the parts that they add", "[sheet][trial-tables]") {
    TrialOutcome idea = outcomeWith(1, 1);
    idea.name = "Second pump";
    idea.addedParts = {PartId{"M1"}};
    const SheetTable table = trialIdeas({outcomeWith(1, 1), idea});
    CHECK(table.rows[0] == std::vector<std::string>{"Base", "as drawn", "–"});
    CHECK(table.rows[1][1] == "Second pump");
    CHECK(table.rows[1][2].starts_with("M1"));
}

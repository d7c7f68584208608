#include "app/desktop/studies/spoken_table.h"
#include "app/desktop/translations.h"
#include "core/sheet/spread_tables.h"
#include "core/sheet/trial_tables.h"
#include "core/study/measure.h"
#include "tests/support/catch.h"

#include <QLocale>

#include <algorithm>

using namespace pumpwright;

namespace {

/// The table as a German user sees it.
SheetTable inGerman(const SheetTable& table) {
    speak(QLocale(QLocale::German));
    SheetTable german = spokenTable(table);
    speak(QLocale(QLocale::English));
    return german;
}

} // namespace

TEST_CASE("the heads and labels of a spread are told in German, its numbers as they are",
          "[studies][translations]") {
    const SheetTable english = spreadTables(SpreadSummary())[0];
    CHECK(spokenTable(english).columns == english.columns);
    CHECK(spokenTable(english).rows == english.rows);
    const SheetTable german = inGerman(english);
    CHECK(german.title == "Anteile");
    CHECK(german.columns ==
          std::vector<std::string>{"Fahrzeuge", "Anzahl", "Anteil", "Wahrer Anteil, zu 95 % sicher"});
    CHECK(german.rows[0][0] == "mit einem Kontakt, der flattert");
    CHECK(german.rows[0][1] == english.rows[0][1]);
}

TEST_CASE("a label keeps its unit, and a name that somebody gave stays as it is", "[studies][translations]") {
    TrialOutcome outcome;
    outcome.name = "Results";
    const SheetTable ideas = inGerman(trialIdeas({outcome}));
    CHECK(ideas.columns[1] == "Idee");
    CHECK(ideas.rows[0][0] == "Ausgang");
    CHECK(ideas.rows[0][1] == trialIdeas({outcome}).rows[0][1]);
    const SheetTable results = inGerman(trialResults({outcome}));
    const auto hasRow = [&](const std::string& label) {
        return std::ranges::any_of(results.rows, [&](const auto& row) { return row.front() == label; });
    };
    CHECK(hasRow("Preis, EUR"));
    CHECK(hasRow("Kontakte flattern"));
}

TEST_CASE("a sentence over a table is told in German with its numbers", "[studies][translations]") {
    SpreadSummary summary;
    summary.ranked = 400;
    speak(QLocale(QLocale::German));
    const std::string title = spreadTables(summary, inUsersLanguage).back().title;
    speak(QLocale(QLocale::English));
    CHECK(
        title.starts_with("Toleranzen, auf die es am meisten ankommt: Rangkorrelationen von 400 Fahrzeugen"));
    CHECK(spreadTables(summary, inUsersLanguage).back().title == spreadTables(summary).back().title);
}

TEST_CASE("no label of a study's results is left in English", "[studies][translations]") {
    SheetTable table{"Results", {"Result"}, {false}, {}};
    for (const Measure& measure : measures()) {
        table.rows.push_back({std::string(measure.label)});
    }
    const SheetTable german = inGerman(table);
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        CHECK(german.rows[i] != table.rows[i]);
    }
}

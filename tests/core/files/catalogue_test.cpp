#include "core/files/catalogue.h"
#include "core/files/circuit_file.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"
#include "tests/support/temp_folder.h"

#include <set>

using namespace pumpwright;

namespace {

// Tests run in the folder of the project.
const std::filesystem::path kOwnCatalogue = "resources/catalogue/parts.json";

std::string withEntry(const std::string& keys) {
    return "{\"pumpwrightCatalogue\": 1,\n\"entries\": [\n{\"id\": \"a\", \"title\": \"A\", " + keys + "}]}";
}

} // namespace

TEST_CASE("the program's own catalogue has every kind, with prices and where the values come from",
          "[files][catalogue]") {
    const auto catalogue = readCatalogue({kOwnCatalogue});
    if (!catalogue) {
        FAIL(catalogue.error().text << " " << catalogue.error().place.pointer << ", line "
                                    << catalogue.error().place.line);
    }
    CHECK(catalogue->currency == "EUR");
    CHECK(catalogue->wirePrice_perMetrePerSquareMillimetre > 0);
    CHECK(catalogue->hosePrice_perMetre > 0);
    CHECK(catalogue->sleevePrice > 0);
    CHECK(catalogue->smallCrimpPrice > 0);
    CHECK(catalogue->largeCrimpPrice > catalogue->smallCrimpPrice);
    std::set<std::string> kinds;
    std::set<std::string> titles;
    for (const CatalogueEntry& entry : catalogue->entries) {
        CAPTURE(entry.id);
        kinds.insert(entry.kind);
        CHECK(titles.insert(entry.title).second);
        CHECK(entry.price > 0);
        CHECK(entry.price < 1000);
        CHECK_FALSE(entry.note.empty());
    }
    for (const PartKind* kind : partKinds()) {
        CAPTURE(kind->id());
        CHECK(kinds.contains(std::string(kind->id())));
    }
}

TEST_CASE("every entry of the catalogue can be placed, saved and opened", "[files][catalogue]") {
    const auto catalogue = readCatalogue({kOwnCatalogue});
    REQUIRE(catalogue);
    Circuit circuit;
    for (const CatalogueEntry& entry : catalogue->entries) {
        const PartKind* kind = findPartKind(entry.kind);
        REQUIRE(kind);
        const std::string reference = freeReference(circuit, std::string(kind->letter()));
        circuit.parts.emplace(freePartId(circuit), partFromCatalogue(entry, reference, {2, 3}));
    }
    const auto again = parseCircuit(circuitText(circuit));
    REQUIRE(again);
    CHECK(*again == circuit);
}

TEST_CASE("a part from the catalogue carries the entry's values, price and source", "[files][catalogue]") {
    const auto catalogue = readCatalogue({kOwnCatalogue});
    REQUIRE(catalogue);
    const CatalogueEntry* entry = catalogue->find("relay-30-a-diode");
    REQUIRE(entry);
    const Part part = partFromCatalogue(*entry, "K7", {4, -2});
    CHECK(part.kind == "relay");
    CHECK(part.reference == "K7");
    CHECK(part.catalogue == "relay-30-a-diode");
    CHECK(part.choices.at("suppression") == "diode");
    CHECK(part.values.at("continuous_A") == 30);
    CHECK(part.price == entry->price);
    CHECK(part.note == entry->note);
    CHECK(part.at == GridPoint{4, -2});
    CHECK_FALSE(catalogue->find("relay-31-a"));
}

TEST_CASE("the wiring sheet finds the title of every entry", "[files][catalogue]") {
    const auto catalogue = readCatalogue({kOwnCatalogue});
    REQUIRE(catalogue);
    const auto titles = priceListOf(*catalogue).titles;
    CHECK(titles.size() == catalogue->entries.size());
    for (const CatalogueEntry& entry : catalogue->entries) {
        CHECK(titles.at(entry.id) == entry.title);
    }
}

TEST_CASE("a fuse of the catalogue is one of the sizes of ISO 8820-3", "[files][catalogue]") {
    // Ratings of types C and E: value from memory of ISO 8820-3.
    const std::set<double> ratings{3, 5, 7.5, 10, 15, 20, 25, 30, 40, 60};
    const auto catalogue = readCatalogue({kOwnCatalogue});
    REQUIRE(catalogue);
    std::set<double> found;
    for (const CatalogueEntry& entry : catalogue->entries) {
        if (entry.kind == "fuse") {
            found.insert(entry.values.at("rating_A"));
        }
    }
    CHECK(found == ratings);
}

TEST_CASE("the user's catalogue adds to the program's, and replaces entries of the same id",
          "[files][catalogue]") {
    const TempFolder folder;
    const auto own = folder.write("own.json", withEntry(R"("kind": "relay", "price": 9)"));
    const auto users = folder.write(
        "users.json", R"({"pumpwrightCatalogue": 1, "hosePrice_perMetre": 4, "sleevePrice": 0.3, "entries": [
        {"id": "b", "title": "B", "kind": "fuse"},
        {"id": "a", "title": "Mine", "kind": "relay", "price": 3}]})");
    const auto both = readCatalogue({own, users, folder.path() / "not-there.json"});
    REQUIRE(both);
    REQUIRE(both->entries.size() == 2);
    CHECK(both->entries[0].title == "Mine");
    CHECK(both->find("a")->price == 3);
    CHECK(both->find("b")->kind == "fuse");
    CHECK(both->hosePrice_perMetre == 4);
    CHECK(priceListOf(*both).sleeve == 0.3);
    CHECK(both->currency == "EUR");
}

TEST_CASE("without the program's own catalogue there is an error, not an empty list", "[files][catalogue]") {
    const TempFolder folder;
    const auto none = readCatalogue({folder.path() / "parts.json"});
    REQUIRE_FALSE(none);
    CHECK(none.error().code == ErrorCode::FileUnreadable);
}

TEST_CASE("prices of the user's in another currency are refused with the place", "[files][catalogue]") {
    const TempFolder folder;
    const auto own = folder.write("own.json", R"({"pumpwrightCatalogue": 1, "currency": "EUR"})");
    const auto users = folder.write("users.json", "{\"pumpwrightCatalogue\": 1,\n\"currency\": \"SEK\"}");
    const auto both = readCatalogue({own, users});
    REQUIRE_FALSE(both);
    CHECK(both.error().place.file == users.string());
    CHECK(both.error().place.line == 2);
    CHECK(both.error().place.pointer == "/currency");
}

TEST_CASE("a bad catalogue is refused where it is bad", "[files][catalogue]") {
    using enum ErrorCode;
    struct Bad {
        std::string text;
        ErrorCode code;
        std::string pointer;
        int line;
    };
    const std::vector<Bad> all{
        {"{\"pumpwright\": 1}", NotACatalogue, "", 1},
        {"[]", WrongType, "", 1},
        {"{\"pumpwrightCatalogue\": 2}", NewerVersion, "/pumpwrightCatalogue", 1},
        {"{\"pumpwrightCatalogue\": 1", NotJson, "", 1},
        {"{\"pumpwrightCatalogue\": 1, \"currency\": \"eur\"}", UnknownChoice, "/currency", 1},
        {"{\"pumpwrightCatalogue\": 1, \"hosePrice_perMetre\": -1}", OutOfRange, "/hosePrice_perMetre", 1},
        {withEntry(R"("kind": "rellay")"), UnknownKind, "/entries/0/kind", 3},
        {withEntry(R"("price": 1)"), MissingKey, "/entries/0/kind", 3},
        {withEntry(R"("kind": "fuse", "price": "cheap")"), WrongType, "/entries/0/price", 3},
        {withEntry(R"("kind": "fuse", "values": {"rating_A": 1e9})"), OutOfRange,
         "/entries/0/values/rating_A", 3},
        {withEntry(R"("kind": "fuse", "values": {"ratting_A": 10})"), UnknownChoice,
         "/entries/0/values/ratting_A", 3},
        {withEntry(R"("kind": "fuse", "choices": {"type": "Z"})"), UnknownChoice, "/entries/0/choices/type",
         3},
        {withEntry(R"("kind": "fuse", "choices": {"colour": "red"})"), UnknownChoice,
         "/entries/0/choices/colour", 3},
        {withEntry(R"("kind": "fuse"},{"id": "a", "title": "B", "kind": "fuse")"), DuplicateId,
         "/entries/1/id", 3},
    };
    for (const Bad& bad : all) {
        INFO(bad.text);
        const auto catalogue = parseCatalogue(bad.text, "mine.json");
        REQUIRE_FALSE(catalogue);
        INFO(catalogue.error().text);
        CHECK(errorCodeName(catalogue.error().code) == errorCodeName(bad.code));
        CHECK(catalogue.error().place.file == "mine.json");
        if (bad.code != NotJson) {
            CHECK(catalogue.error().place.pointer == bad.pointer);
            CHECK(catalogue.error().place.line == bad.line);
        }
    }
}

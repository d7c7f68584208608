#include "core/files/circuit_file.h"
#include "core/files/whole_file.h"
#include "core/parts/conductor.h"
#include "tests/core/files/bad_files.h"
#include "tests/support/catch.h"
#include "tests/support/random_circuit.h"
#include "tests/support/temp_folder.h"
#include "tests/support/test_seed.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdlib>
#include <set>

using namespace pumpwright;

namespace {

/// What a schema cannot say, by the names in bad_files.h: docs/file-format.md lists the same.
const std::set<std::string> kBeyondSchema{
    "id twice",           "key twice",           "key twice by escape",   "unknown key twice",
    "value 1e308",        "value 1e309",         "value below its range", "tolerance of no value",
    "wire to no part",    "wire to no terminal", "hose to a terminal",    "switch that is not there",
    "charging backwards", "trial twice",
};

nlohmann::json publishedSchema() {
    return nlohmann::json::parse(fileText("docs/circuit.schema.json", 1U << 20U).value());
}

void writeBadFiles(const TempFolder& folder) {
    int number = 0;
    for (const auto& table : {notACircuit(), badParts(), badConnections(), badSections()}) {
        for (const BadFile& bad : table) {
            ++number;
            if (!kBeyondSchema.contains(bad.name)) {
                std::string name = std::to_string(number) + " " + bad.name;
                std::replace(name.begin(), name.end(), '/', '-');
                folder.write(name, bad.text);
            }
        }
    }
}

void writeGoodFiles(const TempFolder& folder, std::uint64_t seed) {
    RandomCircuits random(seed);
    for (int number = 0; number < 1000; ++number) {
        folder.write("random " + std::to_string(number), circuitText(random.circuit(6)));
    }
    folder.write("empty", circuitText({}));
    for (const auto& sample : std::filesystem::directory_iterator("samples")) {
        std::filesystem::copy(sample.path(), folder.path());
    }
}

} // namespace

TEST_CASE("samples and random circuits are valid by the published schema, bad files are not",
          "[files][schema]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    const TempFolder good;
    const TempFolder bad;
    const TempFolder output;
    writeGoodFiles(good, seed);
    writeBadFiles(bad);
    REQUIRE(bad.count() >= 60);
    const std::string command =
        "/usr/bin/python3 tests/core/files/schema_check.py docs/circuit.schema.json " + good.path().string() +
        " " + bad.path().string() + " > " + (output.path() / "report").string() + " 2>&1";
    const int status = std::system(command.c_str());
    INFO(output.read("report"));
    CHECK(status == 0);
}

TEST_CASE("the published schema knows every part kind and insulation class", "[files][schema]") {
    const nlohmann::json definitions = publishedSchema().at("$defs");
    std::set<std::string> kinds;
    for (const PartKind* kind : partKinds()) {
        kinds.emplace(kind->id());
    }
    CHECK(definitions.at("part").at("properties").at("kind").at("enum").get<std::set<std::string>>() ==
          kinds);
    std::set<std::string> insulations;
    for (const InsulationClass& insulation : insulationClasses()) {
        insulations.emplace(insulation.id);
    }
    CHECK(definitions.at("insulation").at("enum").get<std::set<std::string>>() == insulations);
}

TEST_CASE("every file that a schema cannot refuse is a file that the reader refuses", "[files][schema]") {
    std::set<std::string> names;
    for (const auto& table : {badParts(), badConnections(), badSections()}) {
        for (const BadFile& bad : table) {
            names.insert(bad.name);
            if (kBeyondSchema.contains(bad.name)) {
                CHECK_FALSE(parseCircuit(bad.text));
            }
        }
    }
    CHECK(std::includes(names.begin(), names.end(), kBeyondSchema.begin(), kBeyondSchema.end()));
}

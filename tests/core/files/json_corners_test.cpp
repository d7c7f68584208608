#include "core/files/circuit_file.h"
#include "core/files/json_scan.h"
#include "tests/core/files/json_corners.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>

using namespace pumpwright;

TEST_CASE("every text that JSON allows is scanned without a fault, and is no circuit", "[files][json]") {
    for (const std::string& text : soundJson()) {
        CAPTURE(text);
        const auto fault = jsonFault(text, "file");
        CHECK_FALSE(fault);
        REQUIRE(nlohmann::json::accept(text));
        const auto circuit = parseCircuit(text);
        REQUIRE_FALSE(circuit);
        CHECK(
            (circuit.error().code == ErrorCode::NotACircuit || circuit.error().code == ErrorCode::WrongType));
    }
    CHECK(soundJson().size() >= 80);
}

TEST_CASE("every text that JSON does not allow is refused with its line", "[files][json]") {
    for (const std::string& text : brokenJson()) {
        CAPTURE(text);
        const auto fault = jsonFault(text, "file");
        REQUIRE(fault);
        CHECK(fault->place.line >= 1);
        CHECK(fault->place.file == "file");
        CHECK(fault->text.size() > 10);
        CHECK_FALSE(parseCircuit(text));
        CHECK_FALSE(
            parseCircuit("{\"pumpwright\":1,\"later\":" + text + "}")); // nor inside what is not known
    }
    CHECK(brokenJson().size() >= 180);
}

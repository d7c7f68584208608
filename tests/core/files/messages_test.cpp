#include "core/files/circuit_file.h"
#include "core/files/whole_file.h"
#include "tests/support/catch.h"

#include <set>
#include <sstream>

using namespace pumpwright;

namespace {

std::string page() {
    return fileText("docs/messages.md", 1U << 20U).value();
}

/// The first column of the page's table.
std::multiset<std::string> documentedCodes() {
    std::multiset<std::string> codes;
    std::istringstream lines(page());
    for (std::string line; std::getline(lines, line);) {
        if (line.starts_with("| `")) {
            codes.insert(line.substr(3, line.find('`', 3) - 3));
        }
    }
    return codes;
}

std::string partText(const std::string& keys) {
    return R"({"pumpwright": 1, "parts": [{"id": "K1", "reference": "K1", "at": [0, 0], )" + keys + "}]";
}

} // namespace

TEST_CASE("every message code is on the page of messages, once, and no other", "[files][messages]") {
    std::multiset<std::string> codes;
    for (int code = 0; code <= static_cast<int>(ErrorCode::DanglingReference); ++code) {
        codes.emplace(errorCodeName(static_cast<ErrorCode>(code)));
    }
    CHECK(documentedCodes() == codes);
}

TEST_CASE("messages that the page quotes are what the program says", "[files][messages]") {
    const std::vector<Error> errors{
        parseCircuit(partText(R"("kind": "resistor", "values": {"resistance_ohm": -100})") + "}").error(),
        parseCircuit(partText(R"("kind": "rellay")") + "}").error(),
        parseCircuit("{\"pumpwright\": 1,").error(),
        parseCircuit(partText(R"("kind": "relay")") + R"(, "wires": [{"id": "w1", "length_m": "2 m",
            "from": {"part": "K1", "terminal": "30"}, "to": {"part": "K1", "terminal": "87"}}]})")
            .error(),
        parseCircuit(partText(R"("kind": "relay")") + R"(, "wires": [{"id": "w1",
            "from": {"part": "K1", "terminal": "88"}, "to": {"part": "K1", "terminal": "87"}}]})")
            .error(),
        readCircuit("van.pumpwright").error(),
    };
    const std::string text = page();
    for (const Error& error : errors) {
        INFO(error.text);
        CHECK(text.find("*" + error.text + "*") != std::string::npos);
        CHECK(text.find("`" + std::string(errorCodeName(error.code)) + "`") != std::string::npos);
    }
}

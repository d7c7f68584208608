#include "core/files/circuit_file.h"
#include "core/files/json_scan.h"
#include "tests/core/files/bad_files.h"
#include "tests/support/catch.h"

#include <ctime>
#include <functional>

using namespace pumpwright;

namespace {

std::string repeated(const std::string& piece, int count) {
    std::string text;
    text.reserve(piece.size() * static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        text += piece;
    }
    return text;
}

std::string list(const std::function<std::string(int)>& element, int count) {
    std::string text;
    for (int i = 0; i < count; ++i) {
        text += (i == 0 ? "" : ",\n") + element(i);
    }
    return text;
}

void checkRefused(const BadFile& bad) {
    INFO(bad.name);
    const auto circuit = parseCircuit(bad.text, "van.pumpwright");
    REQUIRE_FALSE(circuit);
    const Error& error = circuit.error();
    INFO(error.text << " at " << error.place.pointer << ", line " << error.place.line);
    CHECK(errorCodeName(error.code) == errorCodeName(bad.code));
    CHECK(error.place.file == "van.pumpwright");
    if (bad.code != ErrorCode::NotJson) {
        CHECK(error.place.pointer == bad.pointer);
    }
    if (bad.line > 0) {
        CHECK(error.place.line == bad.line);
    }
    CHECK(error.text.size() > 15);
    CHECK(error.text.size() < 600);
    CHECK((error.text.back() == '.' || error.text.back() == '?'));
}

std::string partNumber(int number) {
    return R"({"id": "p)" + std::to_string(number) + R"(", "kind": "resistor", "at": [0, 0]})";
}

std::string wireNumber(int number) {
    return R"({"id": "w)" + std::to_string(number) +
           R"(", "from": {"part": "p1", "terminal": "1"}, "to": {"part": "p1", "terminal": "2"}})";
}

#ifndef __has_feature
#define __has_feature(feature) 0
#endif
#if defined(__SANITIZE_ADDRESS__) || __has_feature(address_sanitizer)
constexpr double kMostSeconds = 20; // the sanitizer's own cost
#else
constexpr double kMostSeconds = 2;
#endif

/// Of this process, so that what else the machine does is not counted.
double secondsSince(std::clock_t start) {
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

/// One below the limit and at it is read, one above is refused.
void checkLimit(int limit, ErrorCode code, const std::string& pointer,
                const std::function<std::string(int)>& textOf) {
    INFO(pointer << " up to " << limit);
    CHECK(parseCircuit(textOf(limit - 1)));
    CHECK(parseCircuit(textOf(limit)));
    const auto above = parseCircuit(textOf(limit + 1));
    REQUIRE_FALSE(above);
    CHECK(errorCodeName(above.error().code) == errorCodeName(code));
    CHECK(above.error().place.pointer == pointer);
    CHECK(above.error().place.line > 0);
}

} // namespace

TEST_CASE("text that is no JSON is refused with its line", "[files][bad-file]") {
    for (const BadFile& bad : notJson()) {
        checkRefused(bad);
    }
}

TEST_CASE("JSON that is no circuit of this version is refused", "[files][bad-file]") {
    for (const BadFile& bad : notACircuit()) {
        checkRefused(bad);
    }
}

TEST_CASE("a bad part is refused where it stands", "[files][bad-file]") {
    for (const BadFile& bad : badParts()) {
        checkRefused(bad);
    }
}

TEST_CASE("a bad wire or hose is refused where it stands", "[files][bad-file]") {
    for (const BadFile& bad : badConnections()) {
        checkRefused(bad);
    }
}

TEST_CASE("a bad title, plan, trial or waiver is refused where it stands", "[files][bad-file]") {
    for (const BadFile& bad : badSections()) {
        checkRefused(bad);
    }
}

TEST_CASE("messages say what would be right", "[files][bad-file]") {
    const auto textOf = [](const std::string& file) { return parseCircuit(file).error().text; };
    CHECK(textOf(withParts(R"({"id": "p1", "kind": "resitor", "at": [0, 0]})")) ==
          "There is no part kind \"resitor\". Is \"resistor\" meant?");
    CHECK_THAT(textOf(withParts(R"({"id": "p1", "kind": "flux-capacitor", "at": [0, 0]})")),
               Catch::Contains("Known are: ") && Catch::Contains("resistor"));
    CHECK(textOf(withPartKey(R"("values": {"resistance_ohm": -100})")) ==
          "Resistance (resistance_ohm) is -100 Ω. Allowed is 1 mΩ to 1 GΩ.");
    CHECK(textOf(withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "87"},
                              "to": {"part": "p1", "terminal": "2"}})")) ==
          "\"R1\" (resistor) has no terminal \"87\". It has: 1, 2.");
    CHECK_THAT(textOf("{\"pumpwright\": 2}"),
               Catch::Contains("format 2") && Catch::Contains("newer version"));
    CHECK_THAT(textOf("{\"pumpwright\": "), Catch::Contains("cut off"));
}

TEST_CASE("a file cut off anywhere is refused, and nothing else happens", "[files][bad-file]") {
    const std::string whole = withWire(wireNumber(1));
    REQUIRE(parseCircuit(whole));
    for (std::size_t length = 0; length < whole.size(); ++length) {
        const auto cut = parseCircuit(std::string_view(whole).substr(0, length));
        REQUIRE_FALSE(cut);
        REQUIRE(cut.error().code == ErrorCode::NotJson);
        REQUIRE(cut.error().place.line > 0);
        CHECK_THAT(cut.error().text, Catch::Contains(length == 0 ? "empty" : "cut off"));
    }
}

TEST_CASE("every byte of a file may be damaged without a crash", "[files][bad-file]") {
    const std::string whole = withWire(wireNumber(1));
    for (std::size_t at = 0; at < whole.size(); ++at) {
        for (const char damage : {'\0', '"', '{', '}', '[', '9', '-', '\x80', '\xFF', '\n'}) {
            std::string damaged = whole;
            damaged[at] = damage;
            const auto read = parseCircuit(damaged);
            REQUIRE((read || !read.error().text.empty()));
        }
    }
}

TEST_CASE("nesting of any depth is refused quickly", "[files][bad-file]") {
    for (const int depth : {33, 10'000, 1'000'000}) {
        for (const char* piece : {"[", "{\"a\":"}) {
            const auto open = parseCircuit(repeated(piece, depth));
            REQUIRE_FALSE(open);
            CHECK(open.error().code == ErrorCode::TooDeep);
        }
    }
    const auto closed =
        parseCircuit(R"({"pumpwright": 1, "later": )" + repeated("[", 10'000) + repeated("]", 10'000) + "}");
    REQUIRE_FALSE(closed);
    CHECK(closed.error().code == ErrorCode::TooDeep);
}

TEST_CASE("each limit holds exactly", "[files][bad-file]") {
    const JsonLimits limits;
    checkLimit(static_cast<int>(limits.depth), ErrorCode::TooDeep, "/later" + repeated("/0", 31),
               [](int depth) {
                   return R"({"pumpwright": 1, "later": )" + repeated("[", depth - 1) +
                          repeated("]", depth - 1) + "}";
               });
    checkLimit(static_cast<int>(limits.parts), ErrorCode::TooLarge, "/parts/10000",
               [](int count) { return withParts(list(partNumber, count)); });
    checkLimit(static_cast<int>(limits.wires), ErrorCode::TooLarge, "/wires/20000",
               [](int count) { return withWire(list(wireNumber, count)); });
    checkLimit(static_cast<int>(limits.elements), ErrorCode::TooLarge, "/plan/presses/1000", [](int count) {
        return withPlan("\"presses\": [" + list([](int) { return "{\"at_s\": 1}"; }, count) + "]");
    });
    checkLimit(static_cast<int>(limits.keys), ErrorCode::TooLarge, "/later/k200", [](int count) {
        const auto key = [](int number) { return "\"k" + std::to_string(number) + "\": 0"; };
        return R"({"pumpwright": 1, "later": {)" + list(key, count) + "}}";
    });
    checkLimit(static_cast<int>(limits.textBytes), ErrorCode::TooLarge, "/title/title", [](int size) {
        return R"({"pumpwright": 1, "title": {"title": ")" +
               std::string(static_cast<std::size_t>(size), 'x') + "\"}}";
    });
    checkLimit(64, ErrorCode::OutOfRange, "/parts/0/id", [](int size) {
        return withParts("{\"id\": \"" + std::string(static_cast<std::size_t>(size), 'x') +
                         "\", \"kind\": \"resistor\", \"at\": [0, 0]}");
    });
}

TEST_CASE("a file of 8 MiB is read, one byte more is refused", "[files][bad-file]") {
    std::string text = "{\"pumpwright\": 1}";
    text.resize(JsonLimits{}.fileBytes, ' ');
    CHECK(parseCircuit(text));
    text += ' ';
    const auto above = parseCircuit(text);
    REQUIRE_FALSE(above);
    CHECK(above.error().code == ErrorCode::TooLarge);
}

TEST_CASE("8 MiB of hostile text is refused in two seconds", "[files][bad-file]") {
    const int most = static_cast<int>(JsonLimits{}.fileBytes);
    for (const std::string piece : {"0,", "[],", "{\"a\":0},", "{},", "\"\",", "[[[["}) {
        const std::string text = "[" + repeated(piece, (most - 1) / static_cast<int>(piece.size()));
        const std::clock_t start = std::clock();
        const auto read = parseCircuit(text);
        INFO(piece);
        REQUIRE_FALSE(read);
        CHECK(secondsSince(start) < kMostSeconds);
    }
    // As many keys as an object may have, in as many objects as fit: the dearest text inside the limits.
    std::string keys;
    for (int key = 0; key < 200; ++key) {
        keys += (key == 0 ? "\"" : ",\"") + std::to_string(1000 + key) + "\":{}";
    }
    const std::string object = "{" + keys + "},";
    std::string lists;
    for (int count = most / static_cast<int>(object.size()) - 10; count > 0; count -= 900) {
        std::string some = repeated(object, std::min(count, 900));
        some.back() = ']';
        lists += "[" + some + ",";
    }
    lists.back() = ']';
    const std::clock_t start = std::clock();
    const auto read = parseCircuit(R"({"pumpwright": 1, "later": [)" + lists + R"(, "parts": 1})");
    REQUIRE_FALSE(read);
    CHECK(read.error().code == ErrorCode::WrongType);
    CHECK(secondsSince(start) < kMostSeconds);
}

TEST_CASE("a pointer leads to the line of its value, or of the nearest parent", "[files][bad-file]") {
    const std::string text = "{\n\"a\": [\n1,\n{\"b/c\":\n2}],\n\"ab\": 3}";
    CHECK(lineOfPointer(text, "") == 1);
    CHECK(lineOfPointer(text, "/a") == 2);
    CHECK(lineOfPointer(text, "/a/0") == 3);
    CHECK(lineOfPointer(text, "/a/1") == 4);
    CHECK(lineOfPointer(text, "/a/1/b~1c") == 5);
    CHECK(lineOfPointer(text, "/ab") == 6);
    CHECK(lineOfPointer(text, "/a/1/missing") == 4);
    CHECK(lineOfPointer(text, "/a/7") == 2);
}

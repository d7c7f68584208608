#include "core/files/circuit_file.h"
#include "core/files/json_scan.h"
#include "tests/support/catch.h"

#include <ctime>
#include <functional>

using namespace pumpwright;

namespace {

struct BadFile {
    std::string name;
    std::string text;
    ErrorCode code;
    int line = 0;             ///< 0: not looked at
    std::string pointer = {}; ///< where the message must point
};

/// A circuit with what is given in place of, or after, its usual keys.
std::string withParts(const std::string& parts) {
    return R"({"pumpwright": 1, "parts": [)" + parts + "]}";
}

const std::string kResistor = R"({"id": "p1", "kind": "resistor", "reference": "R1", "at": [0, 0]})";

std::string withWire(const std::string& wire) {
    return R"({"pumpwright": 1, "parts": [)" + kResistor + "],\n\"wires\": [\n" + wire + "]}";
}

std::string withPlan(const std::string& plan) {
    return R"({"pumpwright": 1, "plan": {)" + plan + "}}";
}

std::string withPartKey(const std::string& keys) {
    return withParts(R"({"id": "p1", "kind": "resistor", "at": [0, 0], )" + keys + "}");
}

std::string withChange(const std::string& change) {
    return R"({"pumpwright": 1, "trials": [{"id": "t1", "changes": [)" + change + "]}]}";
}

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

std::vector<BadFile> notJson() {
    using enum ErrorCode;
    return {
        {"empty", "", NotJson, 1},
        {"only space", " \n ", NotJson, 2},
        {"plain words", "wiring of the van", NotJson, 1},
        {"XML", "<?xml version=\"1.0\"?>", NotJson, 1},
        {"byte-order mark", "\xEF\xBB\xBF{\"pumpwright\": 1}", NotJson, 1},
        {"UTF-16", std::string("\xFF\xFE{\0\"\0", 6), NotJson, 1},
        {"trailing text", "{\"pumpwright\": 1}\n\nand more", NotJson, 3},
        {"two objects", "{\"pumpwright\": 1}{}", NotJson, 1},
        {"trailing comma", "{\"pumpwright\": 1,\n}", NotJson, 2},
        {"comment", "{\"pumpwright\": 1 // first\n}", NotJson, 1},
        {"single quotes", "{'pumpwright': 1}", NotJson, 1},
        {"unquoted key", "{pumpwright: 1}", NotJson, 1},
        {"NaN", withPlan("\"duration_s\": NaN"), NotJson, 1},
        {"infinity", withPlan("\"duration_s\": Infinity"), NotJson, 1},
        {"minus infinity", withPlan("\"duration_s\": -Infinity"), NotJson, 1},
        {"leading zero", withPlan("\"duration_s\": 012"), NotJson, 1},
        {"plus sign", withPlan("\"duration_s\": +12"), NotJson, 1},
        {"decimal comma", withPlan("\"duration_s\": 1,5"), NotJson, 1},
        {"hexadecimal", withPlan("\"duration_s\": 0x10"), NotJson, 1},
        {"ends after point", withPlan("\"duration_s\": 1."), NotJson, 1},
        {"lone high surrogate", withPlan(R"("name": "\ud800")"), NotJson, 1},
        {"lone low surrogate", withPlan(R"("name": "\udc00")"), NotJson, 1},
        {"surrogates swapped", withPlan(R"("name": "\udc00\ud800")"), NotJson, 1},
        {"bad UTF-8", withPlan("\"name\": \"\xC3\x28\""), NotJson, 1},
        {"overlong UTF-8", withPlan("\"name\": \"\xC0\xAF\""), NotJson, 1},
        {"UTF-8 surrogate", withPlan("\"name\": \"\xED\xA0\x80\""), NotJson, 1},
        {"beyond Unicode", withPlan("\"name\": \"\xF5\x80\x80\x80\""), NotJson, 1},
        {"bad escape", withPlan(R"("name": "\x41")"), NotJson, 1},
        {"raw line break in a text", withPlan("\"name\": \"a\nb\""), NotJson},
        {"NUL byte at the end", std::string("{\"pumpwright\": 1}\0", 18), NotJson, 1},
        {"NUL byte and more", std::string("{\"pumpwright\": 1}\n\0{}", 21), NotJson, 2},
        {"NUL as escape", withPlan(R"("name": "a\u0000b")"), NotJson, 1, "/plan/name"},
        {"unclosed list", R"({"pumpwright": 1, "parts": [)", NotJson, 1},
        {"wrong closing", R"({"pumpwright": 1, "parts": [})", NotJson, 1},
    };
}

std::vector<BadFile> notACircuit() {
    using enum ErrorCode;
    return {
        {"a list", "[]", WrongType, 1, ""},
        {"a number", "1", WrongType, 1, ""},
        {"null", "null", WrongType, 1, ""},
        {"another object", "{\"type\": \"drawing\"}", NotACircuit, 1, ""},
        {"newer version", "{\n\"pumpwright\": 2}", NewerVersion, 2, "/pumpwright"},
        {"much newer version", "{\"pumpwright\": 18446744073709551615}", NewerVersion, 1, "/pumpwright"},
        {"version zero", "{\"pumpwright\": 0}", NotACircuit, 1, "/pumpwright"},
        {"version below zero", "{\"pumpwright\": -1}", NotACircuit, 1, "/pumpwright"},
        {"version as text", "{\"pumpwright\": \"1\"}", NotACircuit, 1, "/pumpwright"},
        {"version with a point", "{\"pumpwright\": 1.5}", NotACircuit, 1, "/pumpwright"},
        {"version of 70 digits", "{\"pumpwright\": 1" + std::string(69, '0') + "}", NotACircuit, 1,
         "/pumpwright"},
    };
}

std::vector<BadFile> badParts() {
    using enum ErrorCode;
    return {
        {"parts as object", R"({"pumpwright": 1, "parts": {}})", WrongType, 1, "/parts"},
        {"part as text", withParts("\"relay\""), WrongType, 1, "/parts/0"},
        {"part without id", withParts(R"({"kind": "resistor", "at": [0, 0]})"), MissingKey, 1, "/parts/0/id"},
        {"part without kind", withParts(R"({"id": "p1", "at": [0, 0]})"), MissingKey, 1, "/parts/0/kind"},
        {"part without place", withParts(R"({"id": "p1", "kind": "resistor"})"), MissingKey, 1,
         "/parts/0/at"},
        {"id as number", withParts(R"({"id": 1, "kind": "resistor", "at": [0, 0]})"), WrongType, 1,
         "/parts/0/id"},
        {"id empty", withParts(R"({"id": "", "kind": "resistor", "at": [0, 0]})"), OutOfRange, 1,
         "/parts/0/id"},
        {"id with a slash", withParts(R"({"id": "../x", "kind": "resistor", "at": [0, 0]})"), OutOfRange, 1,
         "/parts/0/id"},
        {"id too long",
         withParts("{\"id\": \"" + std::string(65, 'p') + "\", \"kind\": \"resistor\", \"at\": [0, 0]}"),
         OutOfRange, 1, "/parts/0/id"},
        {"kind misspelt", withParts(R"({"id": "p1", "kind": "resitor", "at": [0, 0]})"), UnknownKind, 1,
         "/parts/0/kind"},
        {"kind unheard of", withParts(R"({"id": "p1", "kind": "flux-capacitor", "at": [0, 0]})"), UnknownKind,
         1, "/parts/0/kind"},
        {"id twice", withParts(kResistor + ",\n" + kResistor), DuplicateId, 2, "/parts/1/id"},
        {"key twice", withParts("{\"id\": \"p1\",\n\"id\": \"p2\", \"kind\": \"resistor\", \"at\": [0, 0]}"),
         DuplicateKey, 2, "/parts/0/id"},
        {"key twice by escape", R"({"pumpwright": 1, "pumpwrigh\u0074": 1})", DuplicateKey, 1, "/pumpwright"},
        {"unknown key twice", R"({"pumpwright": 1, "later": {"a": 1, "a": 2}})", DuplicateKey, 1, "/later/a"},
        {"place with one number", withParts(R"({"id": "p1", "kind": "resistor", "at": [0]})"), WrongType, 1,
         "/parts/0/at"},
        {"place between steps", withParts(R"({"id": "p1", "kind": "resistor", "at": [0.5, 0]})"), WrongType,
         1, "/parts/0/at"},
        {"place far away", withParts(R"({"id": "p1", "kind": "resistor", "at": [0, 4294967296]})"), WrongType,
         1, "/parts/0/at"},
        {"turned five times", withPartKey("\"quarterTurns\": 5"), OutOfRange, 1, "/parts/0/quarterTurns"},
        {"turned a bit", withPartKey("\"quarterTurns\": 0.5"), OutOfRange, 1, "/parts/0/quarterTurns"},
        {"mirrored by number", withPartKey("\"mirrored\": 1"), WrongType, 1, "/parts/0/mirrored"},
        {"price below zero", withPartKey("\"price\": -1"), OutOfRange, 1, "/parts/0/price"},
        {"price as text", withPartKey("\"price\": \"5 EUR\""), WrongType, 1, "/parts/0/price"},
        {"label as list", withPartKey("\"label\": [\"a\"]"), WrongType, 1, "/parts/0/label"},
        {"values as list", withPartKey("\"values\": []"), WrongType, 1, "/parts/0/values"},
        {"value as text", withPartKey(R"("values": {"resistance_ohm": "100"})"), WrongType, 1,
         "/parts/0/values/resistance_ohm"},
        {"value null", withPartKey(R"("values": {"resistance_ohm": null})"), WrongType, 1,
         "/parts/0/values/resistance_ohm"},
        {"value 1e308", withPartKey(R"("values": {"resistance_ohm": 1e308})"), OutOfRange, 1,
         "/parts/0/values/resistance_ohm"},
        {"value 1e309", withPartKey("\n\"values\": {\"resistance_ohm\": 1e309\n}"), OutOfRange, 2,
         "/parts/0/values/resistance_ohm"},
        {"value below its range", withPartKey(R"("values": {"resistance_ohm": -100})"), OutOfRange, 1,
         "/parts/0/values/resistance_ohm"},
        {"unknown value as text", withPartKey(R"("values": {"later_ohm": "a"})"), WrongType, 1,
         "/parts/0/values/later_ohm"},
        {"choice as number", withPartKey(R"("choices": {"later": 3})"), WrongType, 1,
         "/parts/0/choices/later"},
        {"key with slash and tilde", withPartKey(R"("values": {"a/b~c": true})"), WrongType, 1,
         "/parts/0/values/a~1b~0c"},
    };
}

std::vector<BadFile> badConnections() {
    using enum ErrorCode;
    const std::string good = R"("to": {"part": "p1", "terminal": "2"})";
    return {
        {"wire without an end", withWire("{\"id\": \"w1\", " + good + "}"), MissingKey, 3, "/wires/0/from"},
        {"wire to no part",
         withWire(R"({"id": "w1", "from": {"part": "p9", "terminal": "1"}, )" + good + "}"),
         DanglingReference, 3, "/wires/0/from/part"},
        {"wire to no terminal",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "87"}, )" + good + "}"),
         DanglingReference, 3, "/wires/0/from/terminal"},
        {"wire's end as text", withWire("{\"id\": \"w1\", \"from\": \"p1.1\", " + good + "}"), WrongType, 3,
         "/wires/0/from"},
        {"wire's end with a third key",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1", "side": "left"}, )" + good + "}"),
         WrongType, 3, "/wires/0/from/side"},
        {"wire of no length",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1"}, "length_m": 0, )" + good + "}"),
         OutOfRange, 3, "/wires/0/length_m"},
        {"wire of no cross-section",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1"}, "area_m2": 0, )" + good + "}"),
         OutOfRange, 3, "/wires/0/area_m2"},
        {"wire of no colour",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1"}, "colour": "mauve", )" + good +
                  "}"),
         UnknownChoice, 3, "/wires/0/colour"},
        {"wire in unheard-of insulation",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1"}, "insulation": "silk", )" + good +
                  "}"),
         UnknownChoice, 3, "/wires/0/insulation"},
        {"wire bundled with none",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1"}, "bundled": 0, )" + good + "}"),
         OutOfRange, 3, "/wires/0/bundled"},
        {"wire bent at nothing",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1"}, "bends": [[1]], )" + good + "}"),
         WrongType, 3, "/wires/0/bends/0"},
        {"hose to a terminal",
         R"({"pumpwright": 1, "parts": [)" + kResistor +
             R"(], "hoses": [{"id": "h1", "from": {"part": "p1", "terminal": "1"}, )" + good + "}]}",
         DanglingReference, 1, "/hoses/0/from/terminal"},
    };
}

std::vector<BadFile> badSections() {
    using enum ErrorCode;
    return {
        {"currency of nowhere", R"({"pumpwright": 1, "currency": "euro"})", UnknownChoice, 1, "/currency"},
        {"title as text", R"({"pumpwright": 1, "title": "Van"})", WrongType, 1, "/title"},
        {"limits out of range", R"({"pumpwright": 1, "limits": {"voltageDropShare": 10}})", OutOfRange, 1,
         "/limits/voltageDropShare"},
        {"plan as list", R"({"pumpwright": 1, "plan": []})", WrongType, 1, "/plan"},
        {"plan of no length", withPlan("\"duration_s\": 0"), OutOfRange, 1, "/plan/duration_s"},
        {"plan of a century", withPlan("\"duration_s\": 3e9"), OutOfRange, 1, "/plan/duration_s"},
        {"more vacuum than air", withPlan("\"initialVacuum_Pa\": 200000"), OutOfRange, 1,
         "/plan/initialVacuum_Pa"},
        {"press before the start", withPlan("\"presses\": [{\"at_s\": -1}]"), OutOfRange, 1,
         "/plan/presses/0/at_s"},
        {"press that is a number", withPlan("\"presses\": [10]"), WrongType, 1, "/plan/presses/0"},
        {"switch that is not there", withPlan("\n\"switchMoves\": [{\"at_s\": 1,\n\"part\": \"p7\"}]"),
         DanglingReference, 3, "/plan/switchMoves/0/part"},
        {"charging backwards", withPlan("\"charging\": [{\"from_s\": 5, \"to_s\": 4}]"), OutOfRange, 1,
         "/plan/charging/0/to_s"},
        {"altitude of the moon", withPlan("\"altitude\": [{\"at_s\": 0, \"altitude_m\": 3.8e8}]"), OutOfRange,
         1, "/plan/altitude/0/altitude_m"},
        {"trial without id", R"({"pumpwright": 1, "trials": [{"changes": []}]})", MissingKey, 1,
         "/trials/0/id"},
        {"trial twice", R"({"pumpwright": 1, "trials": [{"id": "a"}, {"id": "a"}]})", DuplicateId, 1,
         "/trials/1/id"},
        {"change of no sort", withChange("{\"paint\": \"red\"}"), UnknownChoice, 1, "/trials/0/changes/0"},
        {"two changes in one", withChange("{\"takePart\": \"p1\", \"takeWire\": \"w1\"}"), UnknownChoice, 1,
         "/trials/0/changes/0"},
        {"change that takes a number", withChange("{\"takePart\": 1}"), WrongType, 1,
         "/trials/0/changes/0/takePart"},
        {"change that puts a bad part",
         withChange(R"({"putPart": {"id": "p1", "kind": "fuze", "at": [0, 0]}})"), UnknownKind, 1,
         "/trials/0/changes/0/putPart/kind"},
        {"change to bad waivers", withChange("{\"replaceWaivers\": {}}"), WrongType, 1,
         "/trials/0/changes/0/replaceWaivers"},
        {"waiver without rule", R"({"pumpwright": 1, "waivers": [{"reason": "x"}]})", MissingKey, 1,
         "/waivers/0/rule"},
        {"waiver about numbers", R"({"pumpwright": 1, "waivers": [{"rule": "x", "subjects": [1]}]})",
         WrongType, 1, "/waivers/0/subjects/0"},
    };
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

#ifdef __SANITIZE_ADDRESS__
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

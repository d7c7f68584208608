#pragma once

#include "core/units/result.h"

#include <string>
#include <vector>

namespace pumpwright {

/// A text that the reader must refuse, how, and where.
struct BadFile {
    std::string name;
    std::string text;
    ErrorCode code;
    int line = 0;             ///< 0: not looked at
    std::string pointer = {}; ///< where the message must point
};

// Circuits that are sound but for what is given.
inline std::string withParts(const std::string& parts) {
    return R"({"pumpwright": 1, "parts": [)" + parts + "]}";
}

inline const std::string kResistor = R"({"id": "p1", "kind": "resistor", "reference": "R1", "at": [0, 0]})";

inline std::string withWire(const std::string& wire) {
    return R"({"pumpwright": 1, "parts": [)" + kResistor + "],\n\"wires\": [\n" + wire + "]}";
}

inline std::string withPlan(const std::string& plan) {
    return R"({"pumpwright": 1, "plan": {)" + plan + "}}";
}

inline std::string withPartKey(const std::string& keys) {
    return withParts(R"({"id": "p1", "kind": "resistor", "at": [0, 0], )" + keys + "}");
}

inline std::string withChange(const std::string& change) {
    return R"({"pumpwright": 1, "trials": [{"id": "t1", "changes": [)" + change + "]}]}";
}

// Texts that are no JSON.
inline std::vector<BadFile> notJson() {
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

inline std::vector<BadFile> notACircuit() {
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

inline std::vector<BadFile> badParts() {
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
        {"label moved by one number", withPartKey("\"labelFrom_mm\": [3]"), WrongType, 1,
         "/parts/0/labelFrom_mm"},
        {"label moved by a half", withPartKey("\"labelFrom_mm\": [3, 0.5]"), WrongType, 1,
         "/parts/0/labelFrom_mm"},
        {"label moved too far", withPartKey("\"labelFrom_mm\": [3, 1001]"), WrongType, 1,
         "/parts/0/labelFrom_mm"},
        {"label moved too far the other way", withPartKey("\"labelFrom_mm\": [-1001, 0]"), WrongType, 1,
         "/parts/0/labelFrom_mm"},
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
        {"tolerance as number", withPartKey(R"("tolerances": {"resistance_ohm": 0.1})"), WrongType, 1,
         "/parts/0/tolerances/resistance_ohm"},
        {"tolerance without share", withPartKey(R"("tolerances": {"resistance_ohm": {"sort": "normal"}})"),
         MissingKey, 1, "/parts/0/tolerances/resistance_ohm/share"},
        {"tolerance of more than there is", withPartKey(R"("tolerances": {"resistance_ohm": {"share": 2}})"),
         OutOfRange, 1, "/parts/0/tolerances/resistance_ohm/share"},
        {"tolerance of no sort",
         withPartKey(R"("tolerances": {"resistance_ohm": {"sort": "wide", "share": 0.1}})"), UnknownChoice, 1,
         "/parts/0/tolerances/resistance_ohm/sort"},
        {"tolerance with a third key",
         withPartKey(R"("tolerances": {"resistance_ohm": {"share": 0.1, "side": "up"}})"), WrongType, 1,
         "/parts/0/tolerances/resistance_ohm/side"},
        {"tolerance of no value", withPartKey(R"("tolerances": {"later_ohm": {"share": 0.1}})"),
         UnknownChoice, 1, "/parts/0/tolerances/later_ohm"},
        {"key with slash and tilde", withPartKey(R"("values": {"a/b~c": true})"), WrongType, 1,
         "/parts/0/values/a~1b~0c"},
    };
}

inline std::vector<BadFile> badConnections() {
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
        {"wire's label moved by words",
         withWire(R"({"id": "w1", "from": {"part": "p1", "terminal": "1"}, "labelFrom_mm": "left", )" + good +
                  "}"),
         WrongType, 3, "/wires/0/labelFrom_mm"},
        {"hose to a terminal",
         R"({"pumpwright": 1, "parts": [)" + kResistor +
             R"(], "hoses": [{"id": "h1", "from": {"part": "p1", "terminal": "1"}, )" + good + "}]}",
         DanglingReference, 1, "/hoses/0/from/terminal"},
    };
}

inline std::vector<BadFile> badSections() {
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

} // namespace pumpwright

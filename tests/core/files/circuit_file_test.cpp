#include "core/files/circuit_file.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/random_circuit.h"
#include "tests/support/test_seed.h"

#include <set>

using namespace pumpwright;

namespace {

Circuit twoResistors() {
    return CircuitBuilder()
        .part("resistor", "R1", {{"resistance_ohm", 120}})
        .part("resistor", "R2")
        .wire("R1.2", "R2.1", 0.75e-6, 0.3)
        .build();
}

} // namespace

TEST_CASE("a circuit file has its keys in a fixed order, units in them, and one value a line",
          "[files][circuit]") {
    Circuit circuit = twoResistors();
    circuit.title.title = "Two in a row";
    circuit.plan.presses = {{10, 1.5, 100, 0.2}};
    CHECK(circuitText(circuit) == R"({
  "pumpwright": 1,
  "title": {"title": "Two in a row"},
  "currency": "EUR",
  "limits": {"ambient_K": 323.15, "voltageDropShare": 0.1, "continuousFuseShare": 0.8},
  "parts": [
    {
      "id": "R1",
      "kind": "resistor",
      "reference": "R1",
      "at": [0, 0],
      "values": {"resistance_ohm": 120}
    },
    {
      "id": "R2",
      "kind": "resistor",
      "reference": "R2",
      "at": [12, 0]
    }
  ],
  "wires": [
    {
      "id": "w1",
      "reference": "W1",
      "from": {"part": "R1", "terminal": "2"},
      "to": {"part": "R2", "terminal": "1"},
      "colour": "BK",
      "area_m2": 7.5e-07,
      "length_m": 0.3,
      "insulation": "T105"
    }
  ],
  "hoses": [],
  "plan": {
    "name": "Drive",
    "duration_s": 120,
    "ambient_K": 293.15,
    "initialVacuum_Pa": 0,
    "presses": [
      {"at_s": 10, "hold_s": 1.5, "force_N": 100, "rise_s": 0.2}
    ]
  }
}
)");
}

TEST_CASE("where somebody moved labels is kept, up to the farthest place", "[files][circuit]") {
    Circuit circuit = twoResistors();
    CHECK(circuitText(circuit).find("labelFrom") == std::string::npos);
    circuit.parts.at({"R1"}).labelFrom = LabelOffset{12, -8};
    circuit.wires.at({"w1"}).labelFrom = LabelOffset{-1000, 1000};
    const std::string text = circuitText(circuit);
    CHECK(text.find("\n      \"labelFrom_mm\": [12, -8],\n      \"values\"") != std::string::npos);
    CHECK(text.find("\"insulation\": \"T105\",\n      \"labelFrom_mm\": [-1000, 1000]\n") !=
          std::string::npos);
    CHECK(parseCircuit(text).value() == circuit);
}

TEST_CASE("an empty circuit is written and read back", "[files][circuit]") {
    const auto again = parseCircuit(circuitText({}));
    REQUIRE(again);
    CHECK(*again == Circuit());
    CHECK(parseCircuit("{\"pumpwright\": 1}").value() == Circuit());
}

TEST_CASE("random circuits read back as they were written, and are then written the same",
          "[files][circuit]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    RandomCircuits random(seed);
    for (int round = 0; round < 300; ++round) {
        const Circuit circuit = random.circuit();
        const std::string text = circuitText(circuit);
        const auto again = parseCircuit(text);
        INFO(text);
        if (!again) {
            FAIL(again.error().text << " " << again.error().place.pointer << " " << again.error().place.line);
        }
        REQUIRE(*again == circuit);
        REQUIRE(circuitText(*again) == text);
    }
}

TEST_CASE("a random chain of edits taken back gives the same file, byte by byte", "[files][circuit]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    RandomCircuits random(seed);
    for (int round = 0; round < 30; ++round) {
        Circuit circuit = random.circuit();
        std::vector<std::string> texts;
        std::vector<Edit> inverses;
        for (int step = 0; step < 40; ++step) {
            texts.push_back(circuitText(circuit));
            inverses.push_back(applyEdit(circuit, random.edit(circuit)));
        }
        const Circuit edited = circuit;
        REQUIRE(parseCircuit(circuitText(edited)));
        std::vector<Edit> edits;
        for (; !inverses.empty(); inverses.pop_back(), texts.pop_back()) {
            edits.push_back(applyEdit(circuit, inverses.back()));
            REQUIRE(circuitText(circuit) == texts.back());
        }
        for (; !edits.empty(); edits.pop_back()) {
            applyEdit(circuit, edits.back());
        }
        REQUIRE(circuit == edited);
    }
}

TEST_CASE("keys of a newer version are kept on every object and written back", "[files][circuit]") {
    const std::string text = R"({"pumpwright": 1, "newSection": {"b": 1, "a": [2, null]},
        "title": {"title": "x", "language": "en"}, "limits": {"noise_dB": 60},
        "parts": [{"id": "p1", "kind": "resistor", "at": [0, 0], "tint": "#fff", "values": {"humidity_share": 0.5}}],
        "wires": [{"id": "w1", "from": {"part": "p1", "terminal": "1"}, "to": {"part": "p1", "terminal": "2"},
                   "shield": true}],
        "plan": {"weather": "rain", "presses": [{"at_s": 1, "foot": "left"}]},
        "trials": [{"id": "t", "changes": [], "verdict": "good"}],
        "waivers": [{"rule": "r", "until": "2027-01-01"}]})";
    const auto circuit = parseCircuit(text);
    REQUIRE(circuit);
    CHECK(circuit->unknown.at("newSection") == R"({"b":1,"a":[2,null]})");
    CHECK(circuit->title.unknown.at("language") == "\"en\"");
    CHECK(circuit->parts.at({"p1"}).unknown.at("tint") == "\"#fff\"");
    CHECK(circuit->parts.at({"p1"}).values.at("humidity_share") == 0.5);
    CHECK(circuit->wires.at({"w1"}).unknown.at("shield") == "true");
    const std::string written = circuitText(*circuit);
    for (const char* key : {"newSection", "language", "noise_dB", "tint", "humidity_share", "shield",
                            "weather", "foot", "verdict", "until"}) {
        CAPTURE(key);
        CHECK(written.find('"' + std::string(key) + '"') != std::string::npos);
    }
    CHECK(parseCircuit(written).value() == *circuit);
}

TEST_CASE("a plan's lists are put in order of time when they are read", "[files][circuit]") {
    const auto circuit = parseCircuit(R"({"pumpwright": 1, "plan": {"presses": [{"at_s": 9}, {"at_s": 3},
        {"at_s": 9, "force_N": 50}]}})");
    REQUIRE(circuit);
    REQUIRE(circuit->plan.presses.size() == 3);
    CHECK(circuit->plan.presses[0].at_s == 3);
    CHECK(circuit->plan.presses[1].force_N == 100);
    CHECK(circuit->plan.presses[2].force_N == 50);
}

TEST_CASE("minus zero is written as zero", "[files][circuit]") {
    Circuit circuit;
    circuit.plan.initialVacuum_Pa = -0.0;
    CHECK(circuitText(circuit) == circuitText({}));
}

TEST_CASE("the check sum has eight characters and changes with every field", "[files][circuit]") {
    Circuit circuit = twoResistors();
    std::set<std::string> sums{circuitCheckSum(circuit)};
    CHECK(sums.begin()->size() == 8);
    CHECK(circuitCheckSum(twoResistors()) == *sums.begin());
    circuit.title.revision = "B";
    sums.insert(circuitCheckSum(circuit));
    circuit.parts.at({"R1"}).values["resistance_ohm"] = 121;
    sums.insert(circuitCheckSum(circuit));
    circuit.wires.at({"w1"}).length_m += 1e-15;
    sums.insert(circuitCheckSum(circuit));
    circuit.waivers.push_back({"wire-current", {"w1"}, "short", "ab", 1});
    sums.insert(circuitCheckSum(circuit));
    CHECK(sums.size() == 5);
}

TEST_CASE("a fragment has only the wires with both ends in it, and no plan", "[files][circuit]") {
    Circuit circuit = twoResistors();
    circuit.title.title = "whole";
    circuit.plan.duration_s = 5;
    const auto whole = parseFragment(fragmentText(circuit));
    REQUIRE(whole);
    CHECK(whole->parts == circuit.parts);
    CHECK(whole->wires == circuit.wires);
    CHECK(whole->title == TitleBlock());
    CHECK(whole->plan == DrivePlan());

    circuit.parts.erase({"R2"});
    const auto half = parseFragment(fragmentText(circuit));
    REQUIRE(half);
    CHECK(half->parts.size() == 1);
    CHECK(half->wires.empty());
    CHECK_FALSE(parseFragment("some text from another program"));
}

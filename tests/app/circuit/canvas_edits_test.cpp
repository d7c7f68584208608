#include "app/desktop/circuit/canvas_edits.h"
#include "core/files/circuit_file.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <algorithm>

using namespace pumpwright;

namespace {

Circuit sample() {
    Circuit circuit = CircuitBuilder()
                          .part("fuse", "F1")
                          .part("relay", "K1")
                          .part("lamp", "P1")
                          .part("pump", "M1")
                          .part("reservoir", "C1")
                          .wire("F1.2", "K1.30")
                          .wire("K1.87", "P1.1")
                          .hose("C1.a", "M1.inlet")
                          .build();
    circuit.wires.at({"w1"}).bends = {{5, 5}, {9, 5}};
    return circuit;
}

SelectedObjects parts(std::set<PartId> ids) {
    return {std::move(ids), {}, {}};
}

/// Makes the edit, checks that its inverse restores every byte, and returns the circuit after it.
Circuit madeAndUndone(const Circuit& circuit, const Edit& edit) {
    const std::string before = circuitText(circuit);
    Circuit copy = circuit;
    const Edit inverse = applyEdit(copy, edit);
    Circuit back = copy;
    applyEdit(back, inverse);
    CHECK(circuitText(back) == before);
    return copy;
}

} // namespace

TEST_CASE("a move takes parts and the fixed corners between them along", "[canvas-edits]") {
    const Circuit circuit = sample();
    const Edit edit = movement(circuit, parts({{"F1"}, {"K1"}}), {3, -2});
    CHECK(edit.name == "Move F1, K1");
    const Circuit after = madeAndUndone(circuit, edit);
    CHECK(after.parts.at({"F1"}).at == GridPoint{3, -2});
    CHECK(after.wires.at({"w1"}).bends == std::vector<GridPoint>{{8, 3}, {12, 3}});
    CHECK(after.parts.at({"P1"}) == circuit.parts.at({"P1"}));
}

TEST_CASE("a move leaves the corners of lines that go elsewhere", "[canvas-edits]") {
    const Circuit circuit = sample();
    const Circuit after = madeAndUndone(circuit, movement(circuit, parts({{"F1"}}), {3, -2}));
    CHECK(after.wires.at({"w1"}) == circuit.wires.at({"w1"}));
}

TEST_CASE("a single part turns on the spot, and four turns give the same bytes", "[canvas-edits]") {
    Circuit circuit = sample();
    const std::string before = circuitText(circuit);
    for (int turn = 1; turn <= 4; ++turn) {
        circuit = madeAndUndone(circuit, rotation(circuit, parts({{"K1"}})));
        CHECK(circuit.parts.at({"K1"}).quarterTurns == turn % 4);
        CHECK(circuit.parts.at({"K1"}).at == sample().parts.at({"K1"}).at);
    }
    CHECK(circuitText(circuit) == before);
}

TEST_CASE("a group turns round its middle and mirrors about it", "[canvas-edits]") {
    const Circuit circuit = sample(); // F1 at 0,0, K1 at 12,0
    const Circuit turned = madeAndUndone(circuit, rotation(circuit, parts({{"F1"}, {"K1"}})));
    CHECK(turned.parts.at({"F1"}).at == GridPoint{6, -6});
    CHECK(turned.parts.at({"K1"}).at == GridPoint{6, 6});
    const Circuit mirrored = madeAndUndone(circuit, mirroring(circuit, parts({{"F1"}, {"K1"}})));
    CHECK(mirrored.parts.at({"F1"}).at == GridPoint{12, 0});
    CHECK(mirrored.parts.at({"F1"}).mirrored);
}

TEST_CASE("mirroring twice gives the same bytes in every position", "[canvas-edits]") {
    for (int turns = 0; turns < 4; ++turns) {
        Circuit circuit = sample();
        circuit.parts.at({"K1"}).quarterTurns = turns;
        const std::string before = circuitText(circuit);
        circuit = madeAndUndone(circuit, mirroring(circuit, parts({{"K1"}})));
        circuit = madeAndUndone(circuit, mirroring(circuit, parts({{"K1"}})));
        CHECK(circuitText(circuit) == before);
    }
}

TEST_CASE("deleting a part takes the lines that end on it", "[canvas-edits]") {
    const Circuit circuit = sample();
    const Circuit after = madeAndUndone(circuit, removal(circuit, parts({{"K1"}, {"M1"}})));
    CHECK(after.parts.size() == 3);
    CHECK(after.wires.empty());
    CHECK(after.hoses.empty());
}

TEST_CASE("deleting a wire leaves the parts", "[canvas-edits]") {
    const Circuit circuit = sample();
    const Edit edit = removal(circuit, {{}, {{"w2"}}, {}});
    CHECK(edit.name == "Delete W2");
    const Circuit after = madeAndUndone(circuit, edit);
    CHECK(after.parts.size() == circuit.parts.size());
    CHECK(after.wires.size() == 1);
}

TEST_CASE("a fragment has the selected parts and what joins two of them", "[canvas-edits]") {
    const Circuit fragment = fragmentOf(sample(), parts({{"F1"}, {"K1"}}));
    CHECK(fragment.parts.size() == 2);
    CHECK(fragment.wires.size() == 1);
    CHECK(fragment.hoses.empty());
}

TEST_CASE("pasted objects have ids and references of their own and the same joints", "[canvas-edits]") {
    const Circuit circuit = sample();
    const Addition addition = pasting(circuit, fragmentOf(circuit, allObjects(circuit)), {1, 30});
    const Circuit after = madeAndUndone(circuit, addition.edit);
    CHECK(after.parts.size() == 10);
    CHECK(after.wires.size() == 4);
    CHECK(after.hoses.size() == 2);
    CHECK(addition.objects.parts.size() == 5);
    std::set<std::string> references;
    for (const auto& [id, part] : after.parts) {
        CHECK(references.insert(part.reference).second);
    }
    for (const auto& [id, wire] : after.wires) {
        CHECK(references.insert(wire.reference).second);
    }
    for (const WireId& id : addition.objects.wires) {
        const Wire& wire = after.wires.at(id);
        CHECK(addition.objects.parts.contains(wire.from.part));
        CHECK(addition.objects.parts.contains(wire.to.part));
    }
    for (const PartId& id : addition.objects.parts) {
        CHECK(after.parts.at(id).at.y >= 30);
    }
}

TEST_CASE("pasting into a circuit without these parts works the same", "[canvas-edits]") {
    const Circuit circuit = sample();
    const Addition addition = pasting({}, fragmentOf(circuit, allObjects(circuit)), {0, 0});
    Circuit empty;
    applyEdit(empty, addition.edit);
    CHECK(empty.parts.size() == 5);
    CHECK(empty.wires.size() == 2);
}

TEST_CASE("a placed part gets the next free reference of its letter", "[canvas-edits]") {
    const Circuit circuit = sample();
    Part prototype = circuit.parts.at({"K1"});
    prototype.reference.clear();
    const Addition addition = placing(circuit, prototype, {4, 40});
    CHECK(addition.edit.name == "Place K2");
    const Circuit after = madeAndUndone(circuit, addition.edit);
    REQUIRE(addition.objects.parts.size() == 1);
    const Part& placed = after.parts.at(*addition.objects.parts.begin());
    CHECK(placed.reference == "K2");
    CHECK(placed.at == GridPoint{4, 40});
}

TEST_CASE("laying a wire fixes its corners, and no corners free it", "[canvas-edits]") {
    const Circuit circuit = sample();
    const Circuit after = madeAndUndone(circuit, shaping(circuit, WireId{"w2"}, {{1, 2}}));
    CHECK(after.wires.at({"w2"}).bends == std::vector<GridPoint>{{1, 2}});
    CHECK(madeAndUndone(circuit, shaping(circuit, WireId{"w1"}, {})).wires.at({"w1"}).bends.empty());
}

TEST_CASE("names count where there are many", "[canvas-edits]") {
    const Circuit circuit = sample();
    CHECK(movement(circuit, allObjects(circuit), {1, 0}).name == "Move 5 objects");
}

#include "app/desktop/circuit/geometry.h"
#include "app/desktop/circuit/line_surgery.h"
#include "core/files/circuit_file.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

/// A fuse and a lamp 20 steps apart on one height, one wire of 2 m between them, and a second lamp.
Circuit line() {
    Circuit circuit = CircuitBuilder()
                          .part("fuse", "F1")
                          .part("lamp", "P1")
                          .part("lamp", "P2")
                          .part("reservoir", "C1")
                          .part("pump", "M1")
                          .wire("F1.2", "P1.1", 2.5e-6, 2)
                          .hose("C1.a", "M1.inlet", 0.009, 1)
                          .build();
    circuit.parts.at({"P1"}).at = {20, 0};
    circuit.parts.at({"P2"}).at = {10, 12};
    circuit.parts.at({"C1"}).at = {0, 30};
    circuit.parts.at({"M1"}).at = {20, 30};
    return circuit;
}

Circuit made(const Circuit& circuit, const Edit& edit) {
    Circuit after = circuit;
    const Edit inverse = applyEdit(after, edit);
    Circuit back = after;
    applyEdit(back, inverse);
    CHECK(circuitText(back) == circuitText(circuit));
    return after;
}

CutPlace middleOf(const LinePicture& picture) {
    return cutPlace(picture, picture.path.boundingRect().center()).value();
}

} // namespace

TEST_CASE("a line is cut on the grid, never at its ends", "[surgery]") {
    LinePicture picture;
    picture.corners = {{0, 0}, {4, 0}, {4, 6}};
    const auto place = cutPlace(picture, scenePoint({4, 1}));
    REQUIRE(place);
    CHECK(place->at == GridPoint{4, 1});
    CHECK(place->stretch == 1);
    CHECK(place->share == Approx(0.5));
    CHECK(cutPlace(picture, scenePoint({0, 0}))->at == GridPoint{1, 0});
    picture.corners = {{0, 0}, {1, 0}};
    CHECK_FALSE(cutPlace(picture, scenePoint({0, 0})));
}

TEST_CASE("a wire that ends on a wire gets a splice there, in one edit", "[surgery]") {
    const Circuit circuit = line();
    const CutPlace place = middleOf(layoutOf(circuit).wires.at({"w1"}));
    Wire branch;
    branch.from = {{"P2"}, "1"};
    const Addition addition = branching(circuit, WireId{"w1"}, place, branch);
    CHECK(addition.edit.name == "Splice into W1");
    const Circuit after = made(circuit, addition.edit);
    REQUIRE(after.wires.size() == 3);
    REQUIRE(addition.objects.parts.size() == 1);
    const PartId splice = *addition.objects.parts.begin();
    CHECK(after.parts.at(splice).kind == "splice");
    CHECK(after.parts.at(splice).at == place.at);
    const Wire& first = after.wires.at({"w1"});
    const Wire& second = after.wires.at({"w2"});
    CHECK(first.from == End{{"F1"}, "2"});
    CHECK(first.to == End{splice, "1"});
    CHECK(second.from == End{splice, "1"});
    CHECK(second.to == End{{"P1"}, "1"});
    CHECK(second.area_m2 == 2.5e-6);
    CHECK(first.length_m + second.length_m == Approx(2));
    CHECK(after.wires.at({"w3"}).to == End{splice, "1"});
}

TEST_CASE("a hose that ends on a hose gets a tee there, its run along the hose", "[surgery]") {
    const Circuit circuit = line();
    const CutPlace place = middleOf(layoutOf(circuit).hoses.at({"h1"}));
    Hose branch;
    branch.from = {{"C1"}, "b"};
    const Addition addition = branching(circuit, HoseId{"h1"}, place, branch);
    const Circuit after = made(circuit, addition.edit);
    REQUIRE(after.hoses.size() == 3);
    const PartId tee = *addition.objects.parts.begin();
    CHECK(after.hoses.at({"h1"}).to == End{tee, "a"});
    CHECK(after.hoses.at({"h2"}).from == End{tee, "b"});
    CHECK(after.hoses.at({"h3"}).to == End{tee, "c"});
}

TEST_CASE("a part dropped onto a wire takes the beginning at the terminal that faces it", "[surgery]") {
    const Circuit circuit = line();
    const CutPlace place = middleOf(layoutOf(circuit).wires.at({"w1"}));
    REQUIRE(place.direction == GridPoint{1, 0});
    Part fuse = newPart(*findPartKind("fuse"), {}, {});
    for (const bool turnedRound : {false, true}) {
        fuse.quarterTurns = turnedRound ? 2 : 0;
        const Addition addition = inserting(circuit, fuse, place.at, WireId{"w1"}, place);
        CHECK(addition.edit.name == "Insert F2 into W1");
        const Circuit after = made(circuit, addition.edit);
        const PartId id = *addition.objects.parts.begin();
        CHECK(after.wires.at({"w1"}).to == End{id, turnedRound ? "2" : "1"});
        CHECK(after.wires.at({"w2"}).from == End{id, turnedRound ? "1" : "2"});
        CHECK(after.wires.at({"w2"}).to == End{{"P1"}, "1"});
    }
}

TEST_CASE("only parts with two terminals and a way between them go into a wire", "[surgery]") {
    const auto fits = [](const char* kind) { return fitsIntoWire(newPart(*findPartKind(kind), {}, {})); };
    CHECK(fits("fuse"));
    CHECK(fits("hand-switch"));
    CHECK(fits("diode"));
    CHECK_FALSE(fits("relay"));
    CHECK_FALSE(fits("supply"));
    CHECK_FALSE(fits("ground"));
    CHECK_FALSE(fits("booster"));
}

TEST_CASE("what was inserted and is deleted leaves the wire as it was", "[surgery]") {
    const Circuit circuit = line();
    const CutPlace place = middleOf(layoutOf(circuit).wires.at({"w1"}));
    const Part fuse = newPart(*findPartKind("fuse"), {}, {});
    const Addition addition = inserting(circuit, fuse, place.at, WireId{"w1"}, place);
    const Circuit with = made(circuit, addition.edit);
    const Edit edit =
        removal(with, addition.objects.parts.empty() ? SelectedObjects{}
                                                     : SelectedObjects{addition.objects.parts, {}, {}});
    const Circuit healed = made(with, edit);
    CHECK(healed.parts == circuit.parts);
    REQUIRE(healed.wires.size() == 1);
    CHECK(healed.wires.begin()->second == circuit.wires.begin()->second);
}

TEST_CASE("a load that is deleted is never bridged", "[surgery]") {
    const Circuit circuit = CircuitBuilder()
                                .part("fuse", "F1")
                                .part("lamp", "P1")
                                .part("ground", "X1")
                                .wire("F1.2", "P1.1")
                                .wire("P1.2", "X1.31")
                                .build();
    CHECK_FALSE(healingRemoval(circuit, {"P1"}));
    const Circuit after = made(circuit, removal(circuit, {{{"P1"}}, {}, {}}));
    CHECK(after.wires.empty());
}

TEST_CASE("a splice with three wires stays a plain deletion", "[surgery]") {
    const Circuit circuit = CircuitBuilder()
                                .part("splice", "X1")
                                .part("lamp", "P1")
                                .part("lamp", "P2")
                                .part("lamp", "P3")
                                .wire("X1.1", "P1.1")
                                .wire("X1.1", "P2.1")
                                .wire("X1.1", "P3.1")
                                .build();
    CHECK_FALSE(healingRemoval(circuit, {"X1"}));
}

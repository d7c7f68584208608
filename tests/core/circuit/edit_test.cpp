#include "core/circuit/circuit.h"
#include "tests/support/catch.h"

using namespace pumpwright;

namespace {

Part partNamed(const std::string& reference) {
    Part part;
    part.kind = "relay";
    part.reference = reference;
    return part;
}

Wire wireBetween(const std::string& from, const std::string& to) {
    Wire wire;
    wire.from = {{from}, "1"};
    wire.to = {{to}, "2"};
    return wire;
}

/// Two relays and a pump: w1 joins p1 and p2, w2 joins p2 and p3, h1 leads from p2 to p3.
Circuit smallCircuit() {
    Circuit circuit;
    circuit.parts = {{{"p1"}, partNamed("K1")}, {{"p2"}, partNamed("K2")}, {{"p3"}, partNamed("M1")}};
    circuit.wires = {{{"w1"}, wireBetween("p1", "p2")}, {{"w2"}, wireBetween("p2", "p3")}};
    circuit.hoses[{"h1"}].from = {{"p2"}, "a"};
    circuit.hoses[{"h1"}].to = {{"p3"}, "b"};
    circuit.plan.switchMoves = {{1, {"p1"}, true}, {2, {"p2"}, true}, {3, {"p1"}, false}};
    circuit.waivers = {
        {"rule", {"p1", "p3"}, "", "", 0}, {"rule", {"w1"}, "", "", 0}, {"rule", {"w2"}, "", "", 0}};
    return circuit;
}

} // namespace

TEST_CASE("an edit is taken back exactly by the edit that it answers", "[circuit][edit]") {
    const Circuit before = smallCircuit();
    const Edit edit{"Several",
                    {putPart({"p4"}, partNamed("K4")), takePart({"p1"}), putPart({"p2"}, partNamed("K9")),
                     putWire({"w1"}, wireBetween("p4", "p2")), takeWire({"w2"}), takeHose({"h1"}),
                     putTrial("t1", {"Bigger tank", {}}), replacePlan({}), replaceTitle({}),
                     replaceLimits({}), replaceWaivers({})}};
    Circuit circuit = before;
    const Edit inverse = applyEdit(circuit, edit);
    const Circuit after = circuit;
    CHECK_FALSE(after == before);
    const Edit again = applyEdit(circuit, inverse);
    CHECK(circuit == before);
    applyEdit(circuit, again);
    CHECK(circuit == after);
    CHECK(inverse.name == "Several");
}

TEST_CASE("changes to one object in one edit are taken back in the opposite order", "[circuit][edit]") {
    Circuit circuit;
    const Edit inverse = applyEdit(
        circuit,
        {"Twice", {putPart({"p1"}, partNamed("K1")), putPart({"p1"}, partNamed("K2")), takePart({"p1"})}});
    CHECK(circuit.parts.empty());
    applyEdit(circuit, inverse);
    CHECK(circuit == Circuit());
}

TEST_CASE("taking away what is not there changes nothing, forth and back", "[circuit][edit]") {
    Circuit circuit = smallCircuit();
    const Edit inverse = applyEdit(circuit, {"", {takePart({"p9"}), takeWire({"w9"}), takeTrial("t9")}});
    CHECK(circuit == smallCircuit());
    applyEdit(circuit, inverse);
    CHECK(circuit == smallCircuit());
}

TEST_CASE("removing a part takes along its wires, hoses, switch moves and waivers", "[circuit][edit]") {
    Circuit circuit = smallCircuit();
    const Edit edit = removalOfPart(circuit, {"p1"});
    CHECK(edit.name == "Delete K1");
    const Edit inverse = applyEdit(circuit, edit);
    CHECK_FALSE(circuit.parts.contains({"p1"}));
    CHECK_FALSE(circuit.wires.contains({"w1"}));
    CHECK(circuit.wires.contains({"w2"}));
    CHECK(circuit.hoses.contains({"h1"}));
    CHECK(circuit.plan.switchMoves == std::vector<SwitchMove>{{2, {"p2"}, true}});
    CHECK(circuit.waivers == Waivers{{"rule", {"w2"}, "", "", 0}});
    applyEdit(circuit, inverse);
    CHECK(circuit == smallCircuit());
}

TEST_CASE("removing a part leaves plan and waivers alone where neither names it", "[circuit][edit]") {
    Circuit circuit = smallCircuit();
    circuit.waivers.clear();
    const Edit edit = removalOfPart(circuit, {"p3"});
    REQUIRE(edit.changes.size() == 3);
    applyEdit(circuit, edit);
    CHECK(circuit.wires.size() == 1);
    CHECK(circuit.hoses.empty());
    CHECK(circuit.plan == smallCircuit().plan);
}

TEST_CASE("edits are equal when they do the same, whoever owns the objects", "[circuit][edit]") {
    const Edit one{"Put", {putPart({"p1"}, partNamed("K1"))}};
    CHECK(one == Edit{"Put", {putPart({"p1"}, partNamed("K1"))}});
    CHECK_FALSE(one == Edit{"Place", {putPart({"p1"}, partNamed("K1"))}});
    CHECK_FALSE(one == Edit{"Put", {putPart({"p2"}, partNamed("K1"))}});
    CHECK_FALSE(one == Edit{"Put", {putPart({"p1"}, partNamed("K2"))}});
    CHECK_FALSE(one == Edit{"Put", {takePart({"p1"})}});
    CHECK_FALSE(one == Edit{"Put", {takeWire({"p1"})}});
    CHECK_FALSE(one == Edit{"Put", {}});
}

TEST_CASE("circuits with different trials differ", "[circuit][edit]") {
    Circuit one;
    Circuit other;
    applyEdit(one, {"", {putTrial("t1", {"Tank", {"Tank", {takePart({"p1"})}}})}});
    CHECK_FALSE(one == other);
    applyEdit(other, {"", {putTrial("t1", {"Tank", {"Tank", {takePart({"p1"})}}})}});
    CHECK(one == other);
    applyEdit(other, {"", {putTrial("t1", {"Tank", {"Tank", {takePart({"p2"})}}})}});
    CHECK_FALSE(one == other);
}

TEST_CASE("a free id is one that nothing has, also after gaps", "[circuit][edit]") {
    Circuit circuit = smallCircuit();
    CHECK(freePartId(circuit) == PartId{"p4"});
    CHECK(freeWireId(circuit) == WireId{"w3"});
    CHECK(freeHoseId(circuit) == HoseId{"h2"});
    circuit.parts.erase({"p1"});
    const PartId id = freePartId(circuit);
    CHECK_FALSE(circuit.parts.contains(id));
}

TEST_CASE("a free reference is the lowest number that no part, wire or hose has", "[circuit][edit]") {
    Circuit circuit = smallCircuit();
    circuit.wires[{"w1"}].reference = "W1";
    circuit.hoses[{"h1"}].reference = "H1";
    CHECK(freeReference(circuit, "K") == "K3");
    CHECK(freeReference(circuit, "M") == "M2");
    CHECK(freeReference(circuit, "W") == "W2");
    CHECK(freeReference(circuit, "H") == "H2");
    circuit.parts.erase({"p1"});
    CHECK(freeReference(circuit, "K") == "K1");
}

#include "core/parts/lost_ends.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

/// A changeover relay with a lamp on 87a and one on 87, a booster and a reservoir joined by a hose, a switch.
Circuit relayCircuit() {
    DrivePlan plan;
    plan.switchMoves = {{1, {"S1"}, true}, {2, {"K1"}, true}};
    return CircuitBuilder()
        .part("relay", "K1", {}, {{"contacts", "changeover"}})
        .part("lamp", "P1")
        .part("hand-switch", "S1")
        .part("booster", "A1")
        .part("reservoir", "C1")
        .wire("K1.87a", "P1.1")
        .wire("P1.2", "K1.87")
        .wire("S1.1", "S1.2")
        .hose("A1.vacuum", "C1.a")
        .plan(plan)
        .build();
}

Edit withContacts(const Circuit& circuit, const std::string& contacts) {
    Part relay = circuit.parts.at({"K1"});
    relay.choices["contacts"] = contacts;
    return {"Contacts of K1", {putPart({"K1"}, relay)}};
}

} // namespace

TEST_CASE("a terminal that a choice takes away takes its wires along, and one edit brings all back",
          "[parts][edit]") {
    Circuit circuit = relayCircuit();
    const Edit edit = editWithLostEnds(circuit, withContacts(circuit, "make"));
    CHECK(edit.name == "Contacts of K1");
    const Edit inverse = applyEdit(circuit, edit);
    CHECK_FALSE(circuit.wires.contains({"w1"}));
    CHECK(circuit.wires.contains({"w2"}));
    CHECK(circuit.wires.contains({"w3"}));
    applyEdit(circuit, inverse);
    CHECK(circuit == relayCircuit());
}

TEST_CASE("an edit that leaves every end in place is not changed", "[parts][edit]") {
    const Circuit circuit = relayCircuit();
    const Edit edit = withContacts(circuit, "changeover");
    CHECK(editWithLostEnds(circuit, edit) == edit);
    CHECK(editWithLostEnds(circuit, removalOfPart(circuit, {"K1"})) == removalOfPart(circuit, {"K1"}));
}

TEST_CASE("a part that is simply taken leaves no wire, hose or switch move behind", "[parts][edit]") {
    Circuit circuit = relayCircuit();
    applyEdit(circuit, editWithLostEnds(circuit, {"Take", {takePart({"K1"}), takePart({"C1"})}}));
    CHECK(circuit.wires.size() == 1);
    CHECK(circuit.hoses.empty());
    CHECK(circuit.plan.switchMoves == std::vector<SwitchMove>{{1, {"S1"}, true}});
}

TEST_CASE("the last of several changes to an object counts", "[parts][edit]") {
    Circuit circuit = relayCircuit();
    Edit edit = withContacts(circuit, "make");
    edit.changes.push_back(withContacts(circuit, "changeover").changes.front());
    CHECK(editWithLostEnds(circuit, edit) == edit);
}

TEST_CASE("a wire or hose that an edit puts where nothing is does not stay", "[parts][edit]") {
    Circuit circuit = relayCircuit();
    Wire wire = circuit.wires.at({"w3"});
    wire.to = {{"S9"}, "1"};
    Hose hose = circuit.hoses.at({"h1"});
    hose.to.terminal = "c";
    applyEdit(circuit, editWithLostEnds(circuit, {"Put", {putWire({"w9"}, wire), putHose({"h9"}, hose)}}));
    CHECK(circuit == relayCircuit());
}

TEST_CASE("a wire that moves off a lost terminal in the same edit stays", "[parts][edit]") {
    Circuit circuit = relayCircuit();
    Edit edit = withContacts(circuit, "make");
    Wire wire = circuit.wires.at({"w1"});
    wire.from.terminal = "87";
    edit.changes.push_back(putWire({"w1"}, wire));
    CHECK(editWithLostEnds(circuit, edit) == edit);
}

TEST_CASE("switch moves in a plan that the edit replaces are looked at there", "[parts][edit]") {
    Circuit circuit = relayCircuit();
    DrivePlan plan = circuit.plan;
    plan.switchMoves = {{5, {"S9"}, true}};
    applyEdit(circuit, editWithLostEnds(circuit, {"Plan", {replacePlan(plan)}}));
    CHECK(circuit.plan.switchMoves.empty());
}

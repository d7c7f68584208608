#include "core/nets/nets.h"
#include "core/sheet/protection.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

using namespace pumpwright;

namespace {

Protection protectionOf(const Circuit& circuit, const std::string& wire) {
    return wireProtection(circuit, findNets(circuit)).at(WireId{wire});
}

std::set<PartId> parts(std::initializer_list<std::string> ids) {
    std::set<PartId> set;
    for (const std::string& id : ids) {
        set.insert(PartId{id});
    }
    return set;
}

/// Battery, main fuse F1, relay K1 with pump M1; the coil is fed by the hand switch S1 behind fuse F2.
CircuitBuilder relayCircuit() {
    return CircuitBuilder()
        .part("supply", "G1")
        .part("ground", "X1")
        .part("ground", "X2")
        .part("fuse", "F1")
        .part("fuse", "F2")
        .part("hand-switch", "S1")
        .part("relay", "K1")
        .part("pump", "M1")
        .wire("G1.31", "X1.31")  // w1
        .wire("G1.30", "F1.1")   // w2
        .wire("F1.2", "K1.30")   // w3
        .wire("K1.87", "M1.+")   // w4
        .wire("M1.-", "X2.31")   // w5
        .wire("F1.1", "F2.1")    // w6
        .wire("F2.2", "S1.1")    // w7
        .wire("S1.2", "K1.86")   // w8
        .wire("K1.85", "X1.31"); // w9
}

} // namespace

TEST_CASE("the lead from the battery to the first fuse has none before it", "[sheet][protection]") {
    const Circuit circuit = relayCircuit().build();
    for (const char* wire : {"w2", "w6"}) {
        const Protection protection = protectionOf(circuit, wire);
        CHECK(protection.live);
        CHECK(protection.unfused);
        CHECK(protection.fuses.empty());
    }
}

TEST_CASE("a wire behind a fuse, a contact or a switch is protected by the fuse before them",
          "[sheet][protection]") {
    const Circuit circuit = relayCircuit().build();
    CHECK(protectionOf(circuit, "w3").fuses == parts({"F1"}));
    CHECK(protectionOf(circuit, "w4").fuses == parts({"F1"}));
    CHECK(protectionOf(circuit, "w7").fuses == parts({"F2"}));
    CHECK(protectionOf(circuit, "w8").fuses == parts({"F2"}));
    CHECK_FALSE(protectionOf(circuit, "w8").unfused);
}

TEST_CASE("wires on the ground side are returns", "[sheet][protection]") {
    const Circuit circuit = relayCircuit().build();
    for (const char* wire : {"w1", "w5", "w9"}) {
        CHECK(protectionOf(circuit, wire).returns);
        CHECK_FALSE(protectionOf(circuit, wire).live);
    }
}

TEST_CASE("the last of two fuses in a row protects what is behind it", "[sheet][protection]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("fuse", "F1")
                                .part("fuse", "F2")
                                .part("lamp", "P1")
                                .wire("G1.30", "F1.1")
                                .wire("F1.2", "F2.1")
                                .wire("F2.2", "P1.1")
                                .wire("P1.2", "G1.31")
                                .build();
    CHECK(protectionOf(circuit, "w2").fuses == parts({"F1"}));
    CHECK(protectionOf(circuit, "w3").fuses == parts({"F2"}));
    CHECK(protectionOf(circuit, "w4").returns);
}

TEST_CASE("a wire fed on two ways is protected by both fuses, or not at all on one way",
          "[sheet][protection]") {
    CircuitBuilder builder = relayCircuit();
    builder.wire("F2.2", "K1.30"); // w10 bridges the fuses
    CHECK(protectionOf(builder.build(), "w4").fuses == parts({"F1", "F2"}));

    CircuitBuilder bridged = relayCircuit();
    bridged.wire("G1.30", "K1.30"); // round fuse F1
    CHECK(protectionOf(bridged.build(), "w4").unfused);
}

TEST_CASE("a diode passes protection on in its direction only", "[sheet][protection]") {
    const auto circuit = [](const char* first, const char* second) {
        return CircuitBuilder()
            .part("supply", "G1")
            .part("fuse", "F1")
            .part("diode", "R1")
            .part("lamp", "P1")
            .wire("G1.30", "F1.1")
            .wire("F1.2", std::string("R1.") + first)
            .wire(std::string("R1.") + second, "P1.1")
            .wire("P1.2", "G1.31")
            .build();
    };
    CHECK(protectionOf(circuit("A", "K"), "w3").fuses == parts({"F1"}));
    CHECK_FALSE(protectionOf(circuit("K", "A"), "w3").live);
}

TEST_CASE("a wire behind a load is protected by the load's fuse unless it has a feed of its own",
          "[sheet][protection]") {
    // P1 switched on its ground side by S1; P2 between two feeds.
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("ground", "X1")
                                .part("fuse", "F1")
                                .part("fuse", "F2")
                                .part("lamp", "P1")
                                .part("lamp", "P2")
                                .part("hand-switch", "S1")
                                .wire("G1.31", "X1.31")
                                .wire("G1.30", "F1.1")
                                .wire("G1.30", "F2.1")
                                .wire("F1.2", "P1.1")
                                .wire("P1.2", "S1.1") // w5
                                .wire("S1.2", "X1.31")
                                .wire("F1.2", "P2.1")
                                .wire("F2.2", "P2.2") // w8
                                .build();
    CHECK(protectionOf(circuit, "w5").fuses == parts({"F1"}));
    CHECK(protectionOf(circuit, "w8").fuses == parts({"F2"}));
}

TEST_CASE("a wire that no supply reaches is not live", "[sheet][protection]") {
    const Circuit circuit =
        CircuitBuilder().part("resistor", "R1").part("resistor", "R2").wire("R1.1", "R2.1").build();
    const Protection protection = protectionOf(circuit, "w1");
    CHECK_FALSE(protection.live);
    CHECK_FALSE(protection.returns);
}

TEST_CASE("two supplies wired in a ring end the walk", "[sheet][protection]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("supply", "G2")
                                .part("fuse", "F1")
                                .part("fuse", "F2")
                                .wire("G1.30", "F1.1")
                                .wire("F1.2", "F2.1") // w2
                                .wire("F2.2", "G2.30")
                                .wire("G1.31", "G2.31")
                                .build();
    CHECK(protectionOf(circuit, "w2").fuses == parts({"F1", "F2"}));
}

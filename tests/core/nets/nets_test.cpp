#include "core/nets/nets.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/test_seed.h"

#include <random>
#include <set>

using namespace pumpwright;

namespace {

/// The slow way to the same answer: spread from every terminal over the list of wires until nothing changes.
std::set<Node> reachedFrom(const Circuit& circuit, const Node& start) {
    std::set<Node> reached{start};
    for (bool grown = true; grown;) {
        grown = false;
        for (const auto& [id, wire] : circuit.wires) {
            if (reached.contains(wire.from) != reached.contains(wire.to)) {
                reached.insert(wire.from);
                reached.insert(wire.to);
                grown = true;
            }
        }
    }
    return reached;
}

Circuit randomCircuit(std::mt19937_64& random, int parts, int wires) {
    CircuitBuilder builder;
    for (int i = 0; i < parts; ++i) {
        builder.part("resistor", "R" + std::to_string(i));
    }
    std::uniform_int_distribution<int> part(0, parts - 1);
    std::uniform_int_distribution<int> side(1, 2);
    for (int i = 0; i < wires; ++i) {
        builder.wire("R" + std::to_string(part(random)) + "." + std::to_string(side(random)),
                     "R" + std::to_string(part(random)) + "." + std::to_string(side(random)));
    }
    return builder.build();
}

} // namespace

TEST_CASE("an empty circuit has no nets", "[nets]") {
    const Nets nets = findNets(Circuit{});
    CHECK(nets.nets.empty());
    CHECK(nets.vacuumNets.empty());
}

TEST_CASE("a terminal without a wire is a net of its own", "[nets]") {
    const Nets nets = findNets(CircuitBuilder().part("resistor", "R1").build());
    REQUIRE(nets.nets.size() == 2);
    CHECK(nets.nets[0].terminals == std::vector<Node>{endOf("R1.1")});
    CHECK(nets.nets[0].wires.empty());
    CHECK_FALSE(nets.nets[0].ground);
}

TEST_CASE("wires in a row join all their terminals into one net", "[nets]") {
    const Nets nets = findNets(CircuitBuilder()
                                   .part("resistor", "R1")
                                   .part("resistor", "R2")
                                   .part("resistor", "R3")
                                   .wire("R1.2", "R2.1")
                                   .wire("R2.1", "R3.1")
                                   .build());
    REQUIRE(nets.nets.size() == 4);
    const std::size_t joined = nets.netOf.at(endOf("R1.2"));
    CHECK(nets.netOf.at(endOf("R3.1")) == joined);
    CHECK(nets.netOf.at(endOf("R1.1")) != joined);
    CHECK(nets.nets[joined].terminals == std::vector<Node>{endOf("R1.2"), endOf("R2.1"), endOf("R3.1")});
    CHECK(nets.nets[joined].wires == std::vector<WireId>{{"w1"}, {"w2"}});
}

TEST_CASE("a part does not join its own terminals", "[nets]") {
    const Nets nets =
        findNets(CircuitBuilder().part("resistor", "R1").part("resistor", "R2").wire("R1.2", "R2.1").build());
    CHECK(nets.netOf.at(endOf("R1.1")) != nets.netOf.at(endOf("R1.2")));
}

TEST_CASE("a wire to a part that is not there joins nothing", "[nets]") {
    Circuit circuit = CircuitBuilder().part("resistor", "R1").build();
    Wire wire;
    wire.from = endOf("R1.1");
    wire.to = endOf("R9.1");
    circuit.wires.emplace(WireId{"w1"}, wire);
    const Nets nets = findNets(circuit);
    CHECK(nets.nets.size() == 2);
    CHECK(nets.nets[nets.netOf.at(endOf("R1.1"))].wires.empty());
}

TEST_CASE("nets of random circuits are those that spreading along the wires finds", "[nets]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    for (int round = 0; round < 40; ++round) {
        const int parts = 2 + round % 12;
        const Circuit circuit = randomCircuit(random, parts, round % 20);
        const Nets nets = findNets(circuit);
        std::size_t terminals = 0;
        for (std::size_t i = 0; i < nets.nets.size(); ++i) {
            const Net& net = nets.nets[i];
            terminals += net.terminals.size();
            const std::set<Node> expected = reachedFrom(circuit, net.terminals.front());
            CHECK(std::set<Node>(net.terminals.begin(), net.terminals.end()) == expected);
            for (const Node& node : net.terminals) {
                CHECK(nets.netOf.at(node) == i);
            }
            for (const WireId& wire : net.wires) {
                CHECK(expected.contains(circuit.wires.at(wire).from));
            }
        }
        CHECK(terminals == nets.netOf.size());
        CHECK(terminals == static_cast<std::size_t>(2 * parts));
    }
}

#include "core/checks/current_loop.h"
#include "core/checks/survey.h"
#include "tests/core/checks/run_rule.h"
#include "tests/support/test_seed.h"

#include <algorithm>
#include <random>

using namespace pumpwright;

namespace {

/// The slow way to the same answer: walks every simple way from plus to minus and marks what it passes.
class EveryWay {
public:
    EveryWay(const Survey& survey, const Branch& source)
        : m_survey(survey), m_goal(source.toNet), m_visited(survey.nets().nets.size(), false),
          m_onLoop(survey.branches().size(), false) {
        walk(source.fromNet);
    }

    const std::vector<bool>& onLoop() const { return m_onLoop; }

private:
    void walk(std::size_t net) {
        if (net == m_goal) {
            for (const std::size_t branch : m_way) {
                m_onLoop[branch] = true;
            }
            return;
        }
        m_visited[net] = true;
        for (const std::size_t number : m_survey.branchesAt(net)) {
            const Branch& branch = m_survey.branches()[number];
            const std::size_t other = branch.fromNet == net ? branch.toNet : branch.fromNet;
            if (branch.sort != BranchSort::Source && !m_visited[other]) {
                m_way.push_back(number);
                walk(other);
                m_way.pop_back();
            }
        }
        m_visited[net] = false;
    }

    const Survey& m_survey;
    std::size_t m_goal;
    std::vector<bool> m_visited;
    std::vector<bool> m_onLoop;
    std::vector<std::size_t> m_way;
};

Circuit randomCircuit(std::mt19937_64& random, int parts, int wires) {
    CircuitBuilder builder = CircuitBuilder().part("supply", "G1");
    std::vector<std::string> ends{"G1.30", "G1.31"};
    for (int i = 0; i < parts; ++i) {
        const std::string name = "R" + std::to_string(i);
        builder.part("resistor", name);
        ends.push_back(name + ".1");
        ends.push_back(name + ".2");
    }
    std::uniform_int_distribution<std::size_t> any(0, ends.size() - 1);
    for (int i = 0; i < wires; ++i) {
        builder.wire(ends[any(random)], ends[any(random)]);
    }
    return builder.build();
}

PlusSide sideOf(const Circuit& circuit, const char* first, const char* second) {
    const Nets nets = findNets(circuit);
    const Survey survey({circuit, nets, nullptr});
    return plusSide(survey, nets.netOf.at(endOf(first)), nets.netOf.at(endOf(second)));
}

} // namespace

TEST_CASE("branches on a loop with the supply are those that walking every way finds", "[checks][loops]") {
    const std::uint64_t seed = testSeed();
    INFO("PUMPWRIGHT_SEED=" << seed);
    std::mt19937_64 random(seed);
    for (int round = 0; round < 60; ++round) {
        const Circuit circuit = randomCircuit(random, 1 + round % 8, 2 + round % 12);
        const Nets nets = findNets(circuit);
        const Survey survey({circuit, nets, nullptr});
        const std::vector<LoopState> states = loopStates(survey);
        const auto source =
            std::find_if(survey.branches().begin(), survey.branches().end(),
                         [](const Branch& branch) { return branch.sort == BranchSort::Source; });
        REQUIRE(source != survey.branches().end());
        if (source->fromNet == source->toNet) {
            continue; // a wire across the supply takes all current
        }
        const EveryWay ways(survey, *source);
        for (std::size_t i = 0; i < states.size(); ++i) {
            if (survey.branches()[i].sort != BranchSort::Source) {
                INFO("round " << round << ", " << survey.branches()[i].part.text);
                CHECK((states[i] == LoopState::Loop) == ways.onLoop()[i]);
            }
        }
    }
}

TEST_CASE("the plus side of a coil follows from its feed", "[checks][loops]") {
    CHECK(sideOf(soundVan().build(), "K1.86", "K1.85") == PlusSide::First);
    CHECK(sideOf(soundVan().build(), "K1.85", "K1.86") == PlusSide::Second);
}

TEST_CASE("a coil between two changeover contacts may have plus on either side", "[checks][loops]") {
    CircuitBuilder bridge = CircuitBuilder().part("supply", "G1").part("relay", "K9");
    for (const char* relay : {"K1", "K2"}) {
        const std::string name(relay);
        bridge.part("relay", name, {}, {{"contacts", "changeover"}})
            .wire("G1.30", name + ".87")
            .wire("G1.31", name + ".87a");
    }
    bridge.wire("K1.30", "K9.86").wire("K2.30", "K9.85");
    CHECK(sideOf(bridge.build(), "K9.86", "K9.85") == PlusSide::Either);
}

TEST_CASE("a coil fed through a resistor has its plus side all the same", "[checks][loops]") {
    const Circuit circuit = CircuitBuilder()
                                .part("supply", "G1")
                                .part("resistor", "R1")
                                .part("relay", "K1")
                                .wire("G1.30", "R1.1")
                                .wire("R1.2", "K1.85")
                                .wire("K1.86", "G1.31")
                                .build();
    CHECK(sideOf(circuit, "K1.86", "K1.85") == PlusSide::Second);
}

TEST_CASE("a coil that nothing feeds has no plus side", "[checks][loops]") {
    const Circuit circuit =
        CircuitBuilder().part("supply", "G1").part("relay", "K1").wire("G1.30", "K1.86").build();
    CHECK(sideOf(circuit, "K1.86", "K1.85") == PlusSide::None);
}

#include "core/parts/part_kind.h"
#include "core/study/trials.h"
#include "tests/support/catch.h"
#include "tests/support/recording_builder.h"
#include "tests/support/van_circuit.h"

using namespace pumpwright;

namespace {

/// The van with a trial that makes its switch chatter-proof, and one that takes the switch away.
Circuit van() {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55000}, {"differential_Pa", 200}});
    DrivePlan plan = standingPlan(40);
    plan.presses = {{30, 1.5, 100, 0.25}};
    Circuit circuit = addPumpFeed(builder).wire("G1.30", "B1.1").wire("B1.2", "K1.86").plan(plan).build();
    Part calm = circuit.parts.at(PartId{"B1"});
    calm.values["differential_Pa"] = 6000;
    circuit.trials["a"] = {"Wider switch", {"Wider switch", {putPart(PartId{"B1"}, calm)}}};
    circuit.trials["b"] = {"No switch", {"No switch", {takePart(PartId{"B1"})}}};
    return circuit;
}

Circuit boosterWithVacuum(double volume_m3) {
    DrivePlan plan;
    plan.presses = {{1, 1.5, 60, 0.25}, {10, 1.5, 150, 0.25}};
    return CircuitBuilder()
        .part("booster", "A1")
        .part("reservoir", "C1", {{"volume_m3", volume_m3}})
        .hose("A1.vacuum", "C1.a")
        .plan(plan)
        .build();
}

int reserveAfter(const Circuit& circuit, double vacuum_Pa) {
    const DriveResult drive = RecordingBuilder(20)
                                  .port("A1.vacuum", {{0, 70e3}, {20, vacuum_Pa}})
                                  .part("A1", probe::kAssist, {{0, 0}, {20, 0}})
                                  .drive();
    return reservePresses(circuit, drive.recording);
}

} // namespace

TEST_CASE("the circuit as drawn comes first, then its trials", "[study][trials]") {
    const std::vector<TrialOutcome> outcomes = runTrials(van());
    REQUIRE(outcomes.size() == 3);
    CHECK(outcomes[0].id.empty());
    CHECK(outcomes[1].name == "Wider switch");
    CHECK(outcomes[0].numbers.chatters);
    CHECK_FALSE(outcomes[1].numbers.chatters);
    CHECK(outcomes[0].numbers.pumpStarts > outcomes[1].numbers.pumpStarts);
    CHECK(outcomes[1].openFindings[2] < outcomes[0].openFindings[2] + outcomes[0].openFindings[1]);
}

TEST_CASE("a trial that takes a part takes its wires and hoses too", "[study][trials]") {
    const Circuit circuit = van();
    const Circuit changed = trialCircuit(circuit, circuit.trials.at("b"));
    for (const auto& [id, wire] : changed.wires) {
        CHECK(wire.from.part != PartId{"B1"});
        CHECK(wire.to.part != PartId{"B1"});
    }
    CHECK(changed.hoses.size() == circuit.hoses.size() - 1);
    const std::vector<TrialOutcome> outcomes = runTrials(circuit);
    CHECK(outcomes[2].numbers.pumpStarts == 0);
    CHECK(outcomes[2].numbers.lackingPresses == 1);
}

TEST_CASE("parts that a trial adds are told", "[study][trials]") {
    Circuit circuit = van();
    circuit.trials.clear();
    const Part tank = newPart(*findPartKind("reservoir"), "C1", {});
    circuit.trials["tank"] = {"Tank", {"Tank", {putPart(PartId{"C1"}, tank)}}};
    const std::vector<TrialOutcome> outcomes = runTrials(circuit);
    CHECK(outcomes[0].addedParts.empty());
    CHECK(outcomes[1].addedParts == std::vector<PartId>{PartId{"C1"}});
}

TEST_CASE("trials are told one by one, as drawn first", "[study][trials]") {
    TrialOptions options;
    std::vector<std::string> told;
    options.partial = [&](const std::vector<TrialOutcome>& soFar) {
        told.push_back(soFar.back().id);
        CHECK(soFar.size() == told.size());
    };
    const std::vector<TrialOutcome> all = runTrials(van(), options);
    REQUIRE(told.size() == all.size());
    CHECK(told.front().empty());
    CHECK(told.back() == all.back().id);
}

TEST_CASE("trials are the same on one thread and on two", "[study][trials]") {
    TrialOptions options;
    options.threads = 1;
    const auto one = runTrials(van(), options);
    options.threads = 2;
    const auto two = runTrials(van(), options);
    REQUIRE(one.size() == two.size());
    for (std::size_t i = 0; i < one.size(); ++i) {
        CHECK(one[i].numbers == two[i].numbers);
        CHECK(one[i].openFindings == two[i].openFindings);
    }
}

TEST_CASE("more vacuum and a larger tank are good for more presses", "[study][trials]") {
    const int little = reserveAfter(boosterWithVacuum(1e-4), 40e3);
    const int more = reserveAfter(boosterWithVacuum(1e-4), 80e3);
    const int tank = reserveAfter(boosterWithVacuum(6e-3), 80e3);
    CHECK(little < more);
    CHECK(more < tank);
    CHECK(tank <= kMostReservePresses);
    CHECK(reserveAfter(boosterWithVacuum(1e-4), 0) == 0);
}

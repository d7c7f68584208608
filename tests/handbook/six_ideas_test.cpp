// What the trade says of six ideas against a pump relay that chatters, held against the trials of the sample.
// Source of each: common practice, no published source.

#include "core/checks/rule.h"
#include "core/files/circuit_file.h"
#include "core/sheet/trial_tables.h"
#include "tests/support/catch.h"

#include <algorithm>

using namespace pumpwright;

namespace {

enum Idea : std::size_t { Drawn, Tank, RunOn, CoilCapacitor, SmallSolidState, LargeSolidState, LampSwitch };

/// The sample's first minute, with the first press at 25 s.
Circuit firstMinute() {
    auto circuit = readCircuit("samples/six-ideas.pumpwright");
    REQUIRE(circuit);
    circuit->plan.duration_s = 60;
    std::erase_if(circuit->plan.presses, [](const Press& press) { return press.at_s > 55; });
    std::erase_if(circuit->plan.switchMoves, [](const SwitchMove& move) { return move.at_s > 55; });
    circuit->plan.charging = {{6, 60}};
    return *circuit;
}

const std::vector<TrialOutcome>& outcomes() {
    static const std::vector<TrialOutcome> all = runTrials(firstMinute());
    return all;
}

bool isDerated(const TrialOutcome& outcome) {
    const DriveResult drive = simulateDrive(outcome.circuit);
    const Nets nets = findNets(outcome.circuit);
    const std::vector<Finding> findings = checkCircuit({outcome.circuit, nets, &drive});
    return std::ranges::none_of(
        findings, [](const Finding& finding) { return finding.rule == "solid-state-relay-derating"; });
}

} // namespace

TEST_CASE("every idea of the sample can be driven", "[handbook][six-ideas]") {
    REQUIRE(outcomes().size() == 7);
    for (const TrialOutcome& outcome : outcomes()) {
        INFO(outcome.name << ": " << outcome.message);
        CHECK(outcome.status == DriveStatus::Finished);
    }
}

TEST_CASE("a bigger tank does not cure chatter, a run-on timer does", "[handbook][six-ideas]") {
    CHECK(outcomes()[Drawn].numbers.chatters);
    CHECK(outcomes()[Tank].numbers.chatters);
    CHECK(outcomes()[Tank].reservePresses > outcomes()[Drawn].reservePresses); // what it is good for
    CHECK_FALSE(outcomes()[RunOn].numbers.chatters);
    CHECK(outcomes()[RunOn].numbers.pumpStarts < outcomes()[Drawn].numbers.pumpStarts);
    CHECK(outcomes()[RunOn].numbers.lackingPresses == 0);
}

TEST_CASE("a capacitor across the coil of a mechanical relay does not cure chatter",
          "[handbook][six-ideas]") {
    CHECK(outcomes()[CoilCapacitor].numbers.chatters);
}

TEST_CASE("a capacitor on the input of a solid-state relay cures it, but the derating must hold",
          "[handbook][six-ideas]") {
    CHECK_FALSE(outcomes()[SmallSolidState].numbers.chatters);
    CHECK_FALSE(outcomes()[LargeSolidState].numbers.chatters);
    CHECK_FALSE(isDerated(outcomes()[SmallSolidState]));
    CHECK(isDerated(outcomes()[LargeSolidState]));
}

TEST_CASE("with the lamp switch alone the first press has no assist", "[handbook][six-ideas]") {
    CHECK(outcomes()[LampSwitch].numbers.lackingPresses == outcomes()[LampSwitch].numbers.presses);
    CHECK(outcomes()[LampSwitch].numbers.presses == 1);
    for (const Idea idea : {Drawn, Tank, RunOn, CoilCapacitor, SmallSolidState, LargeSolidState}) {
        CHECK(outcomes()[idea].numbers.lackingPresses == 0);
    }
}

TEST_CASE("the table of the sample says so in words", "[handbook][six-ideas]") {
    const SheetTable table = trialResults(outcomes());
    CHECK(table.rows.at(0) == std::vector<std::string>{"Contacts chatter", "yes", "yes", "no", "yes", "no",
                                                       "no", "no", "2, 4, 5, 6", "Base, 1, 3"});
    CHECK(table.rows.at(2).back() == "6");
    CHECK(table.rows.at(2).front() == "Presses without full assist");
}

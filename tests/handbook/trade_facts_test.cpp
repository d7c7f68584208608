// Facts of the trade that must come out of the simulation by themselves.
// Source of each: common practice, no published source.

#include "core/checks/rule.h"
#include "core/parts/part_kind.h"
#include "core/simulate/drive.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>

using namespace pumpwright;

namespace {

long closings(const DriveResult& run, const std::string& id, double from_s = 0, double to_s = 1e9) {
    return std::count_if(run.recording.events.begin(), run.recording.events.end(),
                         [&](const DriveEvent& event) {
                             return event.id == id && event.what == "contacts close" &&
                                    event.time_s >= from_s && event.time_s <= to_s;
                         });
}

double vacuumAt(const DriveResult& run, double time_s) {
    const Channel* vacuum = run.recording.port(endOf("A1.vacuum"));
    REQUIRE(vacuum != nullptr);
    return vacuum->at(time_s);
}

bool found(const Circuit& circuit, const DriveResult& run, std::string_view rule, const std::string& part) {
    const Nets nets = findNets(circuit);
    const std::vector<Finding> findings = checkCircuit({circuit, nets, &run});
    return std::any_of(findings.begin(), findings.end(), [&](const Finding& finding) {
        return finding.rule == rule &&
               std::find(finding.parts.begin(), finding.parts.end(), PartId{part}) != finding.parts.end();
    });
}

/// Vacuum switch B1 feeds the relay's coil at once.
Circuit directlySwitched(double differential_Pa, double reservoir_m3) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", differential_Pa}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K1.86", 0.75e-6);
    if (reservoir_m3 > 0) {
        builder.part("reservoir", "C1", {{"volume_m3", reservoir_m3}}).hose("C1.a", "A1.vacuum");
    }
    return builder.plan(standingPlan()).build();
}

/// Vacuum switch B1 triggers the run-on timer K2, which feeds the relay's coil.
Circuit withRunOn(double delay_s) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", 200}});
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("timer", "K2", {{"delay_s", delay_s}})
        .part("ground", "X4")
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("F1.2", "K2.15", 0.75e-6)
        .wire("F1.2", "K2.30", 0.75e-6)
        .wire("K2.31", "X4.31", 0.75e-6)
        .wire("B1.2", "K2.S", 0.75e-6)
        .wire("K2.87", "K1.86", 0.75e-6);
    return builder.plan(standingPlan()).build();
}

} // namespace

TEST_CASE("a very small differential makes the relay chatter as the pump reaches its set point",
          "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(200, 0));
    REQUIRE(run.status == DriveStatus::Finished);
    INFO("closings: " << closings(run, "K1"));
    CHECK(closings(run, "K1") >= 5);
}

TEST_CASE("a larger differential does not chatter", "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(8e3, 0));
    REQUIRE(run.status == DriveStatus::Finished);
    CHECK(closings(run, "K1") <= 2);
}

TEST_CASE("a bigger reservoir does not cure the chatter", "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(200, 4e-3));
    REQUIRE(run.status == DriveStatus::Finished);
    CHECK(closings(run, "K1") >= 5);
}

TEST_CASE("a run-on of five seconds cures it and leaves the booster well above the set point",
          "[handbook][trade]") {
    const DriveResult run = simulateDrive(withRunOn(5));
    REQUIRE(run.status == DriveStatus::Finished);
    CHECK(closings(run, "K1") == 1);
    CHECK(vacuumAt(run, 40) > 55e3 + 8e3);
}

TEST_CASE("with the brake-lamp switch as the only trigger there is no assist at the first press",
          "[handbook][trade]") {
    CircuitBuilder builder = vanVacuumSide();
    addPumpFeed(builder, {{"suppression", "diode"}})
        .part("pedal-switch", "S2")
        .part("diode", "R1")
        .wire("F1.2", "S2.1", 0.75e-6)
        .wire("S2.2", "R1.A", 0.75e-6)
        .wire("R1.K", "K1.86", 0.75e-6);
    DrivePlan plan = standingPlan(20);
    plan.presses = {{5, 1.5, 100, 0.2}};
    const DriveResult run = simulateDrive(builder.plan(plan).build());
    REQUIRE(run.status == DriveStatus::Finished);
    const Channel* assist = run.recording.part(PartId{"A1"}, probe::kAssist);
    const Channel* asked = run.recording.part(PartId{"A1"}, probe::kAssistAsked);
    REQUIRE(assist != nullptr);
    REQUIRE(asked != nullptr);
    CHECK(asked->at(5.3) > 500);
    CHECK(assist->at(5.3) < 0.1 * asked->at(5.3));
    CHECK(closings(run, "K1") == 1);
}

TEST_CASE("a pump that runs at about 5.5 A takes about 12 A at the start", "[handbook][trade]") {
    const DriveResult run = simulateDrive(directlySwitched(8e3, 0));
    const Channel* current = run.recording.part(PartId{"M1"}, probe::kCurrent);
    REQUIRE(current != nullptr);
    CHECK(current->extremes(0, 1).highest == Approx(12).margin(1.5));
    CHECK(current->at(6) == Approx(5.5).margin(1));
}

TEST_CASE("a timer contact of 5 A cannot make a pump's 12 A, a power relay between can",
          "[handbook][trade]") {
    const CircuitBuilder::Values timerValues{
        {"continuous_A", 5.5}, {"make_A", 5}, {"breakResistive_A", 5}, {"breakInductive_A", 5}};
    CircuitBuilder direct = vanVacuumSide({{"setPoint_Pa", 55e3}});
    direct.part("supply", "G1")
        .part("ground", "X1")
        .part("ground", "X2")
        .part("fuse", "F1", {{"rating_A", 15}})
        .part("timer", "K2", timerValues)
        .wire("G1.31", "X1.31", 6e-6, 0.5)
        .wire("G1.30", "F1.1", 2.5e-6, 0.3)
        .wire("F1.2", "B1.1", 0.75e-6)
        .wire("B1.2", "K2.S", 0.75e-6)
        .wire("F1.2", "K2.15", 0.75e-6)
        .wire("K2.31", "X2.31", 0.75e-6)
        .wire("F1.2", "K2.30", 2.5e-6)
        .wire("K2.87", "M1.+", 2.5e-6)
        .wire("M1.-", "X2.31", 2.5e-6);
    const Circuit bare = direct.plan(standingPlan(30)).build();
    CHECK(found(bare, simulateDrive(bare), "contact-making-current", "K2"));

    Circuit relayed = withRunOn(5);
    relayed.parts.at(PartId{"K2"}).values.insert(timerValues.begin(), timerValues.end());
    relayed.parts.at(PartId{"K1"}).values = {
        {"continuous_A", 30}, {"make_A", 60}, {"breakResistive_A", 30}, {"breakInductive_A", 20}};
    const DriveResult run = simulateDrive(relayed);
    CHECK_FALSE(found(relayed, run, "contact-making-current", "K2"));
    CHECK_FALSE(found(relayed, run, "contact-making-current", "K1"));
}

TEST_CASE("a solid-state relay sold as 60 A carries 42 A into heat and 12 A into a motor",
          "[handbook][trade]") {
    const auto overloaded = [](bool motor, double current_A) {
        CircuitBuilder builder;
        builder.part("supply", "G1", {{"internalResistance_ohm", 1e-3}})
            .part("ground", "X1")
            .part("ground", "X2")
            .part("hand-switch", "S1", {}, {{"atStart", "on"}})
            .part("solid-state-relay", "K1", {{"ratedCurrent_A", 60}, {"onResistance_ohm", 1e-3}})
            .wire("G1.31", "X1.31", 50e-6, 0.1)
            .wire("G1.30", "K1.1", 50e-6, 0.1)
            .wire("G1.30", "S1.1")
            .wire("S1.2", "K1.A1")
            .wire("K1.A2", "X2.31");
        if (motor) {
            builder
                .part("pump", "M1",
                      {{"resistance_ohm", 12.6 / current_A},
                       {"runningCurrent_A", current_A},
                       {"inertia_kgm2", 0.01}})
                .wire("K1.2", "M1.+", 50e-6, 0.1)
                .wire("M1.-", "X2.31", 50e-6, 0.1);
        } else {
            builder.part("resistor", "R1", {{"resistance_ohm", 12.6 / current_A}})
                .wire("K1.2", "R1.1", 50e-6, 0.1)
                .wire("R1.2", "X2.31", 50e-6, 0.1);
        }
        const Circuit circuit = builder.plan(standingPlan(5)).build();
        return found(circuit, simulateDrive(circuit), "solid-state-relay-derating", "K1");
    };
    CHECK_FALSE(overloaded(false, 40));
    CHECK(overloaded(false, 46));
    CHECK_FALSE(overloaded(true, 11));
    CHECK(overloaded(true, 14));
}

TEST_CASE("a retriggerable delay on release starts when the trigger ends, and a new trigger starts it again",
          "[handbook][trade]") {
    // Behaviour after IEC 60050-445-01-04; its retriggering is stated by the maker, value from memory.
    Circuit circuit = CircuitBuilder()
                          .part("supply", "G1")
                          .part("ground", "X1")
                          .part("ground", "X2")
                          .part("hand-switch", "S1")
                          .part("timer", "K2", {{"delay_s", 5}})
                          .wire("G1.31", "X1.31")
                          .wire("G1.30", "K2.15")
                          .wire("G1.30", "S1.1")
                          .wire("S1.2", "K2.S")
                          .wire("K2.31", "X2.31")
                          .build();
    circuit.plan = standingPlan(20);
    const PartId key{"S1"};
    circuit.plan.switchMoves = {{1, key, true}, {2, key, false}, {5, key, true}, {5.5, key, false}};
    const DriveResult run = simulateDrive(circuit);
    const Channel* contact = run.recording.part(PartId{"K2"}, probe::kContact);
    REQUIRE(contact != nullptr);
    CHECK(contact->at(0.9) == 0);
    CHECK(contact->extremes(1.1, 10.4).lowest == 1);
    CHECK(contact->at(10.6) == 0);
    CHECK(closings(run, "K2") == 1);
}

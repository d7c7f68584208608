// What each breakdown must read: common practice, no published source.

#include "core/nets/nets.h"
#include "core/sheet/fault_table.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

#include <algorithm>

using namespace pumpwright;

namespace {

using Row = std::vector<std::string>;

/// The van with a vacuum switch before the relay's coil, behind a control fuse, and a lamp that warns.
Circuit vanCircuit() {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", 5e3}});
    DrivePlan plan = standingPlan(50);
    plan.presses = {{25, 1.5, 100, 0.25}, {40, 1.5, 100, 0.25}};
    return addPumpFeed(builder, {{"suppression", "resistor"}})
        .part("fuse", "F2", {{"rating_A", 5}})
        .part("vacuum-switch", "B2", {{"setPoint_Pa", 30e3}, {"differential_Pa", 6e3}})
        .part("lamp", "P1", {{"ratedPower_W", 1.2}})
        .hose("X9.c", "B2.vacuum", 0.004, 0.3)
        .wire("G1.30", "F2.1", 1.5e-6, 0.2)
        .wire("F2.2", "B1.1", 0.75e-6, 1)
        .wire("B1.2", "K1.86", 0.75e-6, 1)
        .wire("F2.2", "B2.1", 0.75e-6)
        .wire("B2.2", "P1.1", 0.75e-6)
        .wire("P1.2", "X3.31", 0.75e-6)
        .plan(plan)
        .build();
}

const SheetTable& vanFaults() {
    static const SheetTable table = [] {
        const Circuit circuit = vanCircuit();
        return withTests(wiringSheet(circuit, {}, ""), circuit, runBreakdowns(circuit)).faults;
    }();
    return table;
}

/// The row whose likely causes hold the words.
const Row& rowFor(const std::string& cause) {
    const auto& rows = vanFaults().rows;
    const auto found =
        std::ranges::find_if(rows, [&](const Row& row) { return row[4].find(cause) != std::string::npos; });
    INFO(cause);
    REQUIRE(found != rows.end());
    return *found;
}

} // namespace

TEST_CASE("a fuse that has opened leads from what is noticed to the fuse's far end", "[sheet][faults]") {
    const Row& row = rowFor("F1: blown");
    CHECK(row[0].find("M1 does not run") != std::string::npos);
    CHECK(row[0].find("P1 lights") != std::string::npos);
    CHECK(row[0].find("the pedal gets hard") != std::string::npos);
    CHECK(row[2] == "volts at F1:2 against G1:31");
    CHECK(row[3].starts_with("12."));
}

TEST_CASE("a contact that sticks is looked for where there should be no voltage", "[sheet][faults]") {
    const Row& row = rowFor("K1: contact stays closed");
    CHECK(row[0].find("M1 does not stop") != std::string::npos);
    CHECK(row[1].find("pump stopped") != std::string::npos);
    CHECK(row[2] == "volts at K1:87 against G1:31");
    CHECK(row[3] == "0 V ± 0.3 V");
}

TEST_CASE("a ground is measured on the way back, where there should be next to nothing", "[sheet][faults]") {
    const Row& row = rowFor("X2: has no contact");
    CHECK(row[2].ends_with("against G1:31"));
    CHECK(row[3] == "below 0.3 V");
}

TEST_CASE("a hose is looked for with the vacuum gauge, a chafed wire with the ohmmeter", "[sheet][faults]") {
    CHECK(rowFor("slipped off")[2] == "vacuum gauge at A1");
    CHECK(rowFor("chafed")[2].starts_with("ohms from W"));
    CHECK(rowFor("slipped off")[4].find("H1, H2, ") != std::string::npos);
}

TEST_CASE("a dead load is fed past the circuit: its voltage tells nothing", "[sheet][faults]") {
    const Row& row = rowFor("M1: motor does not turn");
    CHECK(row[1] == "M1 unplugged; leads from G1:30 to M1:+ and from G1:31 to M1:-");
    CHECK(row[3] == "it runs");
}

TEST_CASE("a lead that came off the battery is looked for behind it, a flat battery at its poles",
          "[sheet][faults]") {
    CHECK(rowFor("G1: terminal off")[2].find("G1:30") == std::string::npos);
    BreakdownStudy study;
    BreakdownOutcome flat;
    flat.broken = {{Subject::Part, "G1", "battery-flat", "G1: nearly flat"}};
    flat.stopped = {PartId{"M1"}};
    study.outcomes = {flat};
    const Circuit circuit = vanCircuit();
    const SheetTable table = withTests(wiringSheet(circuit, {}, ""), circuit, study).faults;
    REQUIRE(table.rows.size() == 1);
    CHECK(table.rows[0][2] == "volts at G1:30 against G1:31");
}

TEST_CASE("measurements of one symptom stand together and begin at the supply", "[sheet][faults]") {
    const auto& rows = vanFaults().rows;
    CHECK(vanFaults().groupedByFirst);
    std::vector<std::string> symptoms;
    for (const Row& row : rows) {
        REQUIRE(row.size() == vanFaults().columns.size());
        CHECK(std::ranges::none_of(row, [](const std::string& cell) { return cell.empty(); }));
        if (symptoms.empty() || symptoms.back() != row[0]) {
            CHECK(std::ranges::find(symptoms, row[0]) == symptoms.end());
            symptoms.push_back(row[0]);
        }
    }
    const auto at = [&](const std::string& cause) { return &rowFor(cause) - rows.data(); };
    CHECK(at("F1: blown") < at("K1: contact stays open"));
    CHECK(at("K1: contact stays open") < at("M1: motor does not turn"));
}

TEST_CASE("what nobody notices is no symptom, and no study gives no table", "[sheet][faults]") {
    BreakdownOutcome outcome;
    CHECK(symptomText(vanCircuit(), outcome).empty());
    outcome.stopped = {PartId{"P1"}};
    outcome.openedFuses = {PartId{"F2"}};
    CHECK(symptomText(vanCircuit(), outcome) == "P1 stays dark, F2 opens");
    CHECK(withTests(wiringSheet(vanCircuit(), {}, ""), vanCircuit()).faults.rows.empty());
    CHECK(withTests(wiringSheet(Circuit{}, {}, ""), Circuit{}, runBreakdowns(Circuit{})).faults.rows.empty());
}

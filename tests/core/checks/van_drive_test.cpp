#include "tests/core/checks/equipped_van.h"

using namespace pumpwright;

// Rules on what the engine really records, not on recordings made by hand.

namespace {

DrivePlan pressesAt(std::vector<double> times_s, double duration_s) {
    DrivePlan plan = standingPlan(duration_s);
    for (const double time_s : times_s) {
        plan.presses.push_back({time_s, 2, 100, 0.2});
    }
    return plan;
}

/// Ids of the rules that raise more than a NOTICE.
std::set<std::string> raised(const Circuit& circuit, const DriveResult& drive) {
    std::set<std::string> ids;
    for (const Finding& finding : allFindings(circuit, &drive)) {
        UNSCOPED_INFO(finding.rule << ": " << finding.what.english());
        if (finding.word < SignalWord::Notice) {
            ids.insert(finding.rule);
        }
    }
    return ids;
}

} // namespace

TEST_CASE("the sound van drives without a finding", "[checks][drive]") {
    CircuitBuilder builder = equippedVan();
    const Circuit circuit = builder.plan(pressesAt({60, 75, 90}, 110)).build();
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    CHECK(raised(circuit, drive).empty());
}

TEST_CASE("a press before the pump has run lacks assist", "[checks][drive]") {
    CircuitBuilder builder = soundVan();
    DrivePlan plan = standingPlan(5);
    plan.presses.push_back({0.5, 2, 300, 0.2});
    const Circuit circuit = builder.plan(plan).build();
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    const Finding finding = onlyFinding("press-without-assist", circuit, &drive);
    CHECK(finding.word == SignalWord::Danger);
}

TEST_CASE("a switch with next to no differential chatters", "[checks][drive]") {
    CircuitBuilder builder = equippedVan();
    Circuit circuit = builder.plan(standingPlan(60)).build();
    circuit.parts.at(PartId{"B1"}).values["differential_Pa"] = 50;
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    const Finding finding = onlyFinding("relay-chatter", circuit, &drive);
    const Circuit cured = afterRemedy(circuit, finding);
    const DriveResult again = simulateDrive(cured);
    CHECK(raised(cured, again).empty());
}

TEST_CASE("the spike of a bare coil is what the drive recorded", "[checks][drive]") {
    CircuitBuilder builder = soundVan({});
    const Circuit circuit = builder.plan(standingPlan(60)).build();
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    const Finding finding = onlyFinding("coil-without-suppression", circuit, &drive);
    CHECK(finding.at_s.has_value());
    // The gap of the switch breaks down at no less than about 327 V, Paschen minimum, from memory of
    // textbooks.
    CHECK(finding.value > 250);
    CHECK(finding.value < 400);
}

TEST_CASE("a set point beyond the pump's reach keeps it running", "[checks][drive]") {
    CircuitBuilder builder = soundVan();
    Circuit circuit = builder.plan(standingPlan(120)).build();
    circuit.parts.at(PartId{"B1"}).values["setPoint_Pa"] = 95e3;
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    const Finding finding = onlyFinding("pump-never-stops", circuit, &drive);
    CHECK(finding.parts == std::vector<PartId>{{"M1"}, {"B1"}});
    const Circuit cured = afterRemedy(circuit, finding);
    const DriveResult again = simulateDrive(cured);
    CHECK(findings("pump-never-stops", cured, &again).empty());
}

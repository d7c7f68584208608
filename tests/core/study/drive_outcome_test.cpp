#include "core/study/drive_outcome.h"
#include "tests/support/catch.h"
#include "tests/support/van_circuit.h"

using namespace pumpwright;

namespace {

Circuit van() {
    CircuitBuilder builder = vanVacuumSide();
    DrivePlan plan = standingPlan(10);
    plan.presses = {{5, 1.5, 100, 0.25, {}}};
    return addPumpFeed(builder).wire("G1.30", "B1.1").wire("B1.2", "K1.86").plan(plan).build();
}

DriveOutcome cancelled() {
    DriveOutcome outcome;
    outcome.status = DriveStatus::Cancelled;
    return outcome;
}

} // namespace

TEST_CASE("an outcome tells of findings, presses and what is in reserve", "[study][cancel]") {
    const std::atomic<bool> go = false;
    const DriveOutcome outcome = driveOutcome(van(), go);
    CHECK(outcome.status == DriveStatus::Finished);
    CHECK(outcome.numbers.presses == 1);
    CHECK(outcome.openFindings != DriveOutcome{}.openFindings);
    CHECK(outcome.reservePresses > 0);
}

TEST_CASE("of a drive whose outcome is not wanted any more nothing is worked out", "[study][cancel]") {
    const Circuit circuit = van();
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    const std::atomic<bool> stop = true;
    CHECK(driveOutcome(circuit, drive, stop) == cancelled());
    CHECK(driveOutcome(circuit, stop) == cancelled());
}

TEST_CASE("of a drive that was cancelled nothing is worked out", "[study][cancel]") {
    const Circuit circuit = van();
    DriveResult drive = simulateDrive(circuit);
    drive.status = DriveStatus::Cancelled;
    const std::atomic<bool> go = false;
    CHECK(driveOutcome(circuit, drive, go) == cancelled());
}

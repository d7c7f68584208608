#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// The pump runs from 0 to 20 s and reaches `peak_Pa`; then the vacuum falls back by `creep_Pa` in 3 s.
DriveResult creeping(double peak_Pa, double creep_Pa) {
    return RecordingBuilder(60)
        .part("M1", probe::kCurrent, {{0, 12}, {0.2, 5.5}, {20, 5.5}, {20, 0}, {60, 0}})
        .port("B1.vacuum", {{0, 0}, {20, peak_Pa}, {23, peak_Pa - creep_Pa}, {60, peak_Pa - creep_Pa}})
        .drive();
}

Circuit van(double differential_Pa) {
    CircuitBuilder builder = vanVacuumSide({{"setPoint_Pa", 55e3}, {"differential_Pa", differential_Pa}});
    addPumpFeed(builder).wire("F1.2", "B1.1", 0.75e-6, 1).wire("B1.2", "K1.86", 0.75e-6, 1);
    return builder.build();
}

} // namespace

TEST_CASE("the creep after a fast pump-down is more than a differential of 0.2 kPa",
          "[checks][differential-below-creep][raises]") {
    const Circuit circuit = van(200);
    const DriveResult drive = creeping(55.2e3, 400);
    const Finding finding = onlyFinding("differential-below-creep", circuit, &drive);
    CHECK(finding.parts == std::vector<PartId>{{"B1"}});
    CHECK(finding.value == Approx(400).epsilon(1e-3));
    CHECK(finding.limit == Approx(200 - 0.02 * 200).epsilon(0.03));
    CHECK(*finding.at_s == Approx(20));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    const Circuit cured = afterRemedy(circuit, finding);
    CHECK(cured.parts.at(PartId{"B1"}).values.at("differential_Pa") == Approx(10e3));
    const DriveResult again = creeping(65e3, 400);
    CHECK(findings("differential-below-creep", cured, &again).empty());
}

TEST_CASE("the same creep within the differential, or above the set point after a run-on, does no harm",
          "[checks][differential-below-creep][near-miss]") {
    const DriveResult drive = creeping(58e3, 400);
    CHECK(findings("differential-below-creep", van(3000), &drive).empty());
    CHECK(findings("differential-below-creep", van(200), &drive).empty());
}

TEST_CASE("the creep may come up to the set point", "[checks][differential-below-creep][at-limit]") {
    const Circuit circuit = van(3000);
    const DriveResult within = creeping(58e3, 2930);
    CHECK(findings("differential-below-creep", circuit, &within).empty());
    const DriveResult beyond = creeping(58e3, 2945);
    CHECK(findings("differential-below-creep", circuit, &beyond).size() == 1);
}

TEST_CASE("a press that takes the vacuum is no creep", "[checks][differential-below-creep]") {
    Circuit circuit = van(200);
    circuit.plan.presses = {{22, 1.5, 100, 0.2}};
    const DriveResult drive = creeping(55.2e3, 4000);
    CHECK(findings("differential-below-creep", circuit, &drive).empty());
}

TEST_CASE("a pump that something else stopped below the set point says nothing of the creep",
          "[checks][differential-below-creep]") {
    const DriveResult drive = creeping(40e3, 4000);
    CHECK(findings("differential-below-creep", van(200), &drive).empty());
}

TEST_CASE("the gas law's own creep shows in a simulated drive", "[checks][differential-below-creep]") {
    // A pump-down that takes some seconds cools the gas; warm again, its pressure is higher by its share of
    // the absolute temperature (ideal gas at constant volume).
    Circuit circuit = van(200);
    circuit.plan = standingPlan(60);
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    CHECK(findings("differential-below-creep", circuit, &drive).size() == 1);
}

#include "core/study/drive_summary.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/recording_builder.h"

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

Circuit pumpAndBooster() {
    DrivePlan plan;
    plan.duration_s = 10;
    plan.presses = {{2.0, 1.0, 120, 0.2}, {6.0, 1.0, 200, 0.2}};
    return CircuitBuilder()
        .part("pump", "M1", {{"runningCurrent_A", 5}})
        .part("booster", "A1")
        .plan(plan)
        .build();
}

} // namespace

TEST_CASE("vacuum is told at its lowest, highest and last", "[study][drive-summary]") {
    const DriveResult drive =
        RecordingBuilder(10).port("A1.vacuum", {{0, 20e3}, {4, 70e3}, {6, 50e3}, {10, 60e3}}).drive();
    const DriveSummary summary = driveSummary(pumpAndBooster(), drive.recording);
    REQUIRE(summary.vacuum.size() == 1);
    CHECK(summary.vacuum[0].part == PartId{"A1"});
    CHECK_THAT(summary.vacuum[0].lowest_Pa, WithinAbs(20e3, 0.1));
    CHECK_THAT(summary.vacuum[0].highest_Pa, WithinAbs(70e3, 0.1));
    CHECK_THAT(summary.vacuum[0].atEnd_Pa, WithinAbs(60e3, 0.1));
}

TEST_CASE("a press is told with the vacuum it found, the lowest, and assist given and asked for",
          "[study][drive-summary]") {
    const DriveResult drive =
        RecordingBuilder(10)
            .port("A1.vacuum", {{0, 60e3}, {2, 60e3}, {2.5, 45e3}, {5, 45e3}, {10, 45e3}})
            .part("A1", probe::kAssist, {{0, 0}, {2, 0}, {2.2, 400}, {3, 400}, {3.2, 0}})
            .part("A1", probe::kAssistAsked, {{0, 0}, {2, 0}, {2.2, 500}, {3, 500}, {3.2, 0}})
            .drive();
    const DriveSummary summary = driveSummary(pumpAndBooster(), drive.recording);
    REQUIRE(summary.presses.size() == 2);
    const PressSummary& first = summary.presses[0];
    CHECK_THAT(first.vacuumBefore_Pa, WithinAbs(60e3, 0.1));
    CHECK_THAT(first.vacuumLowest_Pa, WithinAbs(45e3, 0.1));
    CHECK_THAT(first.assist_N, WithinAbs(400, 1e-3));
    CHECK_THAT(first.assistAsked_N, WithinAbs(500, 1e-3));
    CHECK_THAT(summary.presses[1].assist_N, WithinAbs(0, 1e-9));
}

TEST_CASE("a press after the run ended is not told", "[study][drive-summary]") {
    const DriveResult drive = RecordingBuilder(4).part("A1", probe::kAssist, {{0, 0}, {4, 0}}).drive();
    CHECK(driveSummary(pumpAndBooster(), drive.recording).presses.size() == 1);
}

TEST_CASE("a motor's starts and running time come from its current", "[study][drive-summary]") {
    // Above 0.5 A, a tenth of 5 A: from 1 s to 3 s and from 5 s to the end.
    const DriveResult drive =
        RecordingBuilder(10)
            .part("M1", probe::kCurrent,
                  {{0, 0}, {1, 0}, {1, 12}, {1.5, 5}, {3, 5}, {3, 0}, {5, 0}, {5, 12}, {6, 5}, {10, 5}})
            .drive();
    const DriveSummary summary = driveSummary(pumpAndBooster(), drive.recording);
    REQUIRE(summary.motors.size() == 1);
    CHECK(summary.motors[0].starts == 2);
    CHECK_THAT(summary.motors[0].running_s, WithinAbs(7, 1e-6));
    CHECK_THAT(summary.motors[0].highest_A, WithinAbs(12, 1e-5));
}

TEST_CASE("a chattering contact shows how often it closed within one second", "[study][drive-summary]") {
    const DriveResult drive =
        RecordingBuilder(10)
            .part("B1", probe::kContact,
                  {{0, 0}, {1, 1}, {1.1, 0}, {1.3, 1}, {1.4, 0}, {1.6, 1}, {1.7, 0}, {5, 1}, {6, 0}})
            .part("B1", probe::kContactCurrent, {{0, 0}, {10, 3}})
            .drive();
    const DriveSummary summary = driveSummary(pumpAndBooster(), drive.recording);
    REQUIRE(summary.contacts.size() == 1);
    CHECK(summary.contacts[0].contact.empty());
    CHECK(summary.contacts[0].closings == 4);
    CHECK(summary.contacts[0].mostClosingsInOneSecond == 3);
    CHECK_THAT(summary.contacts[0].closed_s, WithinAbs(1.3, 1e-6));
}

TEST_CASE("closings exactly one second apart are counted together, further ones not",
          "[study][drive-summary]") {
    const auto most = [](double second_s) {
        const DriveResult drive =
            RecordingBuilder(10)
                .part("K1", probe::kContact, {{0, 0}, {1, 1}, {1.5, 0}, {second_s, 1}, {5, 0}})
                .drive();
        return driveSummary(Circuit{}, drive.recording).contacts.at(0).mostClosingsInOneSecond;
    };
    CHECK(most(2.0) == 2);
    CHECK(most(2.01) == 1);
}

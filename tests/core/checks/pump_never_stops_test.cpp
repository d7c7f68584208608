#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// M1 runs from 1 s for `length_s`; B1 is closed for as long, and the vacuum there gets to `reached_Pa`.
DriveResult running(double length_s, double reached_Pa = 48e3) {
    return RecordingBuilder(200)
        .part("M1", probe::kCurrent,
              {{0, 0}, {1, 0}, {1, 12}, {1.2, 5}, {1 + length_s, 5}, {1 + length_s, 0}, {200, 0}})
        .part("B1", probe::kContact, {{0, 1}, {1 + length_s, length_s < 150 ? 0.0 : 1.0}})
        .port("B1.vacuum", {{0, 0}, {1, 0}, {100, reached_Pa}, {200, reached_Pa}})
        .drive();
}

Circuit van() {
    Circuit circuit = soundVan().build();
    circuit.parts.at(PartId{"B1"}).values = {{"setPoint_Pa", 50e3}, {"differential_Pa", 5e3}};
    return circuit;
}

} // namespace

TEST_CASE("a pump may run for a minute and no longer",
          "[checks][pump-never-stops][raises][near-miss][at-limit]") {
    const DriveResult below = running(59.9);
    CHECK(findings("pump-never-stops", van(), &below).empty());
    const DriveResult at = running(60);
    CHECK(findings("pump-never-stops", van(), &at).empty());
    const DriveResult above = running(60.1);
    const Finding finding = onlyFinding("pump-never-stops", van(), &above);
    CHECK(finding.value == Approx(60.1));
    CHECK(finding.limit == Approx(60));
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.parts.front() == PartId{"M1"});
    checkComplete(finding);
}

TEST_CASE("the switch that never opens is named with what it waits for", "[checks][pump-never-stops]") {
    const DriveResult drive = running(199, 52e3);
    const Circuit circuit = van();
    const Finding finding = onlyFinding("pump-never-stops", circuit, &drive);
    CHECK(finding.parts == std::vector<PartId>{{"M1"}, {"B1"}});
    CHECK(finding.what.english().find("B1 opens at") != std::string::npos);
    // 90 % of 52 kPa, less the differential of 5 kPa, rounded down.
    CHECK(afterRemedy(circuit, finding).parts.at(PartId{"B1"}).values.at("setPoint_Pa") == Approx(41e3));
}

TEST_CASE("where too little vacuum is reached no lower set point is offered", "[checks][pump-never-stops]") {
    const DriveResult drive = running(199, 40e3);
    for (const Remedy& remedy : onlyFinding("pump-never-stops", van(), &drive).remedies) {
        CHECK_FALSE(remedy.edit.has_value());
    }
}

TEST_CASE("short runs one after the other are not one long run", "[checks][pump-never-stops]") {
    const DriveResult drive =
        RecordingBuilder(200)
            .part("M1", probe::kCurrent,
                  {{0, 5}, {50, 5}, {50, 0}, {52, 0}, {52, 5}, {100, 5}, {100, 0}, {200, 0}})
            .drive();
    CHECK(findings("pump-never-stops", van(), &drive).empty());
}

TEST_CASE("gaps of chatter do not end a run", "[checks][pump-never-stops]") {
    const DriveResult drive =
        RecordingBuilder(200)
            .part("M1", probe::kCurrent,
                  {{0, 5}, {50, 5}, {50, 0}, {50.1, 0}, {50.1, 5}, {100, 5}, {100, 0}, {200, 0}})
            .drive();
    CHECK(onlyFinding("pump-never-stops", van(), &drive).value == Approx(100));
}

TEST_CASE("a lamp may burn for ever", "[checks][pump-never-stops]") {
    const DriveResult drive = RecordingBuilder(200).part("P1", probe::kCurrent, {{0, 5}, {200, 5}}).drive();
    CHECK(findings("pump-never-stops", switchedLamp().build(), &drive).empty());
}

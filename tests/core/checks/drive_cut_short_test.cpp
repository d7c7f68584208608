#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

DriveResult ended(DriveStatus status, double duration_s) {
    DriveResult drive = RecordingBuilder(duration_s).drive();
    drive.status = status;
    drive.message = "The drive cannot be simulated beyond 12 s: K1 switches to and fro without end.";
    drive.suspects = {"K1"};
    return drive;
}

} // namespace

TEST_CASE("a drive that stopped is a finding that names the part", "[checks][drive-cut-short][raises]") {
    const DriveResult drive = ended(DriveStatus::Stopped, 12);
    const Finding finding = onlyFinding("drive-cut-short", soundVan().build(), &drive);
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.parts == std::vector{PartId{"K1"}});
    CHECK(finding.what.english() == drive.message);
    CHECK(finding.value == Approx(12));
    checkComplete(finding);
}

TEST_CASE("a finished, a cancelled and a missing drive are no findings",
          "[checks][drive-cut-short][near-miss]") {
    const DriveResult finished = ended(DriveStatus::Finished, 60);
    CHECK(findings("drive-cut-short", soundVan().build(), &finished).empty());
    const DriveResult cancelled = ended(DriveStatus::Cancelled, 12);
    CHECK(findings("drive-cut-short", soundVan().build(), &cancelled).empty());
    CHECK(findings("drive-cut-short", soundVan().build()).empty());
}

TEST_CASE("a stop at the very start is reported as one a moment before the end is",
          "[checks][drive-cut-short][at-limit]") {
    const DriveResult start = ended(DriveStatus::Stopped, 0);
    CHECK(onlyFinding("drive-cut-short", soundVan().build(), &start).value == Approx(0));
    const DriveResult nearEnd = ended(DriveStatus::Stopped, 59.999);
    CHECK(onlyFinding("drive-cut-short", soundVan().build(), &nearEnd).value == Approx(59.999));
}

#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// `count` runs of 2 s within `duration_s`, evenly spread.
DriveResult starting(int count, double duration_s) {
    RecordingBuilder::Samples samples{{0, 0}};
    for (int i = 0; i < count; ++i) {
        const double at_s = 1 + i * (duration_s - 5) / count;
        samples.insert(samples.end(), {{at_s, 0}, {at_s, 5.5}, {at_s + 2, 5.5}, {at_s + 2, 0}});
    }
    samples.push_back({duration_s, 0});
    return RecordingBuilder(duration_s).part("M1", probe::kCurrent, samples).drive();
}

} // namespace

TEST_CASE("21 starts in ten minutes are 126 in an hour", "[checks][pump-starts][raises]") {
    const Circuit circuit = soundVan().build();
    const DriveResult drive = starting(21, 600);
    const Finding finding = onlyFinding("pump-starts", circuit, &drive);
    CHECK(finding.parts == std::vector<PartId>{{"M1"}});
    CHECK(finding.value == Approx(126));
    CHECK(finding.limit == Approx(120));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
    REQUIRE(finding.remedies.front().edit.has_value());
    CHECK(afterRemedy(circuit, finding).parts.at(PartId{"B1"}).values.at("differential_Pa") >= 10e3);
}

TEST_CASE("a drive of two minutes does not tell how an hour would be", "[checks][pump-starts][near-miss]") {
    const DriveResult drive = starting(21, 120);
    CHECK(findings("pump-starts", soundVan().build(), &drive).empty());
    CHECK(findings("pump-starts", soundVan().build()).empty());
}

TEST_CASE("the rated number of starts is the limit", "[checks][pump-starts][at-limit]") {
    const Circuit circuit = soundVan().build();
    const DriveResult tenMinutes = starting(20, 600);
    CHECK(findings("pump-starts", circuit, &tenMinutes).empty());
    const DriveResult hour = starting(120, 3600);
    CHECK(findings("pump-starts", circuit, &hour).empty());
    const DriveResult busierHour = starting(121, 3600);
    CHECK(findings("pump-starts", circuit, &busierHour).size() == 1);
}

TEST_CASE("the busiest hour of a long drive counts, not its sum", "[checks][pump-starts]") {
    const DriveResult drive = starting(200, 7200);
    CHECK(findings("pump-starts", soundVan().build(), &drive).empty());
}

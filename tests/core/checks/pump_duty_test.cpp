#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

/// Runs of `run_s` every 60 s, ten of them.
DriveResult running(double run_s, double from_s = 0) {
    RecordingBuilder::Samples samples{{0, 0}};
    for (int i = 0; i < 10; ++i) {
        const double at_s = from_s + 60.0 * i;
        samples.insert(samples.end(), {{at_s, 0}, {at_s, 5.5}, {at_s + run_s, 5.5}, {at_s + run_s, 0}});
    }
    samples.push_back({from_s + 600, 0});
    return RecordingBuilder(from_s + 600).part("M1", probe::kCurrent, samples).drive();
}

} // namespace

TEST_CASE("310 of 600 seconds are too much for a pump rated for half the time",
          "[checks][pump-duty][raises]") {
    const Circuit circuit = soundVan().build();
    const DriveResult drive = running(31, 200);
    const Finding finding = onlyFinding("pump-duty", circuit, &drive);
    CHECK(finding.parts == std::vector<PartId>{{"M1"}});
    CHECK(finding.value == Approx(31.0 / 60).epsilon(1e-3));
    CHECK(finding.limit == Approx(0.5));
    CHECK(*finding.at_s == Approx(200));
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
}

TEST_CASE("a pump for continuous duty may run all the time", "[checks][pump-duty][near-miss]") {
    Circuit circuit = soundVan().build();
    circuit.parts.at(PartId{"M1"}).values["duty_share"] = 1;
    const DriveResult drive = running(59.9);
    CHECK(findings("pump-duty", circuit, &drive).empty());
    CHECK(findings("pump-duty", circuit).empty());
}

TEST_CASE("the rated duty is the limit", "[checks][pump-duty][at-limit]") {
    const Circuit circuit = soundVan().build();
    const DriveResult within = running(29.99);
    CHECK(findings("pump-duty", circuit, &within).empty());
    const DriveResult beyond = running(30.01);
    CHECK(findings("pump-duty", circuit, &beyond).size() == 1);
}

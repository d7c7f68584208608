#include "tests/core/checks/run_rule.h"

#include <cmath>

using namespace pumpwright;

namespace {

/// The van's relay closes so often in a drive of ten minutes; 300 h of driving in a year.
DriveResult closing(int count) {
    RecordingBuilder::Samples samples{{0, 0}};
    for (int i = 0; i < count; ++i) {
        samples.push_back({1.0 + i, 1});
        samples.push_back({1.5 + i, 0});
    }
    return RecordingBuilder(600).part("K1", probe::kContact, samples).drive();
}

Circuit relayOf(double operations, double breakInductive_A = 5.5) {
    Circuit circuit = soundVan().build();
    Part& relay = circuit.parts.at(PartId{"K1"});
    relay.values["ratedOperations"] = operations;
    relay.values["breakInductive_A"] = breakInductive_A;
    return circuit;
}

} // namespace

TEST_CASE("a contact lasts ten years of such drives", "[checks][contact-life][raises][near-miss][at-limit]") {
    // 10 closings in 600 s are 18,000 in 300 h and 180,000 in ten years: common practice, no published
    // source.
    const DriveResult drive = closing(10);
    CHECK(findings("contact-life", relayOf(180'000), &drive).empty());
    const Finding finding = onlyFinding("contact-life", relayOf(179'900), &drive);
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    CHECK(finding.value == Approx(180'000));
    CHECK(finding.limit == Approx(179'900));
    CHECK(finding.what.english().find("18000 times in a year") != std::string::npos);
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
}

TEST_CASE("a contact lasts longer with less current and shorter with more", "[checks][contact-life]") {
    // Electrical life falls as the current to the power of 1.5 to 2: common practice, no published source.
    const DriveResult drive = closing(600);
    CHECK(onlyFinding("contact-life", relayOf(1e5, 11), &drive).limit == Approx(1e5 * std::pow(2, 1.5)));
    CHECK(onlyFinding("contact-life", relayOf(1e5, 2.75), &drive).limit == Approx(1e5 / 4));
    CHECK(onlyFinding("contact-life", relayOf(1e5, 1000), &drive).limit == Approx(1e7)); // mechanical life
}

TEST_CASE("the project's driving counts", "[checks][contact-life]") {
    const DriveResult drive = closing(10);
    Circuit circuit = relayOf(180'000);
    circuit.limits.drivenPerYear_s *= 1.01;
    CHECK(findings("contact-life", circuit, &drive).size() == 1);
}

TEST_CASE("without a drive, and in a drive without closings, nothing wears",
          "[checks][contact-life][near-miss]") {
    CHECK(findings("contact-life", relayOf(100)).empty());
    const DriveResult drive = closing(0);
    CHECK(findings("contact-life", relayOf(100), &drive).empty());
}

TEST_CASE("a wider differential lets the relay live longer", "[checks][contact-life][drive]") {
    CircuitBuilder builder = soundVan();
    Circuit circuit = builder.plan(standingPlan(60)).build();
    circuit.parts.at(PartId{"B1"}).values["differential_Pa"] = 50;
    const DriveResult drive = simulateDrive(circuit);
    REQUIRE(drive.status == DriveStatus::Finished);
    const std::vector<Finding> found = findings("contact-life", circuit, &drive);
    const auto relay = std::find_if(found.begin(), found.end(), [](const Finding& finding) {
        return finding.parts.front() == PartId{"K1"};
    });
    REQUIRE(relay != found.end());
    const Circuit cured = afterRemedy(circuit, *relay);
    const DriveResult again = simulateDrive(cured);
    CHECK(findings("contact-life", cured, &again).empty());
}

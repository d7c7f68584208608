#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit lampOf(double current_A, double rating_A = 10) {
    return switchedLamp({{"ratedPower_W", 12 * current_A}}, {{"make_A", 1000}}, {{"rating_A", rating_A}})
        .build();
}

} // namespace

TEST_CASE("a fuse carries four fifths of its rating for long",
          "[checks][fuse-smaller-than-load][raises][near-miss][at-limit]") {
    CHECK(findings("fuse-smaller-than-load", lampOf(7.99)).empty());
    CHECK(findings("fuse-smaller-than-load", lampOf(8)).empty());
    const Finding finding = onlyFinding("fuse-smaller-than-load", lampOf(8.01));
    CHECK(finding.parts == std::vector<PartId>{{"F1"}});
    CHECK(finding.value == Approx(8.01));
    CHECK(finding.limit == Approx(8));
    CHECK(finding.word == SignalWord::Caution);
    checkComplete(finding);
}

TEST_CASE("more than its rating is a warning", "[checks][fuse-smaller-than-load]") {
    CHECK(onlyFinding("fuse-smaller-than-load", lampOf(10)).word == SignalWord::Caution);
    CHECK(onlyFinding("fuse-smaller-than-load", lampOf(10.01)).word == SignalWord::Warning);
}

TEST_CASE("the project sets the share that a fuse carries for long", "[checks][fuse-smaller-than-load]") {
    Circuit circuit = lampOf(7);
    circuit.limits.continuousFuseShare = 0.65;
    CHECK(onlyFinding("fuse-smaller-than-load", circuit).limit == Approx(6.5));
}

TEST_CASE("the remedy fits the next size, and wires for it", "[checks][fuse-smaller-than-load]") {
    Circuit circuit = lampOf(13);
    const Finding finding = onlyFinding("fuse-smaller-than-load", circuit);
    checkRemedy(circuit, finding);
    CHECK(afterRemedy(circuit, finding).parts.at(PartId{"F1"}).values.at("rating_A") == Approx(20));
    for (auto& [id, wire] : circuit.wires) {
        wire.area_m2 = 0.75e-6; // may carry 16 A: too little behind 20 A
    }
    const Finding thin = onlyFinding("fuse-smaller-than-load", circuit);
    checkRemedy(circuit, thin);
    CHECK(findings("fuse-larger-than-wire", afterRemedy(circuit, thin)).empty());
}

TEST_CASE("a fuse that opens in the drive is found whatever it carries for long",
          "[checks][fuse-smaller-than-load]") {
    const Circuit circuit = lampOf(5);
    const auto wearing = [](double share) {
        return RecordingBuilder(20)
            .part("F1", probe::kCurrent, {{0, 0}, {7, 0}, {7, 60}, {7.5, 60}, {7.5, 0}, {20, 0}})
            .part("F1", probe::kOpenShare, {{0, 0}, {7, 0}, {7.5, share}, {20, share}})
            .drive();
    };
    const DriveResult holds = wearing(0.999);
    CHECK(findings("fuse-smaller-than-load", circuit, &holds).empty());
    const DriveResult opens = wearing(1);
    const Finding finding = onlyFinding("fuse-smaller-than-load", circuit, &opens);
    CHECK(finding.word == SignalWord::Warning);
    CHECK(finding.value == Approx(60));
    REQUIRE(finding.at_s.has_value());
    CHECK(*finding.at_s == Approx(7.5));
    CHECK(finding.what.english().find("opens in the drive") != std::string::npos);
}

TEST_CASE("a sound circuit has no fuse smaller than its load", "[checks][fuse-smaller-than-load]") {
    CHECK(findings("fuse-smaller-than-load", soundVan().build()).empty());
}

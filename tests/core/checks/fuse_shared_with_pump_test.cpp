#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit withLampAt(const char* end) {
    CircuitBuilder builder = soundVan();
    return builder.part("lamp", "P8")
        .part("ground", "X8")
        .wire(end, "P8.1", 1.5e-6, 1)
        .wire("P8.2", "X8.31", 1.5e-6, 0.5)
        .build();
}

} // namespace

TEST_CASE("a lamp on the pump's fuse takes the assist along", "[checks][fuse-shared-with-pump][raises]") {
    for (const char* end : {"K1.87", "F1.2"}) {
        const Circuit circuit = withLampAt(end);
        const Finding finding = onlyFinding("fuse-shared-with-pump", circuit);
        CHECK(finding.parts == std::vector<PartId>{{"F1"}, {"M1"}, {"P8"}});
        CHECK(finding.word == SignalWord::Warning);
        checkComplete(finding);
        checkRemedy(circuit, finding);
    }
}

TEST_CASE("the pump's own relay may hang on its fuse", "[checks][fuse-shared-with-pump][near-miss]") {
    CHECK(findings("fuse-shared-with-pump", soundVan().build()).empty());
}

TEST_CASE("without a pump nothing is shared with it", "[checks][fuse-shared-with-pump]") {
    CHECK(findings("fuse-shared-with-pump", switchedLamp().build()).empty());
}

TEST_CASE("a fuse of its own in the lamp's lead makes the difference",
          "[checks][fuse-shared-with-pump][at-limit]") {
    const auto lampBehind = [](const char* fuseFeed) {
        CircuitBuilder builder = soundVan();
        return builder.part("fuse", "F8", {{"rating_A", 5}})
            .part("lamp", "P8")
            .part("ground", "X8")
            .wire(fuseFeed, "F8.1")
            .wire(std::string(fuseFeed) == "F1.2" ? "F8.2" : "F1.2", "P8.1")
            .wire("P8.2", "X8.31")
            .build();
    };
    CHECK(findings("fuse-shared-with-pump", lampBehind("F1.2")).empty());
    CHECK(findings("fuse-shared-with-pump", lampBehind("G1.30")).size() == 1);
}

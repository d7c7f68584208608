#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

namespace {

Circuit relayIn(const char* place, double stands_K, const char* ingress) {
    Circuit circuit = soundVan().build();
    Part& relay = circuit.parts.at(PartId{"K1"});
    relay.place = place;
    relay.ratedTemperature_K = stands_K;
    relay.ingress = ingress;
    return circuit;
}

} // namespace

TEST_CASE("under the bonnet parts stand 105 °C",
          "[checks][rating-below-place][raises][near-miss][at-limit]") {
    // Common practice, no published source.
    CHECK(findings("rating-below-place", relayIn("under-bonnet", 378.2, "")).empty());
    CHECK(findings("rating-below-place", relayIn("under-bonnet", 378.15, "")).empty());
    const Finding finding = onlyFinding("rating-below-place", relayIn("under-bonnet", 378.1, ""));
    CHECK(finding.limit == Approx(378.15));
    CHECK(finding.parts == std::vector<PartId>{{"K1"}});
    checkComplete(finding);
}

TEST_CASE("under the bonnet water splashes", "[checks][rating-below-place]") {
    // IEC 60529: 4 stands splashes, 6 strong jets.
    CHECK(findings("rating-below-place", relayIn("under-bonnet", 400, "IP44")).empty());
    CHECK(findings("rating-below-place", relayIn("under-bonnet", 400, "IP40")).size() == 1);
    CHECK(findings("rating-below-place", relayIn("underbody", 400, "IP65")).size() == 1);
    CHECK(findings("rating-below-place", relayIn("underbody", 400, "IP66")).empty());
}

TEST_CASE("a place that is not stated asks for nothing", "[checks][rating-below-place]") {
    CHECK(findings("rating-below-place", relayIn("", 300, "IP20")).empty());
    CHECK(findings("rating-below-place", relayIn("cabin", 358.15, "IP20")).empty());
}

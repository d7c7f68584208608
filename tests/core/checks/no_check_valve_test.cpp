#include "tests/core/checks/run_rule.h"

using namespace pumpwright;

TEST_CASE("a hose straight from pump to booster lets the vacuum go", "[checks][no-check-valve][raises]") {
    const Circuit circuit =
        CircuitBuilder().part("booster", "A1").part("pump", "M1").hose("A1.vacuum", "M1.inlet").build();
    const Finding finding = onlyFinding("no-check-valve", circuit);
    CHECK(finding.parts == std::vector<PartId>{{"M1"}, {"A1"}});
    CHECK(finding.word == SignalWord::Warning);
    checkComplete(finding);
    checkRemedy(circuit, finding);
}

TEST_CASE("tees and reservoirs hold nothing back", "[checks][no-check-valve]") {
    CircuitBuilder builder;
    builder.part("booster", "A1").part("pump", "M1").part("tee", "X1").part("reservoir", "C1");
    builder.hose("A1.vacuum", "X1.a").hose("X1.c", "C1.a").hose("C1.b", "M1.inlet");
    CHECK(findings("no-check-valve", builder.build()).size() == 1);
}

TEST_CASE("a check valve between, or no hose at all, is no finding", "[checks][no-check-valve][near-miss]") {
    CHECK(findings("no-check-valve", soundVan().build()).empty());
    CHECK(findings("no-check-valve", CircuitBuilder().part("booster", "A1").part("pump", "M1").build())
              .empty());
}

TEST_CASE("one check valve is enough, a tee in its place is not", "[checks][no-check-valve][at-limit]") {
    const auto over = [](const char* kind, const char* near, const char* far) {
        CircuitBuilder builder;
        builder.part("booster", "A1").part("pump", "M1").part(kind, "R1");
        builder.hose("A1.vacuum", std::string("R1.") + near).hose(std::string("R1.") + far, "M1.inlet");
        return builder.build();
    };
    CHECK(findings("no-check-valve", over("check-valve", "booster", "pump")).empty());
    CHECK(findings("no-check-valve", over("tee", "a", "b")).size() == 1);
}

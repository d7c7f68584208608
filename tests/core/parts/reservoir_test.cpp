#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::Matchers::WithinRel;

TEST_CASE("both ports of a reservoir open into one volume", "[parts][reservoir]") {
    DrivePlan plan;
    plan.initialVacuum_Pa = 60e3;
    const PartKind& kind = *findPartKind("reservoir");
    Part part = newPart(kind, "C1", {});
    part.values["volume_m3"] = 3e-3;
    LawBench bench(kind, part, plan);
    CHECK(bench.size() == 3);
    CHECK(bench.gas("a").mass == bench.gas("b").mass);
    // 3 L at 41.3 kPa and 20 °C, by the gas law.
    CHECK_THAT(bench.x(bench.gas("b").mass), WithinRel(41325 * 3e-3 / (287.05 * 293.15), 1e-4));
}

TEST_CASE("cold gas in a reservoir is warmed by its wall and keeps its mass", "[parts][reservoir]") {
    const PartKind& kind = *findPartKind("reservoir");
    LawBench bench(kind, newPart(kind, "C1", {}));
    bench.fill("a", 2e-3, 45e3, 260);
    const PlainEquations equations = bench.equations();
    CHECK(equations.f(bench.gas("a").energy) > 1);
    CHECK(equations.f(bench.gas("a").mass) == 0);
}

#include "tests/core/parts/gas_bench.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using namespace pumpwright::tests;
using Catch::Matchers::WithinRel;

TEST_CASE("both ports of a reservoir open into one volume", "[parts][reservoir]") {
    DrivePlan plan;
    plan.initialVacuum_Pa = 60e3;
    GasBench bench(plan);
    Part part = newPart(*findPartKind("reservoir"), "C1", {});
    part.values["volume_m3"] = 3e-3;
    const auto law = kindOf(part).law(part, bench);
    CHECK(bench.x.size() == 3);
    CHECK(bench.gas("a").mass == bench.gas("b").mass);
    // 3 L at 41.3 kPa and 20 °C, by the gas law.
    CHECK_THAT(bench[bench.gas("b").mass], WithinRel(41325 * 3e-3 / (287.05 * 293.15), 1e-4));
    bench.fill(bench.gas("a"), 3e-3, 45e3, 280);
    CHECK(slopesMatch(bench, *law));
}

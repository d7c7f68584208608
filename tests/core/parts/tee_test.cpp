#include "tests/core/parts/gas_bench.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using namespace pumpwright::tests;

TEST_CASE("the three ports of a tee open into one volume", "[parts][tee]") {
    GasBench bench;
    const Part part = newPart(*findPartKind("tee"), "X1", {});
    const auto law = kindOf(part).law(part, bench);
    CHECK(bench.x.size() == 3);
    CHECK(bench.gas("a").mass == bench.gas("b").mass);
    CHECK(bench.gas("a").mass == bench.gas("c").mass);
    bench.fill(bench.gas("a"), 5e-6, 45e3, 280);
    CHECK(slopesMatch(bench, *law));
    law->addMasses(bench);
    CHECK(bench.masses.size() == 2);
}

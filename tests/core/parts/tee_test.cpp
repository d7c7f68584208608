#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;

TEST_CASE("the three ports of a tee open into one volume", "[parts][tee]") {
    const PartKind& kind = *findPartKind("tee");
    LawBench bench(kind, newPart(kind, "X1", {}));
    CHECK(bench.size() == 3);
    const GasNode gas = bench.gas("a");
    CHECK(bench.gas("b").mass == gas.mass);
    CHECK(bench.gas("c").mass == gas.mass);
    CHECK(bench.masses().at(gas.mass, gas.mass) == 1);
    CHECK(bench.masses().at(gas.energy, gas.energy) == 1);
    CHECK(bench.masses().at(gas.pressure, gas.pressure) == 0);
}

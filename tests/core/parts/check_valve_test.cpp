#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::Matchers::WithinRel;

namespace {

struct ValveOnBench {
    LawBench bench{*findPartKind("check-valve"), newPart(*findPartKind("check-valve"), "R1", {})};

    void set(double booster_Pa, double pump_Pa) {
        bench.fill("booster", 5e-6, booster_Pa);
        bench.fill("pump", 5e-6, pump_Pa);
    }
    double flow() const { return bench.probe(probe::kFlow); }
};

} // namespace

TEST_CASE("a check valve states its slopes shut, opening, open and backward", "[parts][check-valve]") {
    ValveOnBench valve;
    for (const double pump_Pa : {20e3, 47.2e3, 47.6e3, 48.5e3, 50.5e3, 100e3}) {
        INFO(pump_Pa << " Pa against 50 kPa");
        valve.set(50e3, pump_Pa);
        checkSlopes(valve.bench);
    }
}

TEST_CASE("a check valve opens at its cracking pressure and not before", "[parts][check-valve]") {
    ValveOnBench valve;
    valve.set(50e3, 48.01e3);
    const double justShut = valve.flow();
    valve.set(50e3, 47e3);
    const double open = valve.flow();
    CHECK(justShut > 0); // the leak
    CHECK(justShut < 1e-5 * open);
    // 6 mm wide open and choked: ṁ = A·p·2.360e-3 s/m at 20 °C (compressible-flow textbooks).
    valve.set(50e3, 20e3);
    CHECK_THAT(valve.flow(), WithinRel(28.27e-6 * 50e3 * 2.360e-3, 2e-3));
}

TEST_CASE("a check valve lets next to nothing back", "[parts][check-valve]") {
    ValveOnBench valve;
    valve.set(33e3, 101325);
    CHECK_THAT(valve.flow(), WithinRel(-78.54e-12 * 101325 * 2.360e-3, 2e-3));
}

TEST_CASE("a check valve starts with the plan's vacuum on the booster's side only", "[parts][check-valve]") {
    DrivePlan plan;
    plan.initialVacuum_Pa = 60e3;
    const PartKind& kind = *findPartKind("check-valve");
    LawBench bench(kind, newPart(kind, "R1", {}), plan);
    CHECK_THAT(bench.x(bench.gas("booster").pressure), WithinRel(bench.ambient_Pa() - 60e3, 1e-12));
    CHECK_THAT(bench.x(bench.gas("pump").pressure), WithinRel(bench.ambient_Pa(), 1e-12));
}

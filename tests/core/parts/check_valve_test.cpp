#include "tests/core/parts/gas_bench.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using namespace pumpwright::tests;
using Catch::Matchers::WithinRel;

namespace {

struct ValveOnBench {
    GasBench bench;
    std::unique_ptr<Law> law;

    ValveOnBench() {
        const Part part = newPart(*findPartKind("check-valve"), "R1", {});
        law = kindOf(part).law(part, bench);
    }
    void set(double booster_Pa, double pump_Pa) {
        bench.fill(bench.gas("booster"), 5e-6, booster_Pa, 293.15);
        bench.fill(bench.gas("pump"), 5e-6, pump_Pa, 293.15);
    }
    double flow() const {
        std::vector<double> values(law->probes().size());
        law->probeValues(bench.point(), values);
        return values[0];
    }
};

} // namespace

TEST_CASE("a check valve states its slopes shut, opening, open and backward", "[parts][check-valve]") {
    ValveOnBench valve;
    for (const double pump_Pa : {20e3, 47.2e3, 47.6e3, 48.5e3, 50.01e3, 100e3}) {
        INFO(pump_Pa << " Pa against 50 kPa");
        valve.set(50e3, pump_Pa);
        CHECK(slopesMatch(valve.bench, *valve.law));
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
    GasBench bench(plan);
    const Part part = newPart(*findPartKind("check-valve"), "R1", {});
    const auto law = kindOf(part).law(part, bench);
    const double ambient_Pa = bench.surroundings().ambientPressure_Pa(0);
    CHECK_THAT(bench[bench.gas("booster").pressure], WithinRel(ambient_Pa - 60e3, 1e-12));
    CHECK_THAT(bench[bench.gas("pump").pressure], WithinRel(ambient_Pa, 1e-12));
}

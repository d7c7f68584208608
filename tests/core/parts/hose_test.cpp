#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::Matchers::WithinRel;

namespace {

/// A hose between two vessels of 1 L.
struct HoseOnBench {
    LawBench bench;

    HoseOnBench(double diameter_m, double length_m)
        : bench([&](LawContext& context) {
              Hose hose;
              hose.innerDiameter_m = diameter_m;
              hose.length_m = length_m;
              const GasNode from = context.addGas("from", 1e-3, true);
              const GasNode to = context.addGas("to", 1e-3, true);
              return hoseLaw(hose, from, to, context);
          }) {}
    double flow(double from_Pa, double to_Pa) {
        bench.fill("from", 1e-3, from_Pa);
        bench.fill("to", 1e-3, to_Pa);
        return bench.probe(probe::kFlow);
    }
};

} // namespace

TEST_CASE("a hose states its slopes in both directions", "[parts][hose]") {
    HoseOnBench hose(9e-3, 0.5);
    for (const double to_Pa : {20e3, 55e3, 59.5e3, 60.5e3, 100e3}) {
        INFO(to_Pa << " Pa against 60 kPa");
        hose.flow(60e3, to_Pa);
        checkSlopes(hose.bench);
    }
}

TEST_CASE("a hose passes the same both ways", "[parts][hose]") {
    HoseOnBench hose(9e-3, 0.5);
    CHECK(hose.flow(80e3, 50e3) > 0);
    CHECK(hose.flow(50e3, 80e3) == -hose.flow(80e3, 50e3));
}

TEST_CASE("a thin long hose is ruled by friction, a short wide one by its bore", "[parts][hose]") {
    HoseOnBench thin(1e-3, 1);
    HoseOnBench longer(1e-3, 2);
    CHECK_THAT(thin.flow(60e3, 59e3) / longer.flow(60e3, 59e3), WithinRel(2.0, 0.02));
    HoseOnBench wide(9e-3, 0.1);
    HoseOnBench wideLonger(9e-3, 0.2);
    CHECK_THAT(wide.flow(100e3, 40e3) / wideLonger.flow(100e3, 40e3), WithinRel(1.0, 0.01));
}

TEST_CASE("a hose carries its flow from one vessel into the other", "[parts][hose]") {
    HoseOnBench hose(9e-3, 0.5);
    const double flow = hose.flow(80e3, 50e3);
    const PlainEquations equations = hose.bench.equations();
    CHECK(equations.f(hose.bench.gas("from").mass) == -flow);
    CHECK(equations.f(hose.bench.gas("to").mass) == flow);
}

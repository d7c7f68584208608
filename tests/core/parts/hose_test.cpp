#include "tests/core/parts/gas_bench.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using namespace pumpwright::tests;
using Catch::Matchers::WithinRel;

namespace {

/// A hose between two vessels of 1 L.
struct HoseOnBench {
    GasBench bench;
    GasNode from = bench.addGas("from", 1e-3, true);
    GasNode to = bench.addGas("to", 1e-3, true);
    std::unique_ptr<Law> law;

    HoseOnBench(double diameter_m, double length_m) {
        Hose hose;
        hose.innerDiameter_m = diameter_m;
        hose.length_m = length_m;
        law = hoseLaw(hose, from, to, bench);
    }
    double flow(double from_Pa, double to_Pa) {
        bench.fill(from, 1e-3, from_Pa, 293.15);
        bench.fill(to, 1e-3, to_Pa, 293.15);
        double value = 0;
        law->probeValues(bench.point(), std::span(&value, 1));
        return value;
    }
};

} // namespace

TEST_CASE("a hose states its slopes in both directions", "[parts][hose]") {
    HoseOnBench hose(9e-3, 0.5);
    for (const double to_Pa : {20e3, 59e3, 59.999e3, 60.01e3, 100e3}) {
        INFO(to_Pa << " Pa against 60 kPa");
        hose.flow(60e3, to_Pa);
        CHECK(slopesMatch(hose.bench, *hose.law));
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
    hose.bench.clear();
    hose.law->addEquations(hose.bench.point(), hose.bench);
    CHECK(hose.bench.f[static_cast<std::size_t>(hose.from.mass)] == -flow);
    CHECK(hose.bench.f[static_cast<std::size_t>(hose.to.mass)] == flow);
}

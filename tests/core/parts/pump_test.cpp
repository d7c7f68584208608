#include "tests/support/catch.h"
#include "tests/support/law_bench.h"

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr double kInletVolume_m3 = 20e-6;

Part pumpWith(std::map<std::string, double> values) {
    Part part = newPart(*findPartKind("pump"), "M1", {});
    part.values = std::move(values);
    return part;
}

/// A pump with its standard values but for `values`, on a bench.
struct PumpOnBench {
    LawBench bench;
    Unknown current = bench.own("motor current");
    Unknown speed = bench.own("motor speed");

    explicit PumpOnBench(std::map<std::string, double> values = {})
        : bench(*findPartKind("pump"), pumpWith(std::move(values))) {}
    double f(Unknown row) const { return bench.equations().f(row); }
    /// Running at a speed with this pressure at the inlet.
    void run(double speed_radps, double pressure_Pa) {
        bench.x(speed) = speed_radps;
        bench.fill("inlet", kInletVolume_m3, pressure_Pa);
    }
};

} // namespace

TEST_CASE("a pump states its slopes at standstill, running, reversed and pulsating", "[parts][pump]") {
    for (const double pulsation : {0.0, 0.3}) {
        PumpOnBench pump({{"pulsationShare", pulsation}});
        pump.bench.voltage("+") = 12.3;
        pump.bench.voltage("-") = 0.2;
        pump.bench.x(pump.current) = 5.4;
        for (const double speed : {0.0, 0.4, 30.0, 260.0, -50.0}) {
            for (const double pressure : {9e3, 14.25e3, 40e3, 101.3e3, 120e3}) {
                INFO(speed << " rad/s, " << pressure << " Pa, pulsation " << pulsation);
                pump.run(speed, pressure);
                checkSlopes(pump.bench);
            }
        }
    }
}

TEST_CASE("a motor that is switched on takes voltage over inductance as the slope of its current",
          "[parts][pump]") {
    PumpOnBench pump;
    pump.bench.voltage("+") = 12;
    const double inductance_H = pump.bench.masses().at(pump.current, pump.current);
    CHECK_THAT(pump.f(pump.current) / inductance_H, WithinRel(12 / 0.5e-3, 1e-9));
    pump.bench.x(pump.current) = 12;
    CHECK_THAT(pump.f(pump.current), WithinAbs(0, 1e-9));
}

TEST_CASE("the motor's current passes from plus to minus", "[parts][pump]") {
    PumpOnBench pump;
    pump.bench.x(pump.current) = 5;
    CHECK(pump.f(pump.bench.node("+")) == -5);
    CHECK(pump.f(pump.bench.node("-")) == 5);
    CHECK(pump.bench.probe(probe::kCurrent) == 5);
}

TEST_CASE("a pump takes its volume flow from the inlet and nothing at its lowest pressure", "[parts][pump]") {
    PumpOnBench pump;
    const double lowest_Pa = 0.14 * pump.bench.ambient_Pa();
    pump.run(260, 40e3);
    const double expected = 6e-4 * (1 - lowest_Pa / 40e3) * 40e3 / (kAirGasConstant_JPerKgK * 293.15);
    const double leak = -pump.bench.probe(probe::kFlow) + expected;
    CHECK(leak < 0.01 * expected); // through the vanes, which seal at this speed
    CHECK_THAT(pump.bench.probe(probe::kFlow), WithinRel(expected, 0.01));
    CHECK_THAT(pump.f(pump.bench.gas("inlet").mass), WithinRel(-pump.bench.probe(probe::kFlow), 1e-12));

    pump.run(260, 0.9 * lowest_Pa);
    CHECK(pump.bench.probe(probe::kFlow) <= 0);
    CHECK(pump.bench.probe(probe::kFlow) > -0.01 * expected);
}

TEST_CASE("a pump at standstill lets air back in, a running one seals", "[parts][pump]") {
    PumpOnBench pump;
    pump.run(0, 40e3);
    const double standing = pump.bench.probe(probe::kFlow);
    // A hole of 0.5 mm, choked: ṁ = A·p·2.360e-3 s/m at 20 °C (compressible-flow textbooks).
    CHECK_THAT(standing, WithinRel(-0.19635e-6 * 101325 * 2.360e-3, 2e-3));
    pump.run(-5, 40e3);
    CHECK(pump.bench.probe(probe::kFlow) < 0.9 * standing);
}

TEST_CASE("a pump on ambient pressure has friction only, at its lowest pressure compression too",
          "[parts][pump]") {
    PumpOnBench pump;
    pump.run(260, pump.bench.ambient_Pa());
    CHECK_THAT(pump.f(pump.speed), WithinRel(-(0.025 + 5e-5 * 260), 1e-6));
    pump.run(260, 40e3);
    CHECK(pump.f(pump.speed) < -0.12);
}

TEST_CASE("the standard pump balances near 5.5 A from 12 V at 60 kPa of vacuum", "[parts][pump]") {
    // Common practice, no published source: a pump that runs at 5.5 A and starts with 12 A.
    PumpOnBench pump;
    const double ambient_Pa = pump.bench.ambient_Pa();
    const auto excess = [&](double current) {
        pump.run((12 - 1.0 * current) / 0.025, ambient_Pa - 60e3);
        pump.bench.x(pump.current) = current;
        return pump.f(pump.speed);
    };
    CHECK(excess(5.3) < 0);
    CHECK(excess(5.6) > 0);
}

TEST_CASE("the pulse of the flow keeps its size whatever the solver made of it", "[parts][pump]") {
    PumpOnBench pump({{"pulsationShare", 0.3}});
    const Unknown cosine = pump.bench.own("cosine of the pulse");
    const Unknown sine = pump.bench.own("sine of the pulse");
    pump.run(260, 40e3);
    for (const double radius : {0.8, 1.0, 1.2}) {
        pump.bench.x(cosine) = 0.6 * radius;
        pump.bench.x(sine) = 0.8 * radius;
        const double outward = 0.6 * pump.f(cosine) + 0.8 * pump.f(sine);
        INFO("radius " << radius);
        if (radius < 1) {
            CHECK(outward > 1);
        } else if (radius > 1) {
            CHECK(outward < -1);
        } else {
            CHECK_THAT(outward, WithinAbs(0, 1e-9));
        }
    }
}

TEST_CASE("the flow pulses four times in a turn, by its share of the mean", "[parts][pump]") {
    PumpOnBench pump({{"pulsationShare", 0.3}});
    const Unknown cosine = pump.bench.own("cosine of the pulse");
    const Unknown sine = pump.bench.own("sine of the pulse");
    pump.run(260, 40e3);
    CHECK_THAT(pump.f(sine), WithinRel(4.0 * 260, 1e-9)); // as d(sin 4φ)/dt at φ = 0
    const double mean = pump.bench.probe(probe::kFlow);
    pump.bench.x(cosine) = 0;
    pump.bench.x(sine) = 1;
    CHECK_THAT(pump.f(cosine), WithinRel(-4.0 * 260, 1e-9));
    CHECK_THAT(pump.bench.probe(probe::kFlow), WithinRel(1.3 * mean, 0.01));
}

TEST_CASE("a pump tells rules what load it is", "[parts][pump]") {
    Part part = newPart(*findPartKind("pump"), "M1", {});
    part.values["inrushCurrent_A"] = 20;
    const Features features = kindOf(part).features(part);
    REQUIRE(features.loads.size() == 1);
    CHECK(features.loads[0].sort == LoadSort::Motor);
    CHECK(features.loads[0].running_A == 5.5);
    CHECK(features.loads[0].inrush_A == 20);
}

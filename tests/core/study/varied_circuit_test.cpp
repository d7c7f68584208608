#include "core/parts/part_kind.h"
#include "core/study/varied_circuit.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"

#include <cmath>

using namespace pumpwright;
using Catch::WithinAbs;

namespace {

constexpr int kCars = 20000;

Circuit resistor(Tolerance tolerance) {
    Circuit circuit = CircuitBuilder().part("resistor", "R1", {{"resistance_ohm", 100}}).build();
    circuit.parts.at(PartId{"R1"}).tolerances["resistance_ohm"] = tolerance;
    return circuit;
}

double resistance(const Circuit& circuit) {
    return circuit.parts.at(PartId{"R1"}).values.at("resistance_ohm");
}

struct Statistics {
    double mean = 0;
    double deviation = 0;
    double least = 1e300;
    double most = 0;
};

Statistics statisticsOf(const Circuit& circuit) {
    Statistics statistics;
    double squares = 0;
    for (std::uint64_t car = 0; car < kCars; ++car) {
        const double value = resistance(variedCircuit(circuit, 7, car));
        statistics.mean += value / kCars;
        squares += value * value / kCars;
        statistics.least = std::min(statistics.least, value);
        statistics.most = std::max(statistics.most, value);
    }
    statistics.deviation = std::sqrt(squares - statistics.mean * statistics.mean);
    return statistics;
}

/// Four standard errors of the mean: one run of 16,000 is further off.
double meanError(double deviation) {
    return 4 * deviation / std::sqrt(kCars);
}

} // namespace

TEST_CASE("a uniform tolerance lies even between its ends", "[study][varied-circuit]") {
    const Statistics found = statisticsOf(resistor({ToleranceSort::Uniform, 0.1}));
    const double deviation = 10 / std::sqrt(3.0); // closed form, half-width over the root of 3
    CHECK_THAT(found.mean, WithinAbs(100, meanError(deviation)));
    CHECK_THAT(found.deviation, WithinAbs(deviation, 0.03 * deviation));
    CHECK(found.least >= 90);
    CHECK(found.most <= 110);
}

TEST_CASE("a normal tolerance has half of it as standard deviation", "[study][varied-circuit]") {
    const Statistics found = statisticsOf(resistor({ToleranceSort::Normal, 0.1}));
    CHECK_THAT(found.mean, WithinAbs(100, meanError(5)));
    CHECK_THAT(found.deviation, WithinAbs(5, 0.15));
}

TEST_CASE("a tolerance at its limits has either end and nothing between", "[study][varied-circuit]") {
    const Circuit circuit = resistor({ToleranceSort::Limits, 0.1});
    int high = 0;
    for (std::uint64_t car = 0; car < kCars; ++car) {
        const double value = resistance(variedCircuit(circuit, 7, car));
        CHECK(std::min(std::abs(value - 90), std::abs(value - 110)) < 1e-9);
        high += value > 100 ? 1 : 0;
    }
    CHECK_THAT(high, WithinAbs(kCars / 2.0, 4 * std::sqrt(kCars) / 2));
}

TEST_CASE("a draw depends on seed, car, part and parameter alone", "[study][varied-circuit]") {
    const Circuit alone = resistor({ToleranceSort::Uniform, 0.1});
    Circuit among = alone;
    among.parts[PartId{"A9"}] = newPart(*findPartKind("booster"), "A9", {});
    CHECK(resistance(variedCircuit(alone, 7, 3)) == resistance(variedCircuit(among, 7, 3)));
    CHECK(resistance(variedCircuit(alone, 7, 3)) != resistance(variedCircuit(alone, 7, 4)));
    CHECK(resistance(variedCircuit(alone, 7, 3)) != resistance(variedCircuit(alone, 8, 3)));
}

TEST_CASE("a draw stays within the range of its parameter", "[study][varied-circuit]") {
    Circuit circuit = CircuitBuilder().part("booster", "A1", {{"efficiency", 1}}).build(); // 1 is the most
    circuit.parts.at(PartId{"A1"}).tolerances["efficiency"] = {ToleranceSort::Limits, 0.5};
    for (std::uint64_t car = 0; car < 20; ++car) {
        const Circuit varied = variedCircuit(circuit, 1, car);
        CHECK(varied.parts.at(PartId{"A1"}).values.at("efficiency") <= 1);
    }
}

TEST_CASE("a value without a tolerance stays as it is", "[study][varied-circuit]") {
    CHECK(variedCircuit(resistor({ToleranceSort::Uniform, 0}), 1, 1) ==
          resistor({ToleranceSort::Uniform, 0}));
}

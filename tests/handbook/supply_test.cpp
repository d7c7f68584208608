#include "core/parts/open_circuit_voltage.h"
#include "tests/support/catch.h"

using namespace pumpwright;
using Catch::WithinAbs;

TEST_CASE("open-circuit voltage of a rested 12 V lead-acid battery", "[handbook][supply]") {
    // Table of the encyclopedia article on lead-acid batteries, 25 °C: 12.65, 12.45, 12.24, 12.06, 11.89 V.
    // Other lists differ by 0.1 V.
    CHECK_THAT(openCircuitVoltage_V(1.00).value, WithinAbs(12.65, 1e-9));
    CHECK_THAT(openCircuitVoltage_V(0.75).value, WithinAbs(12.45, 1e-9));
    CHECK_THAT(openCircuitVoltage_V(0.50).value, WithinAbs(12.24, 1e-9));
    CHECK_THAT(openCircuitVoltage_V(0.25).value, WithinAbs(12.06, 1e-9));
    CHECK_THAT(openCircuitVoltage_V(0.00).value, WithinAbs(11.89, 1e-9));
    // Half charged by another list: 12.2 V.
    CHECK_THAT(openCircuitVoltage_V(0.50).value, WithinAbs(12.2, 0.1));
}

TEST_CASE("open-circuit voltage rises with the charge everywhere, and an overdrawn battery dies away",
          "[handbook][supply]") {
    double last_V = -1;
    for (double share = -2; share < 1.2; share += 0.003) {
        const SmoothValue now = openCircuitVoltage_V(share);
        CHECK(now.value > last_V);
        CHECK(now.slope > 0);
        last_V = now.value;
    }
    CHECK(openCircuitVoltage_V(-1).value < 0.01);
    CHECK(openCircuitVoltage_V(-1).value > 0);
}

#include "core/checks/coil_release.h"
#include "tests/support/catch.h"

using namespace pumpwright;

namespace {

/// 90 Ω, 0.7 H, drops out at 1.6 V.
Coil coil() {
    Coil coil;
    coil.resistance_ohm = 90;
    coil.inductance_H = 0.7;
    coil.dropOut_A = 1.6 / 90;
    return coil;
}

} // namespace

TEST_CASE("a relay of 90 ohm and 0.7 H lets go after the times of the closed form",
          "[checks][coil-release]") {
    // Worked out by hand from the formula for 12 V: ideal diode 15.67 ms, 0.7 V diode 13.29 ms, diode and
    // zener of 24.7 V together 2.59 ms.
    CHECK(releaseTime_s(coil(), 12, 0) == Approx(15.67e-3).epsilon(0.01));
    CHECK(releaseTime_s(coil(), 12, 0.7) == Approx(13.29e-3).epsilon(0.01));
    CHECK(releaseTime_s(coil(), 12, 24.7) == Approx(2.59e-3).epsilon(0.01));
}

TEST_CASE("a relay of 55 ohm lets go in the order of a published table", "[checks][coil-release]") {
    // Coil-suppression application note 13C3311, 13.5 V, 55 Ω, value from memory: diode and 24 V zener 1.9
    // ms, diode alone 9.8 ms, nothing 1.5 ms. What the two add to nothing is in the ratio of 0.4 to 8.3.
    Coil relay = coil();
    relay.resistance_ohm = 55;
    relay.dropOut_A = 1.6 / 55;
    const double zener_s = releaseTime_s(relay, 13.5, 24.8);
    const double diode_s = releaseTime_s(relay, 13.5, 0.8);
    CHECK(diode_s > 4 * zener_s);
}

TEST_CASE("a coil that its supply does not hold is released at once", "[checks][coil-release]") {
    CHECK(releaseTime_s(coil(), 1.5, 0.7) == 0);
}

#include "core/checks/hold_up.h"
#include "tests/support/catch.h"

using namespace pumpwright;

TEST_CASE("capacitors hold a relay of 90 ohm from 12 to 1.6 V", "[checks][hold-up]") {
    // R·C·ln(V0/V), physics: 1000 µF 181 ms, 2200 µF 399 ms, 4700 µF 852 ms; 27,600 µF for five seconds.
    CHECK(holdUp_s(1000e-6, 90, 12, 1.6) == Approx(0.181).epsilon(0.005));
    CHECK(holdUp_s(2200e-6, 90, 12, 1.6) == Approx(0.399).epsilon(0.005));
    CHECK(holdUp_s(4700e-6, 90, 12, 1.6) == Approx(0.852).epsilon(0.005));
    CHECK(holdUp_s(27'600e-6, 90, 12, 1.6) == Approx(5).epsilon(0.01));
}

TEST_CASE("capacitors hold an input of 10 mA from 12 to 3 V", "[checks][hold-up]") {
    // C·(V0 − V)/I, physics: 1000 µF 0.90 s, 2000 µF 1.80 s.
    CHECK(constantHoldUp_s(1000e-6, 10e-3, 12, 3) == Approx(0.90));
    CHECK(constantHoldUp_s(2000e-6, 10e-3, 12, 3) == Approx(1.80));
}

TEST_CASE("what was not reached is not held", "[checks][hold-up]") {
    CHECK(holdUp_s(1e-3, 90, 1, 1.6) == 0);
    CHECK(constantHoldUp_s(1e-3, 10e-3, 2, 3) == 0);
}

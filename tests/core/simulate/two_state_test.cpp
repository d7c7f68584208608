#include "tests/support/catch.h"
#include "tests/support/two_states.h"

#include <algorithm>
#include <cmath>

using namespace pumpwright;
using namespace pumpwright::test;
using Catch::WithinAbs;

TEST_CASE("the two-state model switches five times, the last a third of a microsecond before its end",
          "[simulate][radau]") {
    const TwoStates::Run run = TwoStates::wide().run(1e-10, false);
    REQUIRE(run.finished);
    const std::vector<double> exact_s = TwoStates::wideSwitches_s();
    REQUIRE(run.switches_s.size() == exact_s.size());
    for (std::size_t i = 0; i < exact_s.size(); ++i) {
        CHECK_THAT(run.switches_s[i], WithinAbs(exact_s[i], 1e-9));
    }
    CHECK_THAT(run.y1, WithinAbs(TwoStates::wide().end, 1e-4)); // still falling at 2.7e6 a second
}

TEST_CASE("with a narrow differential the two-state model switches 62 times", "[simulate][radau]") {
    const TwoStates::Run run = TwoStates::narrow().run(1e-9, false);
    REQUIRE(run.finished);
    REQUIRE(run.switches_s.size() == 62);
    CHECK_THAT(run.switches_s[0], WithinAbs(TwoStates::kNarrowFirst_s, 3e-9));
    CHECK_THAT(run.switches_s[1], WithinAbs(TwoStates::kNarrowSecond_s, 3e-9));
    CHECK_THAT(run.switches_s[61], WithinAbs(TwoStates::kNarrowLast_s, 1e-7));
    CHECK_THAT(run.y1, WithinAbs(TwoStates::narrow().end, 1e-6));
}

TEST_CASE("a step that is made anew to end on its switch finds the switch to order five",
          "[simulate][radau]") {
    const auto worst_s = [](bool repeated) {
        const TwoStates::Run run = TwoStates::wide().run(1e-9, repeated);
        const std::vector<double> exact_s = TwoStates::wideSwitches_s();
        REQUIRE(run.switches_s.size() == exact_s.size());
        double worst = 0;
        for (std::size_t i = 0; i < exact_s.size(); ++i) {
            worst = std::max(worst, std::abs(run.switches_s[i] - exact_s[i]));
        }
        return worst;
    };
    CHECK(worst_s(true) < 1e-9);
    CHECK(worst_s(true) <= worst_s(false));
}

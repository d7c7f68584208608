#pragma once

#include "core/sheet/test_runs.h"

#include <optional>

namespace pumpwright {

/// What the tests should give, in SI units; nothing where the simulation did not come to it.
struct TestReadings {
    std::optional<double> start_A;       ///< the pump's highest current after the switch-on
    std::optional<double> running_A;     ///< in the last second of the first run
    std::optional<double> pumpDown_s;    ///< from the start to where the sensor opens, or to 9/10 of the end
    std::optional<double> stopVacuum_Pa; ///< in the booster, when the pump stops
    std::optional<double> runOn_s;       ///< from the sensor's opening to the pump's stop
    std::optional<double> afterRest_Pa;  ///< after five minutes
    std::optional<int> pressesToStart; ///< the press at which the pump starts; nothing: not within those made
    int assistedPresses = 0;           ///< with the pump unplugged, at 9/10 or more of the assist asked for
    std::optional<double> deceleration_mps2; ///< at the first press
    double loaded_s = 0;                     ///< an instant of the first run at which the pump runs steadily
};

TestReadings testReadings(const Circuit& circuit, const Workings& workings, const TestRuns& runs);

/// Who decides about whom, the tests simulated, and what is read in them.
struct StandingTests {
    Workings workings;
    TestRuns runs;
    TestReadings readings;
};

StandingTests standingTestsOf(const Survey& survey);

} // namespace pumpwright

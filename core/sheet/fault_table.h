#pragma once

#include "core/sheet/test_readings.h"
#include "core/sheet/wiring_sheet.h"

namespace pumpwright {

/// For the roadside: what the driver notices, worst first; what to measure, beginning at the supply; what a
/// sound circuit reads there in the standing tests; and which of the study's single breakdowns make it read
/// otherwise. Breakdowns that nobody notices are left out.
SheetTable faultTable(const Survey& survey, const StandingTests& tests, const BreakdownStudy& study);

/// "M1 does not run, P1 lights, the pedal gets hard"; empty where there is nothing to notice.
std::string symptomText(const Circuit& circuit, const BreakdownOutcome& outcome);

} // namespace pumpwright

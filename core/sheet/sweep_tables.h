#pragma once

#include "core/sheet/speech.h"
#include "core/sheet/wiring_sheet.h"
#include "core/study/sweep.h"

namespace pumpwright {

/// The result along the axis, or over both, and where it turns good. `goal` as it was given to runSweep().
std::vector<SheetTable> sweepTables(const SweepStudy& study, const Measure& measure,
                                    std::optional<double> goal, const Speech& speech = inEnglish);

/// "Good from 3.2 s up, not yet at 3.19 s."
Text thresholdText(const SweepStudy& study, const SweepThreshold& threshold);

} // namespace pumpwright

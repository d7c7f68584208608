#pragma once

#include "core/sheet/speech.h"
#include "core/sheet/wiring_sheet.h"
#include "core/study/breakdowns.h"

namespace pumpwright {

/// A row for each failure, in the order of the study: what fails, what comes of it, what the driver notices,
/// and what else happens.
SheetTable breakdownTable(const Circuit& circuit, const BreakdownStudy& study,
                          const Speech& speech = inEnglish);

/// "K1: contact stays open", or both of a pair.
std::string failuresText(const BreakdownOutcome& outcome);

} // namespace pumpwright

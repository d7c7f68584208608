#pragma once

#include "core/sheet/speech.h"
#include "core/sheet/wiring_sheet.h"
#include "core/study/spread.h"

namespace pumpwright {

/// How many cars chatter or lack assist, how the worst presses of the cars lie, and which tolerances matter.
std::vector<SheetTable> spreadTables(const SpreadSummary& summary, const Speech& speech = inEnglish);

} // namespace pumpwright

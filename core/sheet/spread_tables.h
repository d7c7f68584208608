#pragma once

#include "core/sheet/wiring_sheet.h"
#include "core/study/spread.h"

namespace pumpwright {

/// How many cars chatter or lack assist, and how the worst presses of the cars lie.
std::vector<SheetTable> spreadTables(const SpreadSummary& summary);

} // namespace pumpwright

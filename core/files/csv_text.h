#pragma once

#include "core/sheet/wiring_sheet.h"

#include <string>
#include <vector>

namespace pumpwright {

/// Head line and rows after RFC 4180, with "\n" at the end of each line. A text that a spreadsheet
/// would take for a formula gets an apostrophe before it; numbers stay as they are.
std::string csvTable(const SheetTable& table);
std::string csvLine(const std::vector<std::string>& cells);

} // namespace pumpwright

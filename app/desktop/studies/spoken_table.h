#pragma once

#include "core/sheet/wiring_sheet.h"

namespace pumpwright {

/// A sentence of such a table in the user's language; may be asked for on any thread.
std::string inUsersLanguage(const Text& sentence);

/// A table of the studies in the user's language: heads, and cells that core's words fill. Names that
/// somebody gave stay as they are.
SheetTable spokenTable(SheetTable table);

} // namespace pumpwright

#pragma once

#include "core/sheet/bill.h"
#include "core/units/result.h"

namespace pumpwright {

/// Titles of the entries of the program's catalogue and of the user's.
[[nodiscard]] Result<CatalogueTitles> catalogueTitles();

} // namespace pumpwright

#pragma once

#include "core/sheet/bill.h"
#include "core/units/result.h"

namespace pumpwright {

/// Titles and prices of the program's catalogue and of the user's.
[[nodiscard]] Result<PriceList> priceList();

} // namespace pumpwright

#pragma once

#include "app/console/outcome.h"

namespace pumpwright {

/// Whether Qt has a display, or was told to do without.
bool hasDisplay();

/// What to do instead of opening the window where there is none.
Outcome withoutDisplay();

} // namespace pumpwright

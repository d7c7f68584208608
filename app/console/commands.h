#pragma once

#include "app/console/outcome.h"
#include "app/console/request.h"

namespace pumpwright {

// One function for each command, in the file of the same name.

Outcome checkCommand(const Request& request);
Outcome driveCommand(const Request& request);
Outcome sheetCommand(const Request& request);
Outcome wiresCommand(const Request& request);
Outcome partsCommand(const Request& request);

/// Any of them; not the window, which prints nothing.
Outcome runCommand(const Request& request);

} // namespace pumpwright

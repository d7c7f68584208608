#pragma once

#include "app/console/outcome.h"
#include "app/console/request.h"

namespace pumpwright {

// The commands that draw, and so need Qt. They are linked into a program of their own: starting Qt takes
// longer than most of the other commands.

Outcome sheetCommand(const Request& request);
Outcome circuitDrawingCommand(const Request& request);
Outcome driveChartCommand(const Request& request);

/// Any of them; not the window, which prints nothing.
Outcome runDrawingCommand(const Request& request);

} // namespace pumpwright

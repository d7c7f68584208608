#pragma once

#include "app/console/outcome.h"
#include "app/console/request.h"

namespace pumpwright {

/// Whether the request needs the program that draws: the window, the wiring sheet, pictures.
bool draws(const Request& request);

/// Goes on as the program that draws, with the same command line. Returns only if that can't be started.
Outcome becomeDrawingProgram(char** argv);

} // namespace pumpwright

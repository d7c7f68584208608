#pragma once

#include "app/console/outcome.h"

namespace pumpwright {

/// Prints to the standard streams; returns the exit status.
int print(const Outcome& outcome);

/// Runs a main; what it throws is told on the standard error, with an exit status of its own.
int guarded(int (*main)(int, char**), int argc, char** argv);

} // namespace pumpwright

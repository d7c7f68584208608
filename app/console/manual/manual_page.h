#pragma once

#include <string>

namespace pumpwright {

/// The manual page in the man macros of roff.
std::string manualPage();

/// Completion of commands, options and circuit files for bash.
std::string bashCompletion();

} // namespace pumpwright

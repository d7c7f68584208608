#pragma once

#include "app/console/outcome.h"
#include "core/units/result.h"

namespace pumpwright {

/// "pumpwright: what and what to do [code]", then where: file, line, place in it.
std::string errorText(const Error& error);

/// A command that ends because a file can't be read or written.
Outcome unreadable(const Error& error);

} // namespace pumpwright

#pragma once

#include "app/console/outcome.h"
#include "app/console/request.h"

#include <tl/expected.hpp>

#include <string>
#include <vector>

namespace pumpwright {

/// Reads the arguments, without the program's name. Help, version and complaints come back as an outcome.
tl::expected<Request, Outcome> parseCommandLine(const std::vector<std::string>& arguments);

} // namespace pumpwright

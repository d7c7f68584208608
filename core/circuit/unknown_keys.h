#pragma once

#include <map>
#include <string>

namespace pumpwright {

/// Keys of a file that this version does not know, with their JSON text, kept and written back.
using UnknownKeys = std::map<std::string, std::string>;

} // namespace pumpwright

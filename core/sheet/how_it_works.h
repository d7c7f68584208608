#pragma once

#include "core/sheet/workings.h"

#include <string>
#include <vector>

namespace pumpwright {

/// How the circuit works, in five sentences: what feeds the pump, what switches it, what it is switched by,
/// where the vacuum goes, and what warns the driver. What is missing is said to be missing.
std::vector<std::string> howItWorks(const Survey& survey, const Workings& workings);

} // namespace pumpwright

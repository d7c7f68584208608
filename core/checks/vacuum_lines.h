#pragma once

#include "core/checks/survey.h"

#include <map>
#include <set>

namespace pumpwright {

/// Ports that hoses and open parts (tees, reservoirs) join, so that they have about one pressure: numbers by
/// port. A check valve parts two lines.
std::map<End, std::size_t> vacuumLines(const Survey& survey);

/// Ports of one sort that parts have.
std::vector<End> pumpInlets(const Survey& survey);
std::vector<End> boosterPorts(const Survey& survey);
std::vector<End> sensingPorts(const Survey& survey);

} // namespace pumpwright

#pragma once

#include "core/checks/finding.h"
#include "core/checks/survey.h"

namespace pumpwright {

/// Fits a fuse of this rating, and lays the wires that only it protects in a gauge for it.
Remedy fuseWithWires(const Survey& survey, const Branch& fuse, double rating_A);

} // namespace pumpwright

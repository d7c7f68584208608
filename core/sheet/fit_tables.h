#pragma once

#include "core/sheet/wiring_sheet.h"
#include "core/study/fit.h"

#include <vector>

namespace pumpwright {

/// Values before and after with their standard errors, and how well each trace of the log is met.
std::vector<SheetTable> fitTables(const FitResult& result);

/// What the log does not tell, in plain words: values that it cannot tell apart, that it does not depend on,
/// or that ended at their limit.
std::vector<Text> fitWarnings(const FitResult& result);

} // namespace pumpwright

#pragma once

#include "core/sheet/test_readings.h"
#include "core/sheet/wiring_sheet.h"

namespace pumpwright {

/// The steps by which a new circuit is put to work, with what should be read at each, a cell to write in what
/// was read, and what to suspect where the two differ.
struct Commissioning {
    std::vector<SheetTable> stages; ///< in the order in which they are done; the steps are counted through
    std::vector<std::string> stopConditions;
};

/// Expected readings are those of a simulation of the tests; tolerances are common practice, no published
/// source.
Commissioning commissioningOf(const Survey& survey, const StandingTests& tests);

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"
#include "core/units/result.h"

#include <QString>

namespace pumpwright {

/// The schematic alone, black on white, as SVG, PNG or PDF, whichever the end of the path says. Refuses other
/// ends.
[[nodiscard]] Result<void> writeCircuitDrawing(const QString& path, const Circuit& circuit);

} // namespace pumpwright

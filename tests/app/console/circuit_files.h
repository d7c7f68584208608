#pragma once

#include "tests/app/console/program_run.h"
#include "tests/app/sheet/pump_circuit.h"

namespace pumpwright {

/// The folder of the files below, and of what a test adds.
inline const CircuitFolder& folder() {
    static const CircuitFolder one;
    return one;
}

/// The relay's coil has no suppression, which a rule reports.
inline QString pumpFile() {
    static const QString path = folder().with(QStringLiteral("pump.pumpwright"), pumpCircuit());
    return path;
}

/// Nothing in it, so nothing to find and no car to drive.
inline QString emptyFile() {
    static const QString path = folder().with(QStringLiteral("empty.pumpwright"), Circuit{});
    return path;
}

} // namespace pumpwright

#include "app/console/drawing/drawing_commands.h"
#include "app/console/drawing/offscreen.h"
#include "app/console/error_text.h"
#include "app/desktop/sheet/circuit_export.h"
#include "core/files/circuit_file.h"

#include <fmt/format.h>

namespace pumpwright {

Outcome circuitDrawingCommand(const Request& request) {
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    const Offscreen offscreen;
    const Result<void> written = writeCircuitDrawing(QString::fromStdString(request.out), *circuit);
    return written ? Outcome{ExitStatus::Fine, fmt::format("Schematic written to {}\n", request.out), ""}
                   : unreadable(written.error());
}

} // namespace pumpwright

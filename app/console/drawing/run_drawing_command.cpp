#include "app/console/drawing/drawing_commands.h"

#include <cassert>

namespace pumpwright {

Outcome runDrawingCommand(const Request& request) {
    if (request.command == Command::Sheet) {
        return sheetCommand(request);
    }
    if (request.command == Command::Schematic) {
        return circuitDrawingCommand(request);
    }
    assert(request.command == Command::Drive);
    return driveChartCommand(request);
}

} // namespace pumpwright

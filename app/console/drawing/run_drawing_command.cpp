#include "app/console/drawing/drawing_commands.h"

#include <cassert>

namespace pumpwright {

namespace {

Outcome outcomeOf(const Request& request) {
    if (request.command == Command::Sheet) {
        return sheetCommand(request);
    }
    if (request.command == Command::Schematic) {
        return circuitDrawingCommand(request);
    }
    assert(request.command == Command::Drive);
    return driveChartCommand(request);
}

} // namespace

Outcome runDrawingCommand(const Request& request) {
    return fitForTerminal(outcomeOf(request), request.form);
}

} // namespace pumpwright

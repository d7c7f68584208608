#include "app/console/commands.h"

#include <cassert>

namespace pumpwright {

namespace {

Outcome outcomeOf(const Request& request) {
    switch (request.command) {
    case Command::Check:
        return checkCommand(request);
    case Command::Drive:
        return driveCommand(request);
    case Command::Wires:
        return wiresCommand(request);
    case Command::Parts:
        return partsCommand(request);
    case Command::Trials:
        return trialsCommand(request);
    case Command::Breakdowns:
        return breakdownsCommand(request);
    case Command::Spread:
        return spreadCommand(request);
    case Command::Sweep:
        return sweepCommand(request);
    case Command::Fit:
        return fitCommand(request);
    case Command::Plan:
        return planCommand(request);
    case Command::Nets:
        return netsCommand(request);
    case Command::Compare:
        return compareCommand(request);
    case Command::Sheet:
    case Command::Schematic:
    case Command::Window:
        break;
    }
    assert(false && "these draw");
    return {};
}

} // namespace

Outcome runCommand(const Request& request) {
    return fitForTerminal(outcomeOf(request), request.form);
}

} // namespace pumpwright

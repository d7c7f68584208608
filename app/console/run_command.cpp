#include "app/console/commands.h"

#include <cassert>

namespace pumpwright {

Outcome runCommand(const Request& request) {
    switch (request.command) {
    case Command::Check:
        return checkCommand(request);
    case Command::Drive:
        return driveCommand(request);
    case Command::Sheet:
        return sheetCommand(request);
    case Command::Wires:
        return wiresCommand(request);
    case Command::Parts:
        return partsCommand(request);
    case Command::Window:
        break;
    }
    assert(false && "the window is opened by main");
    return {};
}

} // namespace pumpwright

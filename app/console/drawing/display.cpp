#include "app/console/drawing/display.h"

#include <QtGlobal>

namespace pumpwright {

bool hasDisplay() {
    return qEnvironmentVariableIsSet("DISPLAY") || qEnvironmentVariableIsSet("WAYLAND_DISPLAY") ||
           qEnvironmentVariableIsSet("QT_QPA_PLATFORM");
}

Outcome withoutDisplay() {
    return {ExitStatus::BadUse, "",
            "pumpwright: there is no display for the window. Without one, use \"pumpwright check FILE\", "
            "\"drive\", \"sheet\", \"wires\" or \"parts\".\n"};
}

} // namespace pumpwright

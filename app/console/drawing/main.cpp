// The program behind `pumpwright` for all that draws; `pumpwright` starts it with its own command line.
#include "app/console/command_line.h"
#include "app/console/drawing/display.h"
#include "app/console/drawing/drawing_commands.h"
#include "app/console/program.h"
#include "app/desktop/run_window.h"

namespace {

int run(int argc, char** argv) {
    const auto request = pumpwright::parseCommandLine({argv + 1, argv + argc});
    if (!request) {
        return pumpwright::print(request.error());
    }
    if (request->command != pumpwright::Command::Window) {
        return pumpwright::print(pumpwright::runDrawingCommand(*request));
    }
    if (!pumpwright::hasDisplay()) {
        return pumpwright::print(pumpwright::withoutDisplay());
    }
    return pumpwright::runWindow(argc, argv, QString::fromStdString(request->file));
}

} // namespace

int main(int argc, char** argv) {
    return pumpwright::guarded(run, argc, argv);
}

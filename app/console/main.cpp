#include "app/console/command_line.h"
#include "app/console/commands.h"
#include "app/console/drawing_program.h"
#include "app/console/program.h"

namespace {

int run(int argc, char** argv) {
    const auto request = pumpwright::parseCommandLine({argv + 1, argv + argc});
    if (!request) {
        return pumpwright::print(request.error());
    }
    if (pumpwright::draws(*request)) {
        return pumpwright::print(pumpwright::becomeDrawingProgram(argv));
    }
    return pumpwright::print(pumpwright::runCommand(*request));
}

} // namespace

int main(int argc, char** argv) {
    return pumpwright::guarded(run, argc, argv);
}

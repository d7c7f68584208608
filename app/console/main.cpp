#include "app/console/command_line.h"
#include "app/console/commands.h"
#include "app/console/display.h"
#include "app/desktop/run_window.h"

#include <cstdio>
#include <exception>

namespace {

int print(const pumpwright::Outcome& outcome) {
    std::fwrite(outcome.out.data(), 1, outcome.out.size(), stdout);
    std::fwrite(outcome.err.data(), 1, outcome.err.size(), stderr);
    return static_cast<int>(outcome.status);
}

int run(int argc, char** argv) {
    const auto request = pumpwright::parseCommandLine({argv + 1, argv + argc});
    if (!request) {
        return print(request.error());
    }
    if (request->command != pumpwright::Command::Window) {
        return print(pumpwright::runCommand(*request));
    }
    if (!pumpwright::hasDisplay()) {
        return print(pumpwright::withoutDisplay());
    }
    return pumpwright::runWindow(argc, argv, QString::fromStdString(request->file));
}

} // namespace

int main(int argc, char** argv) {
    constexpr int kFailedItself = 4;
    try {
        return run(argc, argv);
    } catch (const std::exception& exception) {
        std::fputs("pumpwright: the program failed and is sorry: ", stderr);
        std::fputs(exception.what(), stderr);
        std::fputs("\n", stderr);
        return kFailedItself;
    }
}

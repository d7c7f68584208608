#include "app/console/drawing_program.h"

#include <fmt/format.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <system_error>

namespace pumpwright {
namespace {

constexpr char kName[] = "pumpwright-drawing";

/// Beside the running program in a build folder, else where it is installed.
std::filesystem::path drawingProgram() {
    std::error_code error;
    const auto folder = std::filesystem::read_symlink("/proc/self/exe", error).parent_path();
    const auto beside = folder / kName;
    return std::filesystem::exists(beside, error) ? beside : folder / PUMPWRIGHT_LIBEXEC_FROM_BIN / kName;
}

} // namespace

bool draws(const Request& request) {
    return request.command == Command::Window || request.command == Command::Sheet ||
           request.command == Command::Schematic || !request.chart.empty();
}

Outcome becomeDrawingProgram(char** argv) {
    const std::filesystem::path program = drawingProgram();
    execv(program.c_str(), argv);
    return {ExitStatus::Unreadable, "",
            fmt::format("pumpwright: {} can't be started: {}. Install Pumpwright again.\n", program.string(),
                        std::strerror(errno))};
}

} // namespace pumpwright

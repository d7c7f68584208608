#include "app/console/commands.h"
#include "app/console/drawing/drawing_commands.h"
#include "app/console/drawing/offscreen.h"
#include "app/desktop/sheet/drive_figure.h"

namespace pumpwright {
namespace {

Result<void> writeChart(const std::string& path, const Circuit& circuit, const DriveResult& drive) {
    const Offscreen offscreen;
    return writeDriveChart(QString::fromStdString(path), drive, circuit);
}

} // namespace

Outcome driveChartCommand(const Request& request) {
    return driveCommand(request, writeChart);
}

} // namespace pumpwright

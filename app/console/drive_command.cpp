#include "app/console/commands.h"
#include "app/console/drive_texts.h"
#include "app/console/error_text.h"
#include "app/console/offscreen.h"
#include "app/desktop/sheet/drive_figure.h"
#include "core/files/circuit_file.h"
#include "core/simulate/drive.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

std::string driveOutput(const Request& request, const Circuit& circuit, const DriveResult& drive) {
    switch (request.form) {
    case OutputForm::Json:
        return driveJson(request.file, circuit, drive);
    case OutputForm::Csv:
        return samplesCsv(circuit, drive.recording, request.every_s);
    case OutputForm::People:
        break;
    }
    return driveText(circuit, drive);
}

Result<void> writeChart(const Request& request, const Circuit& circuit, const DriveResult& drive) {
    if (request.png.empty()) {
        return {};
    }
    const Offscreen offscreen;
    return writeDriveChartPng(QString::fromStdString(request.png), drive, circuit);
}

} // namespace

Outcome driveCommand(const Request& request) {
    constexpr double kMostRows = 2e6;
    const Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    if (request.form == OutputForm::Csv && circuit->plan.duration_s / request.every_s > kMostRows) {
        return {
            ExitStatus::BadUse, "",
            fmt::format("pumpwright: --every {:.6g} s makes more than {:.0f} rows. Write a longer time.\n",
                        request.every_s, kMostRows)};
    }
    const DriveResult drive = simulateDrive(*circuit);
    if (const Result<void> written = writeChart(request, *circuit, drive); !written) {
        return unreadable(written.error());
    }
    const bool finished = drive.status == DriveStatus::Finished;
    return {finished ? ExitStatus::Fine : ExitStatus::Findings, driveOutput(request, *circuit, drive),
            finished ? "" : fmt::format("pumpwright: the drive stopped: {}\n", drive.message)};
}

} // namespace pumpwright

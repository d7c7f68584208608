#include "app/console/commands.h"
#include "app/console/drive_texts.h"
#include "app/console/error_text.h"
#include "core/files/circuit_file.h"
#include "core/files/samples_csv.h"
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
    case OutputForm::Markdown: // check alone knows it
    case OutputForm::People:
        break;
    }
    return driveText(circuit, drive);
}

} // namespace

Outcome driveCommand(const Request& request, ChartWriter writeChart) {
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
    if (writeChart != nullptr) {
        if (const Result<void> written = writeChart(request.chart, *circuit, drive); !written) {
            return unreadable(written.error());
        }
    }
    const bool finished = drive.status == DriveStatus::Finished;
    return {finished ? ExitStatus::Fine : ExitStatus::Findings, driveOutput(request, *circuit, drive),
            finished ? "" : fmt::format("pumpwright: the drive stopped: {}\n", drive.message)};
}

} // namespace pumpwright

#include "app/console/checked_circuit.h"
#include "app/console/drawing/drawing_commands.h"
#include "app/console/drawing/offscreen.h"
#include "app/console/error_text.h"
#include "app/console/price_list.h"
#include "app/console/study_watch.h"
#include "app/desktop/sheet/sheet_paper.h"
#include "core/files/circuit_file.h"

#include <QDate>
#include <QFileInfo>

#include <fmt/format.h>

namespace pumpwright {
namespace {

/// The command line knows no other names.
SheetSize sizeNamed(const std::string& name) {
    return name == "A3" ? SheetSize::A3 : name == "Letter" ? SheetSize::Letter : SheetSize::A4;
}

} // namespace

Outcome sheetCommand(const Request& request) {
    Result<Circuit> circuit = readCircuit(request.file);
    if (!circuit) {
        return unreadable(circuit.error());
    }
    const Result<PriceList> prices = priceList();
    if (!prices) {
        return unreadable(prices.error());
    }
    CheckedCircuit checked = checkedCircuit(std::move(*circuit));
    const Offscreen offscreen;
    SheetPaper paper;
    BreakdownOptions options;
    StudyWatch watch;
    watch.watch(options);
    const BreakdownStudy study = request.faults ? runBreakdowns(checked.circuit, options) : BreakdownStudy{};
    if (!study.isComplete()) {
        return watch.outcome({}, request.form);
    }
    paper.content =
        withTests(wiringSheet(checked.circuit, checked.findings, circuitCheckSum(checked.circuit), *prices),
                  checked.circuit, study);
    paper.circuit = std::move(checked.circuit);
    paper.drive = checked.drive;
    paper.fileName = QFileInfo(QString::fromStdString(request.file)).fileName();
    paper.printedOn = QDate::currentDate().toString(Qt::ISODate);
    paper.size = sizeNamed(request.paper);
    if (const Result<void> written = writeSheetPdf(QString::fromStdString(request.out), paper); !written) {
        return unreadable(written.error());
    }
    const std::string complaint = driveComplaint(*checked.drive);
    return {ExitStatus::Fine, fmt::format("Wiring sheet written to {}\n", request.out),
            complaint.empty() ? "" : fmt::format("pumpwright: {}\n", complaint)};
}

} // namespace pumpwright

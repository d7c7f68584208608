#pragma once

#include "core/circuit/circuit.h"
#include "core/sheet/wiring_sheet.h"
#include "core/simulate/drive.h"
#include "core/units/result.h"

#include <QString>

#include <memory>

class QPrinter;

namespace pumpwright {

/// All that the printed wiring sheet shows.
struct SheetPaper {
    Circuit circuit;
    WiringSheet content;
    std::shared_ptr<const DriveResult> drive; ///< null: no drive chart
    QString fileName;
    QString printedOn; ///< ISO 8601 calendar date
};

/// Writes the sheet as A4 landscape PDF. Needs a QGuiApplication, but no display.
[[nodiscard]] Result<void> writeSheetPdf(const QString& path, const SheetPaper& paper);

/// Prints all pages, or the range that the printer was given. The printer's page size and margins are set
/// here.
[[nodiscard]] Result<void> printSheet(QPrinter& printer, const SheetPaper& paper);

/// A4 landscape without margins; the sheet draws its own frame.
void prepareSheetPrinter(QPrinter& printer);

} // namespace pumpwright

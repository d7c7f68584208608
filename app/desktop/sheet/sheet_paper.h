#pragma once

#include "app/desktop/sheet/sheet_style.h"
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
    SheetSize size = SheetSize::A4;
};

/// Writes the sheet as PDF on paper of its size. Needs a QGuiApplication, but no display.
[[nodiscard]] Result<void> writeSheetPdf(const QString& path, const SheetPaper& paper);

/// Prints all pages, or the range that the printer was given, laid out for the paper that is in it.
[[nodiscard]] Result<void> printSheet(QPrinter& printer, SheetPaper paper);

/// The given size, without margins; the sheet draws its own frame.
void prepareSheetPrinter(QPrinter& printer, SheetSize size);

} // namespace pumpwright

#include "app/desktop/sheet/sheet_pages.h"
#include "app/desktop/sheet/sheet_paper.h"
#include "app/desktop/sheet/sheet_style.h"

#include <QFileInfo>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QPrinter>
#include <QSaveFile>

namespace pumpwright {
namespace {

QPageSize::PageSizeId pageSizeId(SheetSize size) {
    switch (size) {
    case SheetSize::A3:
        return QPageSize::A3;
    case SheetSize::Letter:
        return QPageSize::Letter;
    case SheetSize::A4:
        break;
    }
    return QPageSize::A4;
}

/// The size that the printer was set to, perhaps in its own dialog; A4 where the sheet has no layout for it.
SheetSize sizeIn(const QPrinter& printer) {
    for (const SheetSize size : {SheetSize::A3, SheetSize::Letter}) {
        if (printer.pageLayout().pageSize().id() == pageSizeId(size)) {
            return size;
        }
    }
    return SheetSize::A4;
}

QPageLayout sheetLayout(SheetSize size) {
    return {QPageSize(pageSizeId(size)), QPageLayout::Landscape, QMarginsF(0, 0, 0, 0)};
}

tl::unexpected<Error> unwritable(const QString& path, const QString& reason) {
    return tl::unexpected(
        Error{ErrorCode::FileUnwritable,
              QStringLiteral("The wiring sheet can't be written: %1. Choose another folder or file name.")
                  .arg(reason)
                  .toStdString(),
              {path.toStdString(), 0, {}}});
}

void scaleToSheetUnits(QPainter& painter, const QPaintDevice& device) {
    painter.scale(device.logicalDpiX() / kUnitsPerInch, device.logicalDpiY() / kUnitsPerInch);
}

} // namespace

Result<void> writeSheetPdf(const QString& path, const SheetPaper& paper) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) {
        return unwritable(path, file.errorString());
    }
    const SheetPages pages(paper);
    {
        QPdfWriter writer(&file);
        writer.setPageLayout(sheetLayout(paper.size));
        writer.setResolution(600);
        writer.setTitle(QString::fromStdString(paper.content.title.title));
        writer.setCreator(QStringLiteral("Pumpwright"));
        QPainter painter(&writer);
        scaleToSheetUnits(painter, writer);
        for (int page = 0; page < pages.count(); ++page) {
            if (page > 0) {
                writer.newPage();
            }
            pages.paint(painter, page);
        }
    }
    if (!file.commit()) {
        return unwritable(path, file.errorString());
    }
    return {};
}

void prepareSheetPrinter(QPrinter& printer, SheetSize size) {
    printer.setFullPage(true);
    printer.setPageLayout(sheetLayout(size));
}

Result<void> printSheet(QPrinter& printer, SheetPaper paper) {
    paper.size = sizeIn(printer);
    prepareSheetPrinter(printer, paper.size);
    const SheetPages pages(paper);
    const int from = printer.fromPage() > 0 ? printer.fromPage() - 1 : 0;
    const int to = printer.toPage() > 0 ? std::min(printer.toPage(), pages.count()) : pages.count();
    QPainter painter;
    if (!painter.begin(&printer)) {
        return tl::unexpected(
            Error{ErrorCode::FileUnwritable,
                  "The printer took no pages. See whether it is switched on, or write a PDF.",
                  {printer.printerName().toStdString(), 0, {}}});
    }
    scaleToSheetUnits(painter, printer);
    for (int page = from; page < to; ++page) {
        if (page > from) {
            printer.newPage();
        }
        pages.paint(painter, page);
    }
    return {};
}

} // namespace pumpwright

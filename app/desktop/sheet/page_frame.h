#pragma once

#include "app/desktop/sheet/sheet_paper.h"

#include <QRectF>

class QPainter;

namespace pumpwright {

/// Which page of how many.
struct PageNumber {
    int page = 1;
    int of = 1;
};

/// The frame with margins and zone letters after ISO 5457 (value from memory of ISO 5457: 20 mm at the left
/// for filing, 10 mm elsewhere, zones of 50 mm counted from the centre).
void paintFrame(QPainter& painter);

/// Title block with the fields of ISO 7200, at the foot of the first page.
void paintTitleBlock(QPainter& painter, const SheetPaper& paper, PageNumber number);
/// One line with what identifies the sheet, at the foot of the other pages.
void paintTitleStrip(QPainter& painter, const SheetPaper& paper, PageNumber number);

/// Inside the frame and above the title block.
QRectF drawingSpace();
/// At the foot of the first page, beside the title block.
QRectF cautionSpace();
/// Inside the frame and above the title strip, for parts of a schematic.
QRectF partSpace();
/// The same with a margin.
QRectF tableSpace();

} // namespace pumpwright

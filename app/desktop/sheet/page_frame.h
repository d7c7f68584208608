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

/// What surrounds the contents of a page: margins, zones and marks after ISO 5457 (value from memory of ISO
/// 5457: 20 mm at the left for filing, 10 mm elsewhere, zones of 50 mm counted from the centre, on A4 only
/// above and to the right), and the fields of ISO 7200. Paper of US Letter size, which they don't know, is
/// treated as A4.
class PageFrame {
public:
    explicit PageFrame(SheetSize size);

    void paintFrame(QPainter& painter) const;
    /// At the foot of the first page.
    void paintTitleBlock(QPainter& painter, const SheetPaper& paper, PageNumber number) const;
    /// One line with what identifies the sheet, at the foot of the other pages.
    void paintTitleStrip(QPainter& painter, const SheetPaper& paper, PageNumber number) const;

    /// Inside the frame and above the title block.
    QRectF drawingSpace() const;
    /// At the foot of the first page, beside the title block.
    QRectF cautionSpace() const;
    /// Inside the frame and above the title strip, for parts of a schematic.
    QRectF partSpace() const;
    /// The same with a margin.
    QRectF tableSpace() const;

private:
    SheetSize m_size;
    QRectF m_frame;
};

} // namespace pumpwright

#pragma once

#include "app/desktop/sheet/page_flow.h"
#include "app/desktop/sheet/page_frame.h"
#include "app/desktop/sheet/schematic_parts.h"
#include "app/desktop/sheet/sheet_paper.h"

namespace pumpwright {

/// The finished pages of a wiring sheet, in sheet units of a tenth of a millimetre.
class SheetPages {
public:
    explicit SheetPages(const SheetPaper& paper);

    int count() const { return 1 + m_parts.count() + m_flow.pageCount(); }
    /// Paints page 0…count()-1 with the painter's unit set to a sheet unit.
    void paint(QPainter& painter, int page) const;

private:
    void paintFirstPage(QPainter& painter) const;

    SheetPaper m_paper;
    PageFrame m_frame;
    SchematicParts m_parts;
    PageFlow m_flow;
};

} // namespace pumpwright

#include "app/desktop/sheet/page_flow.h"

#include <algorithm>

namespace pumpwright {
namespace {

constexpr double kGap = 50;          ///< between blocks
constexpr double kShortShare = 0.25; ///< of a page: tables up to this stay in one piece

} // namespace

PageFlow::PageFlow(const QRectF& space) : m_space(space), m_y(space.bottom()) {}

void PageFlow::startPage() {
    m_pages.emplaceBack();
    m_y = m_space.top();
}

void PageFlow::place(double height, PaintBlock paint) {
    m_pages.back().append({{m_space.left(), m_y, m_space.width(), height}, std::move(paint)});
    m_y += height;
}

void PageFlow::addBlock(double height, PaintBlock paint) {
    if (m_pages.isEmpty() || roomLeft() < height) {
        startPage();
    }
    place(height, std::move(paint));
    m_y += kGap;
}

void PageFlow::placeHead(const std::shared_ptr<const TableLayout>& layout, bool continued) {
    place(layout->titleHeight(), [layout, continued](QPainter& painter, const QRectF& box) {
        layout->paintTitle(painter, box.topLeft(), continued);
    });
    place(layout->headHeight(),
          [layout](QPainter& painter, const QRectF& box) { layout->paintHead(painter, box.topLeft()); });
}

void PageFlow::placeRow(const std::shared_ptr<const TableLayout>& layout, qsizetype row) {
    const bool starts = layout->startsGroup(row);
    const bool onNewPage = roomLeft() < layout->rowHeight(row) + (starts ? layout->groupHeight(row) : 0);
    if (onNewPage) {
        startPage();
        placeHead(layout, true);
    }
    if (starts || (onNewPage && layout->isGrouped())) {
        place(layout->groupHeight(row), [layout, row](QPainter& painter, const QRectF& box) {
            layout->paintGroup(painter, box.topLeft(), row);
        });
    }
    place(layout->rowHeight(row), [layout, row](QPainter& painter, const QRectF& box) {
        layout->paintRow(painter, box.topLeft(), row);
    });
}

void PageFlow::addTable(const SheetTable& table) {
    const auto layout = std::make_shared<const TableLayout>(table, m_space.width());
    const double headHeight = layout->titleHeight() + layout->headHeight();
    const double firstRow = layout->rowCount() > 0
                                ? layout->rowHeight(0) + (layout->isGrouped() ? layout->groupHeight(0) : 0)
                                : 0;
    const bool isShort = headHeight + layout->rowsHeight() <= kShortShare * m_space.height();
    const double together = headHeight + (isShort ? std::max(layout->rowsHeight(), firstRow) : firstRow);
    if (m_pages.isEmpty() || roomLeft() < together) {
        startPage();
    }
    placeHead(layout, false);
    for (qsizetype row = 0; row < layout->rowCount(); ++row) {
        placeRow(layout, row);
    }
    m_y += kGap;
}

void PageFlow::paint(QPainter& painter, int page) const {
    for (const Placed& placed : m_pages[page]) {
        placed.paint(painter, placed.box);
    }
}

} // namespace pumpwright

#pragma once

#include "app/desktop/sheet/table_layout.h"

#include <QList>
#include <QRectF>

#include <functional>
#include <memory>

namespace pumpwright {

using PaintBlock = std::function<void(QPainter& painter, const QRectF& box)>;

/// Fills pages from top to bottom with blocks that are never cut.
class PageFlow {
public:
    explicit PageFlow(const QRectF& space);

    /// Title, head and rows; title and head again on each further page; the title never without a row; short
    /// tables in one piece.
    void addTable(const SheetTable& table);
    void addBlock(double height, PaintBlock paint);

    double width() const { return m_space.width(); }
    int pageCount() const { return static_cast<int>(m_pages.size()); }
    void paint(QPainter& painter, int page) const;

private:
    struct Placed {
        QRectF box;
        PaintBlock paint;
    };

    double roomLeft() const { return m_space.bottom() - m_y; }
    void startPage();
    void place(double height, PaintBlock paint);
    void placeHead(const std::shared_ptr<const TableLayout>& layout, bool continued);
    void placeRow(const std::shared_ptr<const TableLayout>& layout, qsizetype row);

    QRectF m_space;
    double m_y;
    QList<QList<Placed>> m_pages;
};

} // namespace pumpwright

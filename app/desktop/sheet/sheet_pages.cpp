#include "app/desktop/sheet/sheet_pages.h"

#include "app/desktop/sheet/caution_box.h"
#include "app/desktop/sheet/drive_figure.h"
#include "app/desktop/sheet/page_frame.h"
#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"

#include <QPainter>

namespace pumpwright {
namespace {

void addNote(PageFlow& flow, const QString& heading, const QString& text) {
    const double headHeight = textHeight(heading, sheetFont(SheetText::Heading), 1e6) + 12;
    const double height = headHeight + textHeight(text, sheetFont(SheetText::Body), tableSpace().width());
    flow.addBlock(height, [heading, text, headHeight](QPainter& painter, const QRectF& box) {
        painter.setPen(Qt::black);
        paintText(painter, box, heading, sheetFont(SheetText::Heading));
        paintText(painter, box.adjusted(0, headHeight, 0, 0), text, sheetFont(SheetText::Body));
    });
}

void addFindings(PageFlow& flow, const SheetPaper& paper) {
    if (paper.content.findings.rows.empty()) {
        addNote(flow, QStringLiteral("Findings"),
                QStringLiteral("No rule of this program found anything. That is no proof that the circuit is "
                               "safe."));
    } else {
        flow.addTable(paper.content.findings);
    }
}

void addFigure(PageFlow& flow, const SheetPaper& paper) {
    constexpr double kHeight = 1150;
    if (!paper.drive) {
        return;
    }
    const DriveFigure figure = driveFigure(paper.circuit, *paper.drive);
    flow.addBlock(kHeight,
                  [figure](QPainter& painter, const QRectF& box) { paintDriveFigure(painter, box, figure); });
}

QRectF overviewSpace() {
    constexpr double kMargin = 30;
    return drawingSpace().adjusted(kMargin, kMargin, -kMargin, -kMargin);
}

PageFlow flowOf(const SheetPaper& paper) {
    const WiringSheet& content = paper.content;
    PageFlow flow(tableSpace());
    for (const SheetTable* table :
         {&content.wires, &content.hoses, &content.fuses, &content.setPoints, &content.parts}) {
        if (!table->rows.empty()) {
            flow.addTable(*table);
        }
    }
    addFindings(flow, paper);
    addFigure(flow, paper);
    const std::vector<std::string> cautions = content.cautions;
    flow.addBlock(
        cautionBoxHeight(tableSpace().width(), cautions),
        [cautions](QPainter& painter, const QRectF& box) { paintCautionBox(painter, box, cautions); });
    return flow;
}

} // namespace

SheetPages::SheetPages(const SheetPaper& paper)
    : m_paper(paper), m_parts(paper.circuit, overviewSpace(), partSpace()), m_flow(flowOf(paper)) {}

void SheetPages::paintFirstPage(QPainter& painter) const {
    m_parts.paintOverview(painter, m_paper.circuit);
    paintCautionBox(painter, cautionSpace(), m_paper.content.cautions);
}

void SheetPages::paint(QPainter& painter, int page) const {
    const PageNumber number{page + 1, count()};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paintFrame(painter);
    if (page == 0) {
        paintFirstPage(painter);
        paintTitleBlock(painter, m_paper, number);
    } else {
        const int part = page - 1;
        if (part < m_parts.count()) {
            m_parts.paint(painter, m_paper.circuit, part);
        } else {
            m_flow.paint(painter, part - m_parts.count());
        }
        paintTitleStrip(painter, m_paper, number);
    }
    painter.restore();
}

} // namespace pumpwright

#include "app/desktop/sheet/sheet_pages.h"

#include "app/desktop/sheet/caution_box.h"
#include "app/desktop/sheet/drive_figure.h"
#include "app/desktop/sheet/page_frame.h"
#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"
#include "app/desktop/sheet/socket_figure.h"
#include "app/desktop/shown_text.h"

#include <QPainter>

namespace pumpwright {
namespace {

void addNote(PageFlow& flow, const QString& heading, const QString& text) {
    const double headHeight = textHeight(heading, sheetFont(SheetText::Heading), 1e6) + 12;
    const double height = headHeight + textHeight(text, sheetFont(SheetText::Body), flow.width());
    flow.addBlock(height, [heading, text, headHeight](QPainter& painter, const QRectF& box) {
        painter.setPen(Qt::black);
        paintText(painter, box, heading, sheetFont(SheetText::Heading));
        paintText(painter, box.adjusted(0, headHeight, 0, 0), text, sheetFont(SheetText::Body));
    });
}

/// Sentences under a heading, one line each, after a number or a dash.
void addList(PageFlow& flow, const QString& heading, const std::vector<std::string>& sentences,
             const QString& mark) {
    if (sentences.empty()) {
        return;
    }
    QStringList lines;
    for (std::size_t i = 0; i < sentences.size(); ++i) {
        lines.append((mark.contains(QLatin1Char('%')) ? mark.arg(i + 1) : mark) + shown(sentences[i]));
    }
    addNote(flow, heading, lines.join(QLatin1Char('\n')));
}

void addTables(PageFlow& flow, const std::vector<const SheetTable*>& tables) {
    for (const SheetTable* table : tables) {
        if (!table->rows.empty()) {
            flow.addTable(*table);
        }
    }
}

void addSockets(PageFlow& flow, const std::vector<SocketView>& sockets) {
    const int perRow = socketsPerRow(flow.width());
    for (std::size_t first = 0; first < sockets.size(); first += static_cast<std::size_t>(perRow)) {
        const std::size_t end = std::min(sockets.size(), first + static_cast<std::size_t>(perRow));
        const std::vector<SocketView> row(sockets.begin() + static_cast<std::ptrdiff_t>(first),
                                          sockets.begin() + static_cast<std::ptrdiff_t>(end));
        flow.addBlock(socketRowHeight(row, flow.width()),
                      [row](QPainter& painter, const QRectF& box) { paintSocketRow(painter, box, row); });
    }
}

void addTests(PageFlow& flow, const WiringSheet& content) {
    if (content.tests.empty()) {
        return;
    }
    addNote(flow, QStringLiteral("Commissioning"),
            QStringLiteral("In this order; go on only when every reading is right. Readings are those of the "
                           "simulation, with tolerances; write down what you measure."));
    addList(flow, QStringLiteral("Stop the tests at once if"), content.stopConditions, QStringLiteral("– "));
    for (const SheetTable& stage : content.tests) {
        flow.addTable(stage);
    }
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

/// Once more, where the work on the vehicle begins.
void addCautions(PageFlow& flow, const std::vector<std::string>& cautions) {
    flow.addBlock(cautionBoxHeight(flow.width(), cautions), [cautions](QPainter& painter, const QRectF& box) {
        paintCautionBox(painter, box, cautions);
    });
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

QRectF overviewSpace(const PageFrame& frame) {
    constexpr double kMargin = 30;
    return frame.drawingSpace().adjusted(kMargin, kMargin, -kMargin, -kMargin);
}

PageFlow flowOf(const SheetPaper& paper, const PageFrame& frame) {
    const WiringSheet& content = paper.content;
    PageFlow flow(frame.tableSpace());
    addList(flow, QStringLiteral("How it works"), content.howItWorks, QStringLiteral("%1. "));
    addTables(flow, {&content.wires, &content.hoses, &content.connections, &content.fuses});
    addSockets(flow, content.sockets);
    addTables(flow, {&content.setPoints, &content.parts});
    addFindings(flow, paper);
    addCautions(flow, content.cautions);
    addTests(flow, content);
    addTables(flow, {&content.faults});
    addFigure(flow, paper);
    return flow;
}

} // namespace

SheetPages::SheetPages(const SheetPaper& paper)
    : m_paper(paper), m_frame(paper.size),
      m_parts(paper.circuit, overviewSpace(m_frame), m_frame.partSpace()), m_flow(flowOf(paper, m_frame)) {}

void SheetPages::paintFirstPage(QPainter& painter) const {
    m_parts.paintOverview(painter, m_paper.circuit);
    paintCautionBox(painter, m_frame.cautionSpace(), m_paper.content.cautions);
}

void SheetPages::paint(QPainter& painter, int page) const {
    const PageNumber number{page + 1, count()};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    m_frame.paintFrame(painter);
    if (page == 0) {
        paintFirstPage(painter);
        m_frame.paintTitleBlock(painter, m_paper, number);
    } else {
        const int part = page - 1;
        if (part < m_parts.count()) {
            m_parts.paint(painter, m_paper.circuit, part);
        } else {
            m_flow.paint(painter, part - m_parts.count());
        }
        m_frame.paintTitleStrip(painter, m_paper, number);
    }
    painter.restore();
}

} // namespace pumpwright

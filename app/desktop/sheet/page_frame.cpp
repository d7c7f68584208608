#include "app/desktop/sheet/page_frame.h"

#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"
#include "app/desktop/shown_text.h"

#include <QPainter>

#include <array>

namespace pumpwright {
namespace {

constexpr double kFilingMargin = 200;
constexpr double kMargin = 100;
constexpr double kZoneBorder = 50;
constexpr double kZone = 500;
constexpr double kBlockWidth = 1800; // ISO 7200: 180 mm
constexpr double kBlockHeight = 420;
constexpr double kStripHeight = 90;
constexpr double kPadding = 15;
constexpr double kTableMargin = 60;

void paintCentringMarks(QPainter& painter, const QRectF& frame) {
    constexpr double kInside = 20;
    painter.setPen(sheetPen(SheetLine::Thick));
    const QPointF centre = frame.center();
    painter.drawLine(QPointF(centre.x(), frame.top() - kZoneBorder),
                     QPointF(centre.x(), frame.top() + kInside));
    painter.drawLine(QPointF(centre.x(), frame.bottom() + kZoneBorder), QPointF(centre.x(), frame.bottom()));
    painter.drawLine(QPointF(frame.left() - kZoneBorder, centre.y()),
                     QPointF(frame.left() + kInside, centre.y()));
    painter.drawLine(QPointF(frame.right() + kZoneBorder, centre.y()),
                     QPointF(frame.right() - kInside, centre.y()));
}

/// Edges of the zones along one side: whole zones from the centre outwards, the rest at both ends.
QList<double> zoneEdges(double from, double to) {
    const double centre = (from + to) / 2;
    const int half = static_cast<int>((to - from) / 2 / kZone);
    QList<double> edges{from};
    for (int zone = -half; zone <= half; ++zone) {
        const double edge = centre + zone * kZone;
        if (edge - edges.back() > kZone / 2 && to - edge > kZone / 2) {
            edges.append(edge);
        }
    }
    edges.append(to);
    return edges;
}

/// Above the frame, or below it.
void paintZoneNumbers(QPainter& painter, const QRectF& frame, double top) {
    const QList<double> edges = zoneEdges(frame.left(), frame.right());
    for (qsizetype i = 0; i + 1 < edges.size(); ++i) {
        const QRectF box(edges[i], top, edges[i + 1] - edges[i], kZoneBorder);
        paintLine(painter, box, QString::number(i + 1), sheetFont(SheetText::Label), Qt::AlignCenter);
        if (i > 0) {
            painter.drawLine(box.topLeft(), box.bottomLeft());
        }
    }
}

/// To the right of the frame, or to the left of it.
void paintZoneLetters(QPainter& painter, const QRectF& frame, double left) {
    const QList<double> edges = zoneEdges(frame.top(), frame.bottom());
    for (qsizetype i = 0; i + 1 < edges.size(); ++i) {
        const QRectF box(left, edges[i], kZoneBorder, edges[i + 1] - edges[i]);
        paintLine(painter, box, QString(QChar(static_cast<char16_t>(u'A' + i))), sheetFont(SheetText::Label),
                  Qt::AlignCenter);
        if (i > 0) {
            painter.drawLine(box.topLeft(), box.topRight());
        }
    }
}

struct Field {
    QString label;
    QString value;
    double width;
    SheetText text = SheetText::Value;
};

/// A row of fields: a small label over the value, divided by lines.
void paintFields(QPainter& painter, QPointF at, double height, const QList<Field>& fields) {
    for (const Field& field : fields) {
        const QRectF box(at.x(), at.y(), field.width, height);
        const QRectF inner = box.adjusted(kPadding, 6, -kPadding, -6);
        painter.setPen(sheetPen(SheetLine::Thin));
        painter.drawRect(box);
        paintLine(painter, inner, field.label, sheetFont(SheetText::Label), Qt::AlignLeft | Qt::AlignTop);
        paintLine(painter, inner, field.value, sheetFont(field.text), Qt::AlignLeft | Qt::AlignBottom);
        at.rx() += field.width;
    }
}

QString text(const std::string& utf8) {
    return shown(utf8);
}

QString pageText(PageNumber number) {
    return QStringLiteral("%1 of %2").arg(number.page).arg(number.of);
}

/// The day the drawing was issued, or the day of printing where nobody entered one.
QString issueDate(const SheetPaper& paper) {
    return paper.content.title.date.empty() ? paper.printedOn : text(paper.content.title.date);
}

} // namespace

PageFrame::PageFrame(SheetSize size)
    : m_size(size),
      m_frame(QRectF(QPointF(), sheetExtent(size)).adjusted(kFilingMargin, kMargin, -kMargin, -kMargin)) {}

void PageFrame::paintFrame(QPainter& painter) const {
    painter.setPen(sheetPen(SheetLine::Thin));
    paintZoneNumbers(painter, m_frame, m_frame.top() - kZoneBorder);
    paintZoneLetters(painter, m_frame, m_frame.right());
    const bool allSides = m_size == SheetSize::A3;
    if (allSides) {
        paintZoneNumbers(painter, m_frame, m_frame.bottom());
        paintZoneLetters(painter, m_frame, m_frame.left() - kZoneBorder);
    }
    const double other = allSides ? kZoneBorder : 0;
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(m_frame.adjusted(-other, -kZoneBorder, kZoneBorder, other));
    paintCentringMarks(painter, m_frame);
    painter.drawRect(m_frame);
}

void PageFrame::paintTitleBlock(QPainter& painter, const SheetPaper& paper, PageNumber number) const {
    const TitleBlock& title = paper.content.title;
    const QRectF block(m_frame.right() - kBlockWidth, m_frame.bottom() - kBlockHeight, kBlockWidth,
                       kBlockHeight);
    paintFields(painter, block.topLeft(), 95,
                {{QStringLiteral("Legal owner"), text(title.owner), 600},
                 {QStringLiteral("Vehicle"), text(title.vehicle), 800},
                 {QStringLiteral("Document type"), QStringLiteral("Wiring sheet"), 400}});
    paintFields(painter, block.topLeft() + QPointF(0, 95), 125,
                {{QStringLiteral("Title"), text(title.title), 1400, SheetText::Title},
                 {QStringLiteral("Identification number"), text(title.identification), 400}});
    paintFields(painter, block.topLeft() + QPointF(0, 220), 100,
                {{QStringLiteral("Creator"), text(title.creator), 600},
                 {QStringLiteral("Approved by"), text(title.approver), 600},
                 {QStringLiteral("Revision"), text(title.revision), 200},
                 {QStringLiteral("Date of issue"), issueDate(paper), 400}});
    paintFields(painter, block.topLeft() + QPointF(0, 320), 100,
                {{QStringLiteral("File"), paper.fileName, 900},
                 {QStringLiteral("Check sum"), text(paper.content.checkSum), 300},
                 {QStringLiteral("Printed"), paper.printedOn, 300},
                 {QStringLiteral("Sheet"), pageText(number), 300}});
    painter.setPen(sheetPen(SheetLine::Middle));
    painter.drawRect(block);
}

void PageFrame::paintTitleStrip(QPainter& painter, const SheetPaper& paper, PageNumber number) const {
    const TitleBlock& title = paper.content.title;
    // The title takes what the others leave.
    const double titleWidth = m_frame.width() - 1790;
    paintFields(painter, {m_frame.left(), m_frame.bottom() - kStripHeight}, kStripHeight,
                {{QStringLiteral("Title"), text(title.title), titleWidth},
                 {QStringLiteral("Identification number"), text(title.identification), 380},
                 {QStringLiteral("Revision"), text(title.revision), 160},
                 {QStringLiteral("Date of issue"), issueDate(paper), 250},
                 {QStringLiteral("File"), paper.fileName, 550},
                 {QStringLiteral("Check sum"), text(paper.content.checkSum), 250},
                 {QStringLiteral("Sheet"), pageText(number), 200}});
}

QRectF PageFrame::drawingSpace() const {
    return m_frame.adjusted(0, 0, 0, -kBlockHeight);
}

QRectF PageFrame::cautionSpace() const {
    return {m_frame.left(), m_frame.bottom() - kBlockHeight, m_frame.width() - kBlockWidth, kBlockHeight};
}

QRectF PageFrame::partSpace() const {
    return m_frame.adjusted(kPadding, kPadding, -kPadding, -kStripHeight);
}

QRectF PageFrame::tableSpace() const {
    return m_frame.adjusted(kTableMargin, kTableMargin, -kTableMargin, -kStripHeight - kTableMargin / 2);
}

} // namespace pumpwright

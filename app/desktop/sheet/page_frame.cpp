#include "app/desktop/sheet/page_frame.h"

#include "app/desktop/sheet/sheet_style.h"
#include "app/desktop/sheet/sheet_text.h"

#include <QPainter>

#include <array>

namespace pumpwright {
namespace {

constexpr QRectF kFrame{200, 100, 2670, 1900};
constexpr double kZoneBorder = 50;
constexpr double kZone = 500;
constexpr double kBlockWidth = 1800; // ISO 7200: 180 mm
constexpr double kBlockHeight = 420;
constexpr double kStripHeight = 90;
constexpr double kPadding = 15;
constexpr double kTableMargin = 60;

void paintCentringMarks(QPainter& painter) {
    constexpr double kInside = 20;
    painter.setPen(sheetPen(SheetLine::Thick));
    const QPointF centre = kFrame.center();
    painter.drawLine(QPointF(centre.x(), kFrame.top() - kZoneBorder),
                     QPointF(centre.x(), kFrame.top() + kInside));
    painter.drawLine(QPointF(centre.x(), kFrame.bottom() + kZoneBorder),
                     QPointF(centre.x(), kFrame.bottom()));
    painter.drawLine(QPointF(kFrame.left() - kZoneBorder, centre.y()),
                     QPointF(kFrame.left() + kInside, centre.y()));
    painter.drawLine(QPointF(kFrame.right() + kZoneBorder, centre.y()),
                     QPointF(kFrame.right() - kInside, centre.y()));
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

void paintZoneNumbers(QPainter& painter) {
    const QList<double> edges = zoneEdges(kFrame.left(), kFrame.right());
    for (qsizetype i = 0; i + 1 < edges.size(); ++i) {
        const QRectF box(edges[i], kFrame.top() - kZoneBorder, edges[i + 1] - edges[i], kZoneBorder);
        paintLine(painter, box, QString::number(i + 1), sheetFont(SheetText::Label), Qt::AlignCenter);
        if (i > 0) {
            painter.drawLine(box.topLeft(), box.bottomLeft());
        }
    }
}

void paintZoneLetters(QPainter& painter) {
    const QList<double> edges = zoneEdges(kFrame.top(), kFrame.bottom());
    for (qsizetype i = 0; i + 1 < edges.size(); ++i) {
        const QRectF box(kFrame.right(), edges[i], kZoneBorder, edges[i + 1] - edges[i]);
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
    return QString::fromStdString(utf8);
}

QString pageText(PageNumber number) {
    return QStringLiteral("%1 of %2").arg(number.page).arg(number.of);
}

/// The day the drawing was issued, or the day of printing where nobody entered one.
QString issueDate(const SheetPaper& paper) {
    return paper.content.title.date.empty() ? paper.printedOn : text(paper.content.title.date);
}

} // namespace

void paintFrame(QPainter& painter) {
    painter.setPen(sheetPen(SheetLine::Thin));
    paintZoneNumbers(painter);
    paintZoneLetters(painter);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(kFrame.adjusted(0, -kZoneBorder, kZoneBorder, 0));
    paintCentringMarks(painter);
    painter.drawRect(kFrame);
}

void paintTitleBlock(QPainter& painter, const SheetPaper& paper, PageNumber number) {
    const TitleBlock& title = paper.content.title;
    const QRectF block(kFrame.right() - kBlockWidth, kFrame.bottom() - kBlockHeight, kBlockWidth,
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

void paintTitleStrip(QPainter& painter, const SheetPaper& paper, PageNumber number) {
    const TitleBlock& title = paper.content.title;
    const QPointF at(kFrame.left(), kFrame.bottom() - kStripHeight);
    paintFields(painter, at, kStripHeight,
                {{QStringLiteral("Title"), text(title.title), 880},
                 {QStringLiteral("Identification number"), text(title.identification), 380},
                 {QStringLiteral("Revision"), text(title.revision), 160},
                 {QStringLiteral("Date of issue"), issueDate(paper), 250},
                 {QStringLiteral("File"), paper.fileName, 550},
                 {QStringLiteral("Check sum"), text(paper.content.checkSum), 250},
                 {QStringLiteral("Sheet"), pageText(number), 200}});
}

QRectF drawingSpace() {
    return kFrame.adjusted(0, 0, 0, -kBlockHeight);
}

QRectF cautionSpace() {
    return {kFrame.left(), kFrame.bottom() - kBlockHeight, kFrame.width() - kBlockWidth, kBlockHeight};
}

QRectF partSpace() {
    return kFrame.adjusted(kPadding, kPadding, -kPadding, -kStripHeight);
}

QRectF tableSpace() {
    return kFrame.adjusted(kTableMargin, kTableMargin, -kTableMargin, -kStripHeight - kTableMargin / 2);
}

} // namespace pumpwright

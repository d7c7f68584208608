#include "app/desktop/circuit/drawing.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kSmallestShownText = 4; ///< device pixels; smaller texts only cost time
constexpr double kHoseWidth = 7;
constexpr double kHoseBore = 3.6;
constexpr double kHaloWidth = 4;

QPen linePen(const QColor& colour, double width) {
    return {colour, width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin};
}

double scaleOf(const QPainter& painter) {
    const QTransform& world = painter.worldTransform();
    return std::hypot(world.m11(), world.m12());
}

QColor roleColour(const Palette& palette, TextRole role) {
    return role == TextRole::Number || role == TextRole::Note ? palette.quietText : palette.text;
}

QColor emphasisColour(const Palette& palette, Emphasis emphasis) {
    return emphasis == Emphasis::Selected ? palette.selection : palette.hover;
}

/// A text in a box of the paper's colour, so that it is read over lines.
QRectF drawBoxed(QPainter& painter, const Palette& palette, const QPointF& centre, const QString& text,
                 const QColor& colour) {
    const QFontMetricsF metrics(painter.font());
    const double width = metrics.horizontalAdvance(text) + 6;
    const QRectF box(centre.x() - width / 2, centre.y() - 7, width, 14);
    painter.setPen(QPen(colour, 1));
    painter.setBrush(palette.paper);
    painter.drawRoundedRect(box, 3, 3);
    painter.drawText(box, Qt::AlignCenter, text);
    return box;
}

/// Texts enlarged for paper may reach over a line that leaves them room on the screen.
void drawHalo(QPainter& painter, const PartText& text, const QColor& paper) {
    const QFontMetricsF metrics(painter.font());
    const double baseline = text.rect.center().y() + (metrics.ascent() - metrics.descent()) / 2;
    QPainterPath letters;
    letters.addText({text.rect.left(), baseline}, painter.font(), text.text);
    painter.strokePath(letters, QPen(paper, kHaloWidth, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
}

} // namespace

double coreWidth(const Wire& wire) {
    const double area_mm2 = wire.area_m2 * 1e6;
    return std::clamp(1.6 + 0.7 * std::sqrt(std::max(0.0, area_mm2)), 1.8, 5.0);
}

bool CircuitDrawing::isFar(const QPainter& painter) {
    return isFar(scaleOf(painter));
}

bool CircuitDrawing::isFar(double scale) {
    return kSmallTextHeight * scale < kSmallestShownText;
}

void CircuitDrawing::drawPart(QPainter& painter, const PartPicture& picture, const PartLive& live,
                              Emphasis emphasis) {
    drawWash(painter, picture, emphasis);
    drawSymbol(painter, picture, live);
    drawTexts(painter, picture, live);
}

void CircuitDrawing::drawWash(QPainter& painter, const PartPicture& picture, Emphasis emphasis) const {
    if (emphasis == Emphasis::None) {
        return;
    }
    QColor wash = emphasisColour(m_palette, emphasis);
    painter.setPen(QPen(wash, emphasis == Emphasis::Selected ? 2 : 1.2));
    wash.setAlphaF(0.10F);
    painter.setBrush(wash);
    painter.drawRoundedRect(picture.body.adjusted(-4, -4, 4, 4), 5, 5);
}

void CircuitDrawing::drawSymbol(QPainter& painter, const PartPicture& picture, const PartLive& live) {
    const SymbolState state{live.closed, live.energised, live.travel};
    if (m_textScale > 0 && !isFar(painter)) {
        // On the screen the symbols' own letters stay as they are drawn.
        const double least = m_textScale > 1 ? kSmallTextHeight * m_textScale : 0;
        m_symbols.draw(painter, picture.part, state, least);
    } else {
        m_symbols.drawLines(painter, picture.part, state);
    }
}

void CircuitDrawing::drawTexts(QPainter& painter, const PartPicture& picture, const PartLive& live) const {
    if (m_textScale <= 0 || isFar(painter)) {
        return;
    }
    for (const PartText& text : picture.texts) {
        painter.setFont(textFont(text.role, m_textScale));
        if (m_textScale > 1) {
            drawHalo(painter, text, m_palette.paper);
        }
        painter.setPen(roleColour(m_palette, text.role));
        painter.drawText(text.rect, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, text.text);
    }
    if (!live.reading.isEmpty()) {
        drawReading(painter, picture, live);
    }
}

void CircuitDrawing::drawReading(QPainter& painter, const PartPicture& picture, const PartLive& live) const {
    QFont font = textFont(TextRole::Value);
    font.setWeight(QFont::DemiBold);
    painter.setFont(font);
    drawBoxed(painter, m_palette, {picture.body.center().x(), picture.body.bottom() + 12}, live.reading,
              m_palette.liveText);
}

void CircuitDrawing::drawEnds(QPainter& painter, const PartPicture& picture,
                              const std::vector<int>& lines) const {
    painter.setPen(QPen(m_palette.ink, 1.4));
    for (std::size_t i = 0; i < picture.points.size(); ++i) {
        const QPointF at = scenePoint(picture.points[i].at) - picture.origin();
        if (lines[i] == 0) {
            painter.setBrush(m_palette.paper);
            painter.drawEllipse(at, 3.2, 3.2);
        } else if (lines[i] > 1 || picture.points[i].freeExit) {
            painter.setBrush(m_palette.ink);
            painter.drawEllipse(at, 3.4, 3.4);
        }
    }
}

std::vector<WireStroke> CircuitDrawing::wireStrokes(const Wire& wire, const WireLive& live,
                                                    Emphasis emphasis) const {
    using Layer = WireStroke::Layer;
    const double core = coreWidth(wire);
    std::vector<WireStroke> strokes;
    if (emphasis != Emphasis::None) {
        QColor halo = emphasisColour(m_palette, emphasis);
        halo.setAlphaF(emphasis == Emphasis::Selected ? 0.55F : 0.35F);
        strokes.push_back({Layer::Halo, halo, core + 11});
    }
    if (live.live) {
        strokes.push_back({Layer::Live, m_palette.live, core + 5});
    }
    if (!m_palette.colouredWires) {
        strokes.push_back({Layer::Core, m_palette.ink, std::max(1.4, core - 1.2)});
        return strokes;
    }
    const std::vector<QColor> colours = insulationColours(wire.colour);
    strokes.push_back({Layer::Edge, m_palette.wireEdge, core + 1.8});
    strokes.push_back({Layer::Core, colours.front(), core});
    if (colours.size() > 1) {
        strokes.push_back({Layer::Stripe, colours[1], core});
    }
    return strokes;
}

void CircuitDrawing::drawWire(QPainter& painter, const LinePicture& picture, const Wire& wire,
                              const WireLive& live, Emphasis emphasis) const {
    painter.setBrush(Qt::NoBrush);
    for (const WireStroke& stroke : wireStrokes(wire, live, emphasis)) {
        QPen pen = linePen(stroke.colour, stroke.width);
        if (stroke.layer == WireStroke::Layer::Stripe) {
            pen.setDashPattern({4 / stroke.width, 9 / stroke.width});
        }
        painter.setPen(pen);
        painter.drawPolyline(picture.path);
    }
}

void CircuitDrawing::drawHose(QPainter& painter, const LinePicture& picture, Emphasis emphasis) const {
    painter.setBrush(Qt::NoBrush);
    if (emphasis != Emphasis::None) {
        QColor halo = emphasisColour(m_palette, emphasis);
        halo.setAlphaF(emphasis == Emphasis::Selected ? 0.55F : 0.35F);
        painter.setPen(linePen(halo, kHoseWidth + 8));
        painter.drawPolyline(picture.path);
    }
    // Square ends reach under the stubs of the symbols, so that no seam shows.
    QPen wall = linePen(m_palette.ink, kHoseWidth);
    wall.setCapStyle(Qt::SquareCap);
    painter.setPen(wall);
    painter.drawPolyline(picture.path);
    QPen bore = linePen(m_palette.fill, kHoseBore);
    bore.setCapStyle(Qt::SquareCap);
    painter.setPen(bore);
    painter.drawPolyline(picture.path);
}

void CircuitDrawing::drawLabel(QPainter& painter, const LinePicture& picture) const {
    if (m_textScale <= 0 || picture.label.isEmpty() || isFar(painter)) {
        return;
    }
    painter.save();
    painter.translate(picture.labelAt);
    if (!picture.labelUpright) {
        painter.rotate(-90);
    }
    painter.setFont(textFont(TextRole::Number, m_textScale));
    painter.setPen(m_palette.quietText);
    painter.drawText(QRectF(-200, -10, 400, 20), Qt::AlignCenter, picture.label);
    painter.restore();
}

void CircuitDrawing::drawArrow(QPainter& painter, const QPointF& along) const {
    const QPointF across(-along.y(), along.x());
    painter.setPen(QPen(m_palette.paper, 1.2));
    painter.setBrush(m_palette.live);
    painter.drawPolygon(QPolygonF{{8 * along, -6 * along + 7 * across, -6 * along - 7 * across}});
}

void CircuitDrawing::drawCurrent(QPainter& painter, const LinePicture& picture, const WireLive& live,
                                 Emphasis emphasis) const {
    if (isFar(painter)) {
        return;
    }
    QFont font = textFont(TextRole::Number);
    font.setWeight(QFont::DemiBold);
    painter.setFont(font);
    const QString text = readingText(std::abs(live.current_A), QuantityKind::Current);
    const double width = QFontMetricsF(font).horizontalAdvance(text);
    const double reach = width / 2 + 14;
    const bool isAcross = std::abs(picture.direction.x()) > 0.5;
    if (emphasis == Emphasis::None && picture.stretch < (isAcross ? width : kStep)) {
        return;
    }
    drawBoxed(painter, m_palette, picture.middle + (isAcross ? QPointF(0, 14) : QPointF(reach, 0)), text,
              m_palette.liveText);
}

void CircuitDrawing::drawMark(QPainter& painter, const QPointF& at, SignalWord word) const {
    struct Mark {
        QColor fill;
        QChar letter;
    };
    const Mark mark = word == SignalWord::Danger    ? Mark{m_palette.danger, u'D'}
                      : word == SignalWord::Warning ? Mark{m_palette.warning, u'W'}
                                                    : Mark{m_palette.caution, u'C'};
    const QPolygonF triangle{{at + QPointF(0, -11), at + QPointF(11, 8), at + QPointF(-11, 8)}};
    painter.setPen(QPen(m_palette.ink, 1.4, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    painter.setBrush(mark.fill);
    painter.drawPolygon(triangle);
    if (isFar(painter)) {
        return;
    }
    QFont font = textFont(TextRole::Number);
    font.setWeight(QFont::Bold);
    painter.setFont(font);
    painter.setPen(word == SignalWord::Danger ? m_palette.dangerText : m_palette.markText);
    painter.drawText(QRectF(at - QPointF(10, 6), QSizeF(20, 14)), Qt::AlignCenter, mark.letter);
}

void CircuitDrawing::drawAll(QPainter& painter, const Circuit& circuit, const CircuitLayout& layout,
                             const QRectF& seen) {
    const LiveState rest = restState(circuit);
    for (const auto& [id, picture] : layout.hoses) {
        if (picture.extent.intersects(seen)) {
            drawHose(painter, picture, Emphasis::None);
        }
    }
    for (const auto& [id, picture] : layout.wires) {
        if (picture.extent.intersects(seen)) {
            drawWire(painter, picture, circuit.wires.at(id), {}, Emphasis::None);
        }
    }
    for (const auto& [id, picture] : layout.parts) {
        if (picture.extent.translated(picture.origin()).intersects(seen)) {
            painter.save();
            painter.translate(picture.origin());
            drawPart(painter, picture, rest.parts.at(id), Emphasis::None);
            drawEnds(painter, picture, layout.linesAt(picture));
            painter.restore();
        }
    }
    for (const auto& [id, picture] : layout.wires) {
        if (picture.extent.intersects(seen)) {
            drawLabel(painter, picture);
        }
    }
}

} // namespace pumpwright

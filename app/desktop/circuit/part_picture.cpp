#include "app/desktop/circuit/part_picture.h"

#include "app/desktop/circuit/symbols.h"
#include "app/desktop/shown_text.h"
#include "core/parts/part_kind.h"

#include <QFontMetricsF>

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kGap = 6; ///< between symbol and text
constexpr int kLongestNote = 28;

/// The edge of the symbol on which a terminal lies.
Side nearestSide(const QRectF& bounds, const QPointF& at) {
    const std::array distances{bounds.right() - at.x(), bounds.bottom() - at.y(), at.x() - bounds.left(),
                               at.y() - bounds.top()};
    // Left and right win over a tie in a corner: the pins of a connector leave sideways.
    const std::array order{Side::Left, Side::Right, Side::Up, Side::Down};
    return *std::min_element(order.begin(), order.end(), [&](Side a, Side b) {
        return distances[static_cast<std::size_t>(a)] < distances[static_cast<std::size_t>(b)] - 0.5;
    });
}

Side turnedSide(const Part& part, Side side) {
    const GridPoint step = turned(part, stepTowards(side));
    const std::array sides{Side::Right, Side::Down, Side::Left, Side::Up};
    return *std::find_if(sides.begin(), sides.end(), [&](Side one) { return stepTowards(one) == step; });
}

/// The symbol's bounds; where terminals lie beyond them (further ways of a connector) they grow, with some
/// room.
QRectF symbolBounds(const Part& part, const std::vector<TerminalSpec>& specs) {
    const Symbol* symbol = findSymbol(part.kind);
    QRectF bounds = symbol ? symbol->bounds : QRectF(-kStep, -kStep, 2 * kStep, 2 * kStep);
    const double room = bounds.height() / 2;
    for (const TerminalSpec& spec : specs) {
        const double y = spec.at.y * kStep;
        if (y > bounds.bottom() || y < bounds.top()) {
            bounds.setTop(std::min(bounds.top(), y - room));
            bounds.setBottom(std::max(bounds.bottom(), y + room));
        }
    }
    return bounds;
}

void addPoints(PartPicture& picture, const QRectF& bounds, const std::vector<TerminalSpec>& specs,
               bool arePorts) {
    for (const TerminalSpec& spec : specs) {
        ConnectionPoint point;
        point.name = spec.name;
        point.meaning = translatedWords(spec.meaning);
        point.at = picture.part.at + turned(picture.part, spec.at);
        point.exit = turnedSide(picture.part, nearestSide(bounds, scenePoint(spec.at)));
        point.freeExit = bounds.width() < kStep && bounds.height() < kStep;
        point.isPort = arePorts;
        picture.points.push_back(point);
    }
}

/// Sizes of texts, at the scale at which they are drawn.
struct TextSizes {
    double scale = 1;

    double width(const QString& text, TextRole role) const {
        return std::ceil(QFontMetricsF(textFont(role, scale)).horizontalAdvance(text)) + 1;
    }
    double height(TextRole role) const { return QFontMetricsF(textFont(role, scale)).height(); }
};

QString shortNote(const std::string& label) {
    const QString note = shown(label).simplified();
    return note.size() <= kLongestNote ? note : note.left(kLongestNote - 1) + QChar(0x2026);
}

/// The number of a terminal beside its lead, inside the symbol's bounds.
QRectF numberRect(const QPointF& at, Side exit, double width, double height) {
    switch (exit) {
    case Side::Up:
        return {at.x() + 3.5, at.y() + 1, width, height};
    case Side::Down:
        return {at.x() + 3.5, at.y() - height - 1, width, height};
    case Side::Left:
        return {at.x() + 1, at.y() - height - 1.5, width, height};
    case Side::Right:
        break;
    }
    return {at.x() - width - 0.5, at.y() - height - 1.5, width, height};
}

void addTerminalNumbers(PartPicture& picture, const TextSizes& sizes) {
    const Symbol* symbol = findSymbol(picture.part.kind);
    if (!symbol || !symbol->numbersTerminals) {
        return;
    }
    for (const ConnectionPoint& point : picture.points) {
        if (!point.isPort) {
            const QString text = point.name == "-" ? QString(QChar(0x2212)) : shown(point.name);
            const QPointF at = scenePoint(point.at) - picture.origin();
            picture.texts.push_back({numberRect(at, point.exit, sizes.width(text, TextRole::Number),
                                                sizes.height(TextRole::Number)),
                                     text, TextRole::Number});
        }
    }
}

struct Line {
    QString text;
    TextRole role;
};

std::vector<Line> labelLines(const Part& part) {
    std::vector<Line> lines;
    const Symbol* symbol = findSymbol(part.kind);
    if (part.kind != "splice" && symbol) {
        lines.push_back({shown(part.reference), TextRole::Reference});
    }
    lines.push_back({mainValueText(part), TextRole::Value});
    lines.push_back({shortNote(part.label), TextRole::Note});
    lines.erase(
        std::remove_if(lines.begin(), lines.end(), [](const Line& line) { return line.text.isEmpty(); }),
        lines.end());
    return lines;
}

/// Beside the symbol, lines below each other, in the middle of its height or at its top where a lead leaves.
void addLabelsBeside(PartPicture& picture, const std::vector<Line>& lines, const TextSizes& sizes,
                     bool toTheRight) {
    double height = 0;
    for (const Line& line : lines) {
        height += sizes.height(line.role);
    }
    double top = picture.body.center().y() - height / 2;
    for (const Line& line : lines) {
        const double width = sizes.width(line.text, line.role);
        const double left = toTheRight ? picture.body.right() + kGap : picture.body.left() - kGap - width;
        picture.texts.push_back({{left, top, width, sizes.height(line.role)}, line.text, line.role});
        top += sizes.height(line.role);
    }
}

/// Above or below: reference and value in one line, the note in the line further out.
void addLabelsOver(PartPicture& picture, const std::vector<Line>& lines, const TextSizes& sizes, bool above) {
    constexpr double kBetween = 5;
    double width = -kBetween;
    for (const Line& line : lines) {
        width += line.role == TextRole::Note ? 0 : sizes.width(line.text, line.role) + kBetween;
    }
    const double rowHeight = sizes.height(TextRole::Reference);
    const double row = above ? picture.body.top() - rowHeight - 2 : picture.body.bottom() + 2;
    const double outerRow = above ? row - sizes.height(TextRole::Note) : row + rowHeight;
    double left = picture.body.center().x() - width / 2;
    for (const Line& line : lines) {
        const double own = sizes.width(line.text, line.role);
        if (line.role == TextRole::Note) {
            picture.texts.push_back(
                {{picture.body.center().x() - own / 2, outerRow, own, sizes.height(line.role)},
                 line.text,
                 line.role});
        } else {
            picture.texts.push_back({{left, row, own, rowHeight}, line.text, line.role});
            left += own + kBetween;
        }
    }
}

/// Puts the middle of the texts where somebody moved it.
void moveLabels(PartPicture& picture) {
    const QRectF rect = labelRect(picture);
    if (!picture.part.labelFrom || rect.isEmpty()) {
        return;
    }
    const QPointF by = sceneDistance(*picture.part.labelFrom) - rect.center();
    for (PartText& text : picture.texts) {
        if (text.role != TextRole::Number) {
            text.rect.translate(by);
        }
    }
}

/// Beside the reference, on the side that no other text takes.
void placeMark(PartPicture& picture) {
    constexpr double kAside = 13;
    picture.markAt = picture.body.topLeft();
    const auto reference = std::find_if(picture.texts.begin(), picture.texts.end(), [](const PartText& text) {
        return text.role == TextRole::Reference;
    });
    if (reference != picture.texts.end()) {
        const QRectF& rect = reference->rect;
        const bool isRightOfBody = rect.left() >= picture.body.right();
        picture.markAt = {isRightOfBody ? rect.right() + kAside : rect.left() - kAside, rect.center().y()};
    }
}

bool hasPointOn(const PartPicture& picture, Side side) {
    return std::any_of(picture.points.begin(), picture.points.end(),
                       [&](const ConnectionPoint& point) { return !point.freeExit && point.exit == side; });
}

void addLabels(PartPicture& picture, const TextSizes& sizes) {
    const std::vector<Line> lines = labelLines(picture.part);
    if (!hasPointOn(picture, Side::Right)) {
        addLabelsBeside(picture, lines, sizes, true);
    } else if (!hasPointOn(picture, Side::Up)) {
        addLabelsOver(picture, lines, sizes, true);
    } else if (!hasPointOn(picture, Side::Down)) {
        addLabelsOver(picture, lines, sizes, false);
    } else {
        addLabelsBeside(picture, lines, sizes, hasPointOn(picture, Side::Left));
    }
}

} // namespace

const ConnectionPoint* PartPicture::point(const std::string& name) const {
    const auto found = std::find_if(points.begin(), points.end(),
                                    [&](const ConnectionPoint& one) { return one.name == name; });
    return found == points.end() ? nullptr : &*found;
}

PartPicture pictureOf(const Part& part, double textScale) {
    const TextSizes sizes{textScale};
    const PartKind& kind = kindOf(part);
    std::vector<TerminalSpec> all = kind.terminals(part);
    const std::vector<PortSpec> ports = kind.ports(part);
    all.insert(all.end(), ports.begin(), ports.end());
    const QRectF bounds = symbolBounds(part, all);

    PartPicture picture;
    picture.part = part;
    picture.body = turning(part).mapRect(bounds);
    addPoints(picture, bounds, kind.terminals(part), false);
    addPoints(picture, bounds, ports, true);
    addTerminalNumbers(picture, sizes);
    addLabels(picture, sizes);
    moveLabels(picture);
    placeMark(picture);
    picture.extent = picture.body;
    for (const PartText& text : picture.texts) {
        picture.extent |= text.rect;
    }
    return picture;
}

QRectF labelRect(const PartPicture& picture) {
    QRectF rect;
    for (const PartText& text : picture.texts) {
        if (text.role != TextRole::Number) {
            rect |= text.rect;
        }
    }
    return rect;
}

QFont textFont(TextRole role, double scale) {
    QFont font;
    font.setStyleHint(QFont::SansSerif);
    switch (role) {
    case TextRole::Reference:
        font.setPixelSize(kReferenceTextHeight);
        font.setWeight(QFont::DemiBold);
        break;
    case TextRole::Value:
    case TextRole::Note:
        font.setPixelSize(kValueTextHeight);
        break;
    case TextRole::Number:
        font.setPixelSize(kSmallTextHeight);
        break;
    }
    const auto least = static_cast<int>(std::ceil(kSmallTextHeight * scale));
    font.setPixelSize(std::max(font.pixelSize(), least));
    return font;
}

QString mainValueText(const Part& part) {
    const Symbol* symbol = findSymbol(part.kind);
    if (!symbol || symbol->valueKey.empty()) {
        return {};
    }
    const PartKind& kind = kindOf(part);
    const auto parameters = kind.parameters();
    const auto found = std::find_if(parameters.begin(), parameters.end(),
                                    [&](const ParameterSpec& one) { return one.key == symbol->valueKey; });
    if (found == parameters.end()) {
        return {};
    }
    return QString::fromStdString(formatQuantity(kind.value(part, found->key), found->kind));
}

} // namespace pumpwright

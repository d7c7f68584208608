#include "app/desktop/circuit/geometry.h"
#include "app/desktop/circuit/part_picture.h"
#include "app/desktop/circuit/symbols.h"
#include "core/parts/part_kind.h"
#include "tests/support/catch.h"

#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QSvgRenderer>

#include <algorithm>
#include <cmath>

using namespace pumpwright;

namespace {

/// The part with each option of each choice in turn, and as it comes.
std::vector<Part> variants(const PartKind& kind) {
    std::vector<Part> parts{newPart(kind, "X1", {})};
    for (const ChoiceSpec& choice : kind.choices()) {
        for (const ChoiceSpec::Option& option : choice.options) {
            Part part = newPart(kind, "X1", {});
            part.choices[std::string(choice.key)] = std::string(option.id);
            parts.push_back(part);
        }
    }
    return parts;
}

bool isOnEdge(const QRectF& bounds, const QPointF& at) {
    const bool across = at.x() >= bounds.left() - 0.01 && at.x() <= bounds.right() + 0.01;
    const bool along = at.y() >= bounds.top() - 0.01 && at.y() <= bounds.bottom() + 0.01;
    const double off = std::min({std::abs(at.x() - bounds.left()), std::abs(at.x() - bounds.right()),
                                 std::abs(at.y() - bounds.top()), std::abs(at.y() - bounds.bottom())});
    return across && along && off < 0.01;
}

QStringList idsIn(const Symbol& symbol) {
    QStringList ids;
    const QRegularExpression pattern(QStringLiteral(" id=\"([^\"]*)\""));
    auto matches = pattern.globalMatch(QString::fromUtf8(symbol.svg));
    while (matches.hasNext()) {
        ids << matches.next().captured(1);
    }
    return ids;
}

QImage drawn(const Part& part, SymbolState state) {
    QImage image(560, 560, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(280, 280);
    SymbolPainter symbols(printPalette());
    symbols.draw(painter, part, state);
    return image;
}

/// Whether anything dark is drawn near a place.
bool hasInkNear(const QImage& image, const QPointF& at) {
    for (int y = -3; y <= 3; ++y) {
        for (int x = -3; x <= 3; ++x) {
            const QPoint pixel = (at + QPointF(280 + x, 280 + y)).toPoint();
            if (image.rect().contains(pixel) && qGray(image.pixel(pixel)) < 100) {
                return true;
            }
        }
    }
    return false;
}

} // namespace

TEST_CASE("every part kind has a symbol that can be drawn", "[symbols]") {
    for (const PartKind* kind : partKinds()) {
        INFO(kind->id());
        const Symbol* symbol = findSymbol(std::string(kind->id()));
        REQUIRE(symbol != nullptr);
        CHECK(QSvgRenderer(symbol->svg).isValid());
        CHECK_FALSE(symbol->bounds.isEmpty());
    }
    CHECK(findSymbol("no such kind") == nullptr);
}

TEST_CASE("terminals and ports lie on the edge of the symbol, at the end of a lead", "[symbols]") {
    for (const PartKind* kind : partKinds()) {
        const Symbol* symbol = findSymbol(std::string(kind->id()));
        REQUIRE(symbol != nullptr);
        for (const Part& part : variants(*kind)) {
            auto points = kind->terminals(part);
            const auto ports = kind->ports(part);
            points.insert(points.end(), ports.begin(), ports.end());
            const QImage image = drawn(part, {});
            const bool isOnePoint = symbol->bounds.width() < kStep; // a splice is nothing but its terminal
            for (const TerminalSpec& point : points) {
                INFO(kind->id() << " " << point.name);
                const QPointF at = scenePoint(point.at);
                const bool inRow = kind->id() == "connector"; // further ways lie below the first
                CHECK((isOnePoint || inRow || isOnEdge(symbol->bounds, at)));
                CHECK(hasInkNear(image, at));
            }
        }
    }
}

TEST_CASE("symbols use the palette's stand-ins for colours and nothing else", "[symbols]") {
    const QRegularExpression pattern(QStringLiteral("(?:stroke|fill)=\"([^\"]*)\""));
    const QStringList allowed{QStringLiteral("none"), QStringLiteral("#000"), QStringLiteral("#fff"),
                              QStringLiteral("#d40"), QStringLiteral("#fc0")};
    for (const PartKind* kind : partKinds()) {
        auto matches = pattern.globalMatch(QString::fromUtf8(findSymbol(std::string(kind->id()))->svg));
        while (matches.hasNext()) {
            const QString colour = matches.next().captured(1);
            INFO(kind->id() << " " << colour.toStdString());
            CHECK(allowed.contains(colour));
        }
    }
}

TEST_CASE("symbol files name only choices and parameters that their kind has", "[symbols]") {
    for (const PartKind* kind : partKinds()) {
        const Symbol& symbol = *findSymbol(std::string(kind->id()));
        const auto parameters = kind->parameters();
        const bool known = std::any_of(parameters.begin(), parameters.end(),
                                       [&](const ParameterSpec& one) { return one.key == symbol.valueKey; });
        INFO(kind->id());
        CHECK((symbol.valueKey.empty() || known));
        const auto choices = kind->choices();
        for (const QString& id : idsIn(symbol)) {
            const std::string key = id.section(u'.', 0, 0).toStdString();
            INFO(id.toStdString());
            CHECK((!id.contains(u'.') || std::any_of(choices.begin(), choices.end(),
                                                     [&](const ChoiceSpec& one) { return one.key == key; })));
        }
    }
}

TEST_CASE("a contact that closes, a lamp that lights and a fuse that blows look different", "[symbols]") {
    for (const char* kind :
         {"relay", "timer", "hand-switch", "pedal-switch", "vacuum-switch", "solid-state-relay", "fuse"}) {
        INFO(kind);
        const Part part = newPart(*findPartKind(kind), "X1", {});
        CHECK(drawn(part, {false, false}) != drawn(part, {true, false}));
    }
    for (const char* kind : {"relay", "timer", "lamp", "buzzer", "pump", "solid-state-relay"}) {
        INFO(kind);
        const Part part = newPart(*findPartKind(kind), "X1", {});
        CHECK(drawn(part, {false, false}) != drawn(part, {false, true}));
    }
}

TEST_CASE("every choice that a relay offers shows in its symbol", "[symbols]") {
    const PartKind& relay = *findPartKind("relay");
    const QImage plain = drawn(newPart(relay, "K1", {}), {});
    for (const char* suppression : {"diode", "resistor", "zener"}) {
        Part part = newPart(relay, "K1", {});
        part.choices["suppression"] = suppression;
        CHECK(drawn(part, {}) != plain);
    }
    Part changeover = newPart(relay, "K1", {});
    changeover.choices["contacts"] = "changeover";
    CHECK(drawn(changeover, {}) != plain);
}

TEST_CASE("texts beside a symbol stay clear of it and of each other, in all eight positions", "[symbols]") {
    for (const PartKind* kind : partKinds()) {
        for (int position = 0; position < 8; ++position) {
            Part part = newPart(*kind, "X12", {3, 4});
            part.quarterTurns = position % 4;
            part.mirrored = position >= 4;
            part.label = "a name for it";
            const PartPicture picture = pictureOf(part);
            INFO(kind->id() << " position " << position);
            for (std::size_t i = 0; i < picture.texts.size(); ++i) {
                const PartText& text = picture.texts[i];
                CHECK((text.role == TextRole::Number || !text.rect.intersects(picture.body)));
                CHECK(picture.extent.contains(text.rect));
                for (std::size_t j = 0; j < i; ++j) {
                    const QRectF overlap = text.rect & picture.texts[j].rect;
                    CHECK((overlap.width() < 2 || overlap.height() < 2));
                }
            }
        }
    }
}

#include "app/desktop/circuit/symbols.h"

#include "app/desktop/circuit/geometry.h"
#include "core/parts/part_kind.h"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>
#include <QXmlStreamReader>
#include <QXmlStreamWriter>

#include <algorithm>
#include <array>
#include <cmath>

static void loadSymbolResources() {
    Q_INIT_RESOURCE(symbols);
}

namespace pumpwright {
namespace {

using namespace Qt::StringLiterals;

QRectF rectFromViewBox(const QString& text) {
    const QStringList numbers = text.split(u' ');
    if (numbers.size() != 4) {
        return {};
    }
    return {numbers[0].toDouble(), numbers[1].toDouble(), numbers[2].toDouble(), numbers[3].toDouble()};
}

Symbol parsedSymbol(const QByteArray& svg) {
    Symbol symbol;
    symbol.svg = svg;
    QXmlStreamReader reader(svg);
    if (reader.readNextStartElement()) {
        const QXmlStreamAttributes attributes = reader.attributes();
        symbol.bounds = rectFromViewBox(attributes.value("viewBox"_L1).toString());
        symbol.valueKey = attributes.value("data-value"_L1).toString().toStdString();
        symbol.numbersTerminals = attributes.value("data-terminals"_L1) != "none"_L1;
    }
    return symbol;
}

std::map<std::string, Symbol> loadedSymbols() {
    loadSymbolResources();
    std::map<std::string, Symbol> symbols;
    for (const PartKind* kind : partKinds()) {
        const std::string name(kind->id());
        QFile file(u":/symbols/%1.svg"_s.arg(QString::fromStdString(name)));
        if (file.open(QIODevice::ReadOnly)) {
            symbols.emplace(name, parsedSymbol(file.readAll()));
        }
    }
    return symbols;
}

/// Says which elements of a symbol file are to be seen.
class Visibility {
public:
    Visibility(const Part& part, SymbolState state) : m_part(part), m_state(state) {}

    bool shows(const QString& id) const {
        const QString name = id.section(u'-', 0, 0);
        if (name == "open"_L1) {
            return !m_state.closed;
        }
        if (name == "closed"_L1) {
            return m_state.closed;
        }
        if (name == "energised"_L1) {
            return m_state.energised;
        }
        return !id.contains(u'.') || isChosen(id.split(u'.'));
    }

private:
    bool isChosen(const QStringList& keyAndOptions) const {
        const PartKind& kind = kindOf(m_part);
        const std::string key = keyAndOptions.front().toStdString();
        const auto choices = kind.choices();
        const bool known = std::any_of(choices.begin(), choices.end(),
                                       [&](const ChoiceSpec& choice) { return choice.key == key; });
        return known &&
               keyAndOptions.mid(1).contains(QString::fromStdString(std::string(kind.choice(m_part, key))));
    }

    const Part& m_part;
    SymbolState m_state;
};

/// Copies a symbol file without what is not to be seen, in the palette's colours, and takes the letters out.
class SymbolFilter {
public:
    SymbolFilter(const Palette& palette, const Visibility& visibility, double travel)
        : m_palette(palette), m_visibility(visibility), m_travel(travel), m_writer(&m_svg) {}

    QByteArray filtered(const QByteArray& svg) {
        QXmlStreamReader reader(svg);
        while (!reader.atEnd()) {
            reader.readNext();
            if (reader.isStartElement()) {
                start(reader);
            } else if (reader.isEndElement()) {
                m_writer.writeEndElement();
            }
        }
        return m_svg;
    }

    std::vector<SymbolText> texts;

private:
    void start(QXmlStreamReader& reader) {
        const QXmlStreamAttributes attributes = reader.attributes();
        if (!m_visibility.shows(attributes.value("id"_L1).toString())) {
            reader.skipCurrentElement();
        } else if (reader.name() == "text"_L1) {
            const bool underlined = attributes.value("text-decoration"_L1) == "underline"_L1;
            const QPointF centre(attributes.value("x"_L1).toDouble(), attributes.value("y"_L1).toDouble());
            const double size = attributes.value("font-size"_L1).toDouble();
            texts.push_back({centre, size, reader.readElementText(), underlined});
        } else {
            write(reader.name().toString(), attributes);
        }
    }

    void write(const QString& name, const QXmlStreamAttributes& attributes) {
        m_writer.writeStartElement(name);
        if (name == "svg"_L1) {
            m_writer.writeAttribute(u"xmlns"_s, u"http://www.w3.org/2000/svg"_s);
        }
        if (const auto travelled = attributes.value("data-travelled"_L1);
            m_travel > 0 && !travelled.isEmpty()) {
            m_writer.writeAttribute(u"transform"_s, partOfTheWay(travelled.toString()));
        }
        for (const QXmlStreamAttribute& attribute : attributes) {
            m_writer.writeAttribute(attribute.name().toString(), coloured(attribute.value()));
        }
    }

    QString partOfTheWay(const QString& travelled) const {
        constexpr std::array kAtRest{1.0, 0.0, 0.0, 1.0, 0.0, 0.0};
        const QStringList all = travelled.split(u' ');
        QStringList now;
        for (qsizetype i = 0; i < std::min<qsizetype>(all.size(), kAtRest.size()); ++i) {
            const double rest = kAtRest[static_cast<std::size_t>(i)];
            now << QString::number(rest + m_travel * (all[i].toDouble() - rest));
        }
        return u"matrix(%1)"_s.arg(now.join(u' '));
    }

    QString coloured(QStringView value) const {
        if (value == "#000"_L1) {
            return m_palette.ink.name();
        }
        if (value == "#fff"_L1) {
            return m_palette.fill.name();
        }
        if (value == "#d40"_L1) {
            return m_palette.live.name();
        }
        return value == "#fc0"_L1 ? m_palette.glow.name() : value.toString();
    }

    const Palette& m_palette;
    const Visibility& m_visibility;
    double m_travel;
    QByteArray m_svg;
    QXmlStreamWriter m_writer;
};

std::string preparedKey(const Part& part, SymbolState state) {
    std::string key = part.kind + (state.closed ? "/closed" : "/open") + (state.energised ? "/on" : "/off");
    if (state.travel > 0) {
        key.append("/").append(std::to_string(std::lround(1000 * state.travel)));
    }
    for (const auto& [choice, option] : part.choices) {
        key.append("/").append(choice).append("=").append(option);
    }
    return key;
}

void drawLetter(QPainter& painter, const SymbolText& letter, const QPointF& centre, double least) {
    QFont font = painter.font();
    font.setPixelSize(static_cast<int>(std::ceil(std::max(letter.size, least))));
    font.setUnderline(letter.underlined);
    painter.setFont(font);
    const double reach = 2 * letter.size;
    painter.drawText(QRectF(centre.x() - reach, centre.y() - reach, 2 * reach, 2 * reach), Qt::AlignCenter,
                     letter.text);
}

} // namespace

const Symbol* findSymbol(const std::string& kind) {
    static const std::map<std::string, Symbol> kSymbols = loadedSymbols();
    const auto found = kSymbols.find(kind);
    return found == kSymbols.end() ? nullptr : &found->second;
}

SymbolPainter::SymbolPainter(const Palette& palette) : m_palette(palette) {}
SymbolPainter::~SymbolPainter() = default;
SymbolPainter::SymbolPainter(SymbolPainter&&) noexcept = default;
SymbolPainter& SymbolPainter::operator=(SymbolPainter&&) noexcept = default;

SymbolPainter::Prepared& SymbolPainter::prepared(const Part& part, SymbolState state) {
    const auto [entry, isNew] = m_prepared.try_emplace(preparedKey(part, state));
    if (isNew) {
        const Symbol* symbol = findSymbol(part.kind);
        const Visibility visibility(part, state);
        SymbolFilter filter(m_palette, visibility, state.travel);
        entry->second.lines =
            std::make_unique<QSvgRenderer>(filter.filtered(symbol ? symbol->svg : QByteArray()));
        entry->second.texts = std::move(filter.texts);
    }
    return entry->second;
}

void SymbolPainter::drawLines(QPainter& painter, const Part& part, SymbolState state) {
    const Prepared& drawing = prepared(part, state);
    painter.save();
    painter.setTransform(turning(part), true);
    drawing.lines->render(&painter, drawing.lines->viewBoxF());
    painter.restore();
}

void SymbolPainter::draw(QPainter& painter, const Part& part, SymbolState state, double leastLetter) {
    drawLines(painter, part, state);
    const QTransform transform = turning(part);
    painter.save();
    painter.setPen(m_palette.ink);
    for (const SymbolText& letter : prepared(part, state).texts) {
        drawLetter(painter, letter, transform.map(letter.centre), leastLetter);
    }
    painter.restore();
}

} // namespace pumpwright

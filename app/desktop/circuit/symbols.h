#pragma once

#include "app/desktop/circuit/palette.h"
#include "core/circuit/circuit.h"

#include <QRectF>
#include <QString>

#include <map>
#include <memory>
#include <string>
#include <vector>

class QPainter;
class QSvgRenderer;

namespace pumpwright {

/// A letter inside a symbol; it stays upright when the symbol is turned or mirrored.
struct SymbolText {
    QPointF centre;
    double size = 10;
    QString text;
    bool underlined = false;
};

/// What a symbol file says beside its lines. The file is resources/symbols/KIND.svg, in scene units round the
/// part's origin. Elements with these ids are drawn in some states only:
///   open, closed, energised (and "open-…" and so on): by the state of contact, coil or lamp;
///   "CHOICE.OPTION" or "CHOICE.OPTION.OPTION…": where the part's choice is one of the options.
/// An element's data-travelled="a b c d e f" is where it is when the part has moved all its way, as a
/// transform matrix.
struct Symbol {
    QByteArray svg;
    QRectF bounds;        ///< of the symbol at rest with its leads; terminals lie on its edge
    std::string valueKey; ///< parameter that is shown beside the symbol, or empty
    bool numbersTerminals = true;
};

struct SymbolState {
    bool closed = false;
    bool energised = false;
    double travel = 0; ///< 0 at rest to 1
    friend auto operator<=>(const SymbolState&, const SymbolState&) = default;
};

/// Null where there is no symbol of this name.
const Symbol* findSymbol(const std::string& kind);

/// Draws symbols in the colours of one palette. Keeps what it has prepared.
class SymbolPainter {
public:
    explicit SymbolPainter(const Palette& palette);
    ~SymbolPainter();
    SymbolPainter(SymbolPainter&&) noexcept;
    SymbolPainter& operator=(SymbolPainter&&) noexcept;

    /// Draws the symbol with its origin at the painter's; its letters no smaller than `leastLetter`.
    void draw(QPainter& painter, const Part& part, SymbolState state, double leastLetter = 0);
    /// The same without its letters.
    void drawLines(QPainter& painter, const Part& part, SymbolState state);

private:
    struct Prepared {
        std::unique_ptr<QSvgRenderer> lines;
        std::vector<SymbolText> texts;
    };
    Prepared& prepared(const Part& part, SymbolState state);

    Palette m_palette;
    std::map<std::string, Prepared> m_prepared;
};

} // namespace pumpwright

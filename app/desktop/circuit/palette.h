#pragma once

#include <QColor>

#include <string_view>
#include <vector>

class QPalette;

namespace pumpwright {

/// Every colour of the canvas. No other file of the canvas names a colour.
struct Palette {
    QColor paper;
    QColor grid;       ///< dots of the 5 mm grid
    QColor gridStrong; ///< every fifth dot
    QColor ink;        ///< symbols
    QColor fill;       ///< inside of symbols
    QColor text;
    QColor quietText; ///< terminal numbers, labels of wires
    QColor wireEdge;  ///< round every wire, so that each colour stands out from the paper
    QColor selection;
    QColor hover;
    QColor live;     ///< energised edge, current arrows, closed contacts
    QColor liveText; ///< readings of the live state
    QColor glow;     ///< inside of a lit lamp
    QColor danger;
    QColor warning;
    QColor caution;
    QColor markText; ///< the letter on a finding's mark
    QColor dangerText;
    bool colouredWires = true;
};

Palette lightPalette();
Palette darkPalette();
Palette printPalette();

/// Light or dark, judged by how light the window's ground is.
Palette canvasPalette(const QPalette& palette);

/// The colours of an insulation, main colour first, from letters after IEC 60757 ("RD", "RDBU", "GNYE").
/// Letters that are not in the standard give grey.
std::vector<QColor> insulationColours(std::string_view letters);

/// Contrast ratio 1…21 of two colours, from their relative luminances [WCAG 2.1, definition of contrast
/// ratio].
double contrastRatio(const QColor& a, const QColor& b);

} // namespace pumpwright

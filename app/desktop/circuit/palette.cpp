#include "app/desktop/circuit/palette.h"

#include <QPalette>

#include <algorithm>
#include <array>
#include <cmath>

namespace pumpwright {
namespace {

struct Insulation {
    std::string_view letters;
    QRgb colour;
};

// Letters after IEC 60757; the shades are ours.
constexpr std::array kInsulations{
    Insulation{"BK", 0xff26282b}, Insulation{"BN", 0xff8a5330}, Insulation{"RD", 0xffd92b2b},
    Insulation{"OG", 0xfff28a1e}, Insulation{"YE", 0xfff5d21f}, Insulation{"GN", 0xff2f9e44},
    Insulation{"BU", 0xff2f6fe0}, Insulation{"VT", 0xff8a4fd0}, Insulation{"GY", 0xff9097a0},
    Insulation{"WH", 0xfff7f7f5}, Insulation{"PK", 0xfff49ac1}, Insulation{"TQ", 0xff2bb5b5},
    Insulation{"GD", 0xffc9a227}, Insulation{"SR", 0xffc3c8ce},
};
constexpr QRgb kUnknownInsulation = 0xff9097a0;

double linear(double channel) {
    return channel <= 0.03928 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

} // namespace

Palette lightPalette() {
    Palette palette;
    palette.paper = QColor(0xfffdfdfbU);
    palette.grid = QColor(0xffd9dcdfU);
    palette.gridStrong = QColor(0xffb3b9bfU);
    palette.ink = QColor(0xff1d2329U);
    palette.fill = QColor(0xffffffffU);
    palette.text = QColor(0xff14181cU);
    palette.quietText = QColor(0xff515a63U);
    palette.wireEdge = QColor(0xff4b525aU);
    palette.selection = QColor(0xff0b62d6U);
    palette.hover = QColor(0xff6b8fc4U);
    palette.live = QColor(0xff0b9a78U);
    palette.liveText = QColor(0xff075f4bU);
    palette.glow = QColor(0xffffd43bU);
    palette.danger = QColor(0xffc1121fU);
    palette.warning = QColor(0xffd9650bU);
    palette.caution = QColor(0xfff2c200U);
    palette.markText = QColor(0xff000000U);
    palette.dangerText = QColor(0xffffffffU);
    return palette;
}

Palette darkPalette() {
    Palette palette;
    palette.paper = QColor(0xff1b1e22U);
    palette.grid = QColor(0xff363b41U);
    palette.gridStrong = QColor(0xff565d65U);
    palette.ink = QColor(0xffe6e9ecU);
    palette.fill = QColor(0xff23272cU);
    palette.text = QColor(0xfff4f6f8U);
    palette.quietText = QColor(0xffa9b1baU);
    palette.wireEdge = QColor(0xffaab1b9U);
    palette.selection = QColor(0xff6cb0ffU);
    palette.hover = QColor(0xff8fb4ddU);
    palette.live = QColor(0xff35e0b4U);
    palette.liveText = QColor(0xff7df0d2U);
    palette.glow = QColor(0xff8a6a00U);
    palette.danger = QColor(0xffff6b6bU);
    palette.warning = QColor(0xffff9f43U);
    palette.caution = QColor(0xffffd84dU);
    palette.markText = QColor(0xff000000U);
    palette.dangerText = QColor(0xff000000U);
    return palette;
}

Palette printPalette() {
    Palette palette;
    const QColor black(0xff000000U);
    const QColor white(0xffffffffU);
    const QColor grey(0xff333333U);
    palette.paper = palette.grid = palette.gridStrong = palette.fill = palette.glow = white;
    palette.ink = palette.text = palette.wireEdge = palette.selection = palette.hover = palette.live =
        palette.liveText = black;
    palette.quietText = grey;
    palette.danger = palette.warning = palette.caution = white;
    palette.markText = palette.dangerText = black;
    palette.colouredWires = false;
    return palette;
}

Palette canvasPalette(const QPalette& palette) {
    return palette.color(QPalette::Window).lightnessF() < 0.5F ? darkPalette() : lightPalette();
}

std::vector<QColor> insulationColours(std::string_view letters) {
    std::vector<QColor> colours;
    for (std::size_t at = 0; at < letters.size(); at += 2) {
        const std::string_view pair = letters.substr(at, 2);
        const auto* const found = std::find_if(kInsulations.begin(), kInsulations.end(),
                                               [&](const Insulation& one) { return one.letters == pair; });
        colours.emplace_back(found == kInsulations.end() ? kUnknownInsulation : found->colour);
    }
    if (colours.empty()) {
        colours.emplace_back(kUnknownInsulation);
    }
    return colours;
}

double contrastRatio(const QColor& a, const QColor& b) {
    const double ofA = luminance(a);
    const double ofB = luminance(b);
    return (std::max(ofA, ofB) + 0.05) / (std::min(ofA, ofB) + 0.05);
}

} // namespace pumpwright

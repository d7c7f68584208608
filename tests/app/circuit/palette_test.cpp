#include "app/desktop/circuit/palette.h"
#include "tests/support/catch.h"

#include <QPalette>

using namespace pumpwright;

namespace {

// WCAG 2.1, success criteria 1.4.3 (text) and 1.4.11 (graphics), level AA.
constexpr double kTextContrast = 4.5;
constexpr double kGraphicsContrast = 3.0;

void checkContrasts(const Palette& palette) {
    for (const QColor& text : {palette.text, palette.quietText, palette.liveText}) {
        CHECK(contrastRatio(text, palette.paper) >= kTextContrast);
    }
    for (const QColor& line :
         {palette.ink, palette.wireEdge, palette.selection, palette.hover, palette.live}) {
        CHECK(contrastRatio(line, palette.paper) >= kGraphicsContrast);
    }
    CHECK(contrastRatio(palette.ink, palette.fill) >= kGraphicsContrast);
    CHECK(contrastRatio(palette.ink, palette.glow) >= kGraphicsContrast);
    CHECK(contrastRatio(palette.dangerText, palette.danger) >= kTextContrast);
    CHECK(contrastRatio(palette.markText, palette.warning) >= kTextContrast);
    CHECK(contrastRatio(palette.markText, palette.caution) >= kTextContrast);
}

} // namespace

TEST_CASE("black on white has the contrast ratio 21", "[palette]") {
    // WCAG 2.1, definition of contrast ratio: values run from 1 to 21.
    CHECK(contrastRatio(Qt::black, Qt::white) == Approx(21.0));
    CHECK(contrastRatio(Qt::white, Qt::black) == Approx(21.0));
    CHECK(contrastRatio(Qt::red, Qt::red) == Approx(1.0));
}

TEST_CASE("texts and lines stand out from the paper, light and dark", "[palette]") {
    SECTION("light") {
        checkContrasts(lightPalette());
    }
    SECTION("dark") {
        checkContrasts(darkPalette());
    }
}

TEST_CASE("the ground of the window decides between light and dark", "[palette]") {
    CHECK(canvasPalette(QPalette(Qt::white)).paper == lightPalette().paper);
    CHECK(canvasPalette(QPalette(QColor(40, 42, 46))).paper == darkPalette().paper);
}

TEST_CASE("letters of insulation colours are read in pairs", "[palette]") {
    CHECK(insulationColours("RD").size() == 1);
    CHECK(insulationColours("GNYE").size() == 2);
    CHECK(insulationColours("RDBU") ==
          std::vector<QColor>{insulationColours("RD")[0], insulationColours("BU")[0]});
    CHECK(insulationColours("").size() == 1);
    CHECK(insulationColours("?!").size() == 1);
}

TEST_CASE("no two insulation colours look the same", "[palette]") {
    const std::vector<std::string> letters{"BK", "BN", "RD", "OG", "YE", "GN",
                                           "BU", "VT", "GY", "WH", "PK", "TQ"};
    for (const std::string& a : letters) {
        for (const std::string& b : letters) {
            INFO(a << " " << b);
            CHECK((a == b) == (insulationColours(a) == insulationColours(b)));
        }
    }
}

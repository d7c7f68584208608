#include "app/desktop/sheet/sheet_style.h"

#include <cmath>

namespace pumpwright {
namespace {

constexpr double kPointsPerInch = 72;

int pixelSize(double points) {
    return static_cast<int>(std::ceil(points * kUnitsPerInch / kPointsPerInch));
}

double pointSize(SheetText text) {
    switch (text) {
    case SheetText::Value:
        return 8.5;
    case SheetText::Heading:
        return 10;
    case SheetText::Title:
        return 13;
    case SheetText::Label:
    case SheetText::Body:
    case SheetText::BodyBold:
        break;
    }
    return 7;
}

bool isBold(SheetText text) {
    return text == SheetText::BodyBold || text == SheetText::Heading || text == SheetText::Title;
}

} // namespace

QSizeF sheetExtent(SheetSize size) {
    switch (size) {
    case SheetSize::A3:
        return {4200, 2970};
    case SheetSize::Letter:
        return {2794, 2159};
    case SheetSize::A4:
        break;
    }
    return {2970, 2100};
}

QFont sheetFont(SheetText text) {
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Sans Serif")});
    font.setPixelSize(pixelSize(pointSize(text)));
    font.setBold(isBold(text));
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any letter spacing makes Qt leave ligatures out: "fi" as one glyph is not found by who searches the
    // PDF.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 1.0 / 32);
    return font;
}

QPen sheetPen(SheetLine line) {
    constexpr double kWidths_mm[] = {0.13, 0.25, 0.5, 0.7};
    QPen pen(Qt::black, kWidths_mm[static_cast<std::size_t>(line)] * kUnitsPerMillimetre);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    return pen;
}

} // namespace pumpwright

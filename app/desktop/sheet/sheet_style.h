#pragma once

#include <QFont>
#include <QPen>
#include <QSizeF>

namespace pumpwright {

// The sheet is laid out in tenths of a millimetre, so that fonts and pens have whole sizes on every device.
inline constexpr double kUnitsPerInch = 254;
inline constexpr double kUnitsPerMillimetre = 10;

/// Paper, always on its side.
enum class SheetSize { A4, A3, Letter };

/// In sheet units: A4 and A3 after ISO 216, US Letter 11 in by 8½ in.
QSizeF sheetExtent(SheetSize size);

/// Texts of the sheet. The smallest are 7 pt, the least that is read with ease at arm's length (common
/// practice, no published source).
enum class SheetText { Label, Body, BodyBold, Value, Heading, Title };

QFont sheetFont(SheetText text);

/// Line widths after ISO 128: thin 0.25 mm, middle 0.5 mm, thick 0.7 mm (value from memory of ISO 128).
enum class SheetLine { Hair, Thin, Middle, Thick };

QPen sheetPen(SheetLine line);

} // namespace pumpwright

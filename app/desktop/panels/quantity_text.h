#pragma once

#include "app/desktop/shown_text.h"
#include "core/parts/part_kind.h"
#include "core/units/quantity_kind.h"

#include <QString>

#include <string_view>

namespace pumpwright {

/// The units in which the user wants values shown. Of vacuum the first leads and the second stands beside it.
struct ShownUnits {
    std::string_view vacuum = "kPa";
    std::string_view secondVacuum = "inHg";
    std::string_view wire = "mm²"; ///< or "AWG"
    friend bool operator==(const ShownUnits&, const ShownUnits&) = default;
};

/// "0.75 mm²" or "18 AWG"; vacuum in the leading unit: "50 kPa".
QString quantityText(double si, QuantityKind kind, const ShownUnits& units);

/// As quantityText(), with the second unit beside a vacuum: "50 kPa (14.77 inHg)".
QString quantityTextInBothUnits(double si, QuantityKind kind, const ShownUnits& units);

/// Reads what people type. A bare number is in the unit that quantityText() would show.
[[nodiscard]] Result<double> quantityFromText(const QString& text, QuantityKind kind,
                                              const ShownUnits& units);

/// What is accepted for one quantity.
struct QuantityRange {
    QuantityKind kind = QuantityKind::Number;
    double low = 0;
    double high = 0;
};

/// What reader and window accept for a parameter.
inline QuantityRange rangeOf(const ParameterSpec& spec) {
    return {spec.kind, spec.low, spec.high};
}

/// "0.05 mm² to 120 mm²"
QString rangeText(const QuantityRange& range, const ShownUnits& units);

/// Reads a value and refuses what lies outside the range; the error names the allowed range.
[[nodiscard]] Result<double> quantityWithin(const QString& text, const QuantityRange& range,
                                            const ShownUnits& units);

} // namespace pumpwright

#pragma once

#include "app/desktop/shown_text.h"
#include "core/parts/part_kind.h"
#include "core/units/quantity_kind.h"

#include <QString>

#include <string_view>

namespace pumpwright {

/// The units in which vacuum is shown: the first leads, the second stands beside it.
struct VacuumUnits {
    std::string_view first = "kPa";
    std::string_view second = "inHg";
    friend bool operator==(const VacuumUnits&, const VacuumUnits&) = default;
};

/// "0.75 mm²"; vacuum in the leading unit: "50 kPa".
QString quantityText(double si, QuantityKind kind, const VacuumUnits& units);

/// As quantityText(), with the second unit beside a vacuum: "50 kPa (14.77 inHg)".
QString quantityTextInBothUnits(double si, QuantityKind kind, const VacuumUnits& units);

/// Reads what people type. A bare number is in the unit that quantityText() would show.
[[nodiscard]] Result<double> quantityFromText(const QString& text, QuantityKind kind,
                                              const VacuumUnits& units);

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
QString rangeText(const QuantityRange& range, const VacuumUnits& units);

/// Reads a value and refuses what lies outside the range; the error names the allowed range.
[[nodiscard]] Result<double> quantityWithin(const QString& text, const QuantityRange& range,
                                            const VacuumUnits& units);

} // namespace pumpwright

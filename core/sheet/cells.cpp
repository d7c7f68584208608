#include "core/sheet/cells.h"

#include "core/units/constants.h"

#include <fmt/format.h>

#include <cmath>

namespace pumpwright {

std::string numberIn(double si, QuantityKind kind, std::string_view unitSymbol) {
    std::string text = formatQuantity(si, kind, unitSymbol);
    if (!unitSymbol.empty() && text.ends_with(unitSymbol)) {
        text.resize(text.size() - unitSymbol.size());
        while (text.ends_with(' ')) {
            text.pop_back();
        }
    }
    return text;
}

double toDigits(double value, int digits) {
    if (value == 0) {
        return 0;
    }
    const double step = std::pow(10.0, std::floor(std::log10(std::abs(value))) - digits + 1);
    return std::round(value / step) * step;
}

std::string settingText(double si, QuantityKind kind) {
    std::string text = formatQuantity(si, kind);
    if (kind == QuantityKind::GaugeVacuum || kind == QuantityKind::PressureDifference) {
        text += fmt::format(
            " ({})", formatQuantity(toDigits(si / kInchOfMercury_Pa, 3) * kInchOfMercury_Pa, kind, "inHg"));
    }
    return text;
}

} // namespace pumpwright

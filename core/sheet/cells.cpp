#include "core/sheet/cells.h"

#include <fmt/format.h>

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

std::string settingText(double si, QuantityKind kind) {
    std::string text = formatQuantity(si, kind);
    if (kind == QuantityKind::GaugeVacuum || kind == QuantityKind::PressureDifference) {
        text += fmt::format(" ({})", formatQuantity(si, kind, "inHg"));
    }
    return text;
}

} // namespace pumpwright

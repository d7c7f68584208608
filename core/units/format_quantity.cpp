#include "core/units/number_text_p.h"
#include "core/units/quantity_kind.h"
#include "core/units/unit_table_p.h"
#include "core/units/wire_size.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

constexpr double kCentsGetLost = 1e12; // a double holds cents well beyond; nobody's pump costs this

std::string withUnit(std::string number, std::string_view symbol) {
    return symbol.empty() ? number : fmt::format("{} {}", number, symbol);
}

/// Thousandths of a degree are the most that a scale with a shifted zero can show: closer to its zero the
/// difference of two large numbers is noise.
double withoutNoise(double shown, const DisplayUnit& unit) {
    constexpr double kFourDigitsAreWhole = 1e4;
    const bool asItIs = unit.offset == 0.0 || std::abs(shown) >= kFourDigitsAreWhole;
    return asItIs ? shown : std::round(shown * 1e3) / 1e3;
}

std::string textIn(const DisplayUnit& unit, double si) {
    if (std::isnan(si)) {
        return "undefined";
    }
    const double shown = (si - unit.offset) / unit.factor;
    if (!std::isfinite(shown)) {
        return withUnit(shown > 0 ? "∞" : "-∞", unit.symbol);
    }
    return withUnit(fourDigitText(withoutNoise(shown, unit)), unit.symbol);
}

/// Minutes and hours are picked only where they lose nothing: 5400 s is 1.5 h, 1000 s stays 1000 s.
const DisplayUnit* exactTimeUnit(double si) {
    const auto units = displayUnits(QuantityKind::Time);
    for (const std::string_view symbol : {"h", "min"}) {
        const auto unit = std::ranges::find(units, symbol, &DisplayUnit::symbol);
        const double shown = si / unit->factor;
        if (std::abs(shown) >= 1.0 && std::abs(fourDigits(shown) - shown) <= 1e-12 * std::abs(shown)) {
            return &*unit;
        }
    }
    return nullptr;
}

/// The preferred unit from 0.1 to 1000, as NIST SP 811, 7.9 advises; else the largest in which the value is
/// not below 1, or the smallest there is. `rounded` has four digits, so that the choice is the same when read
/// back.
const DisplayUnit& ladderUnit(const KindRow& row, double rounded) {
    const DisplayUnit& preferred = row.units.front();
    const double size = std::abs(rounded);
    if (size == 0.0 || (size >= 0.1 && size < 1000.0)) {
        return preferred;
    }
    const auto ladder = row.units.first(row.ladder);
    const DisplayUnit* best = &*std::ranges::min_element(ladder, {}, &DisplayUnit::factor);
    for (const DisplayUnit& unit : ladder) {
        const double shown = size * preferred.factor / unit.factor;
        if (shown >= 1.0 - 1e-9 && unit.factor > best->factor) {
            best = &unit;
        }
    }
    return *best;
}

std::string timeText(double si) {
    constexpr double kLongInSeconds = 1000.0;
    const double rounded = fourDigits(si);
    for (const double candidate : {si, rounded}) {
        const DisplayUnit* exact = std::abs(candidate) >= kLongInSeconds ? exactTimeUnit(candidate) : nullptr;
        if (exact != nullptr) {
            return textIn(*exact, candidate);
        }
    }
    return textIn(ladderUnit(kindRow(QuantityKind::Time), rounded), rounded);
}

} // namespace

std::string formatQuantity(double si, QuantityKind kind) {
    const KindRow& row = kindRow(kind);
    const DisplayUnit& preferred = row.units.front();
    const double shown = (si - preferred.offset) / preferred.factor;
    if (!std::isfinite(shown) || preferred.offset != 0.0) {
        return textIn(preferred, si);
    }
    if (kind == QuantityKind::Money && std::abs(si) < kCentsGetLost) {
        return fmt::format("{:.2f}", std::abs(si) < 0.005 ? 0.0 : si);
    }
    if (kind == QuantityKind::WireArea) {
        return wireSizeName(si);
    }
    if (kind == QuantityKind::Time) {
        return timeText(si);
    }
    const double rounded = fourDigits(shown);
    return textIn(ladderUnit(row, rounded), rounded * preferred.factor);
}

std::string formatQuantity(double si, QuantityKind kind, std::string_view unitSymbol) {
    if (kind == QuantityKind::Money || (kind == QuantityKind::WireArea && unitSymbol == "AWG")) {
        return formatQuantity(si, kind);
    }
    const auto units = displayUnits(kind);
    const auto unit = std::ranges::find(units, unitSymbol, &DisplayUnit::symbol);
    return textIn(unit == units.end() ? units.front() : *unit, si);
}

} // namespace pumpwright

#include "app/desktop/panels/quantity_text.h"

#include <QCoreApplication>

#include <algorithm>

namespace pumpwright {
namespace {

/// The unit that the user has chosen for this kind; empty where there is no choice.
std::string_view chosenUnit(QuantityKind kind, const ShownUnits& units) {
    if (kind == QuantityKind::GaugeVacuum) {
        return units.vacuum;
    }
    return kind == QuantityKind::WireArea ? units.wire : std::string_view();
}

bool isVacuum(QuantityKind kind) {
    return kind == QuantityKind::GaugeVacuum;
}

/// Whether the text is a number with nothing behind it.
bool isBareNumber(const QString& text) {
    const QString trimmed = text.trimmed();
    return !trimmed.isEmpty() && std::all_of(trimmed.begin(), trimmed.end(), [](QChar letter) {
        return letter.isDigit() || letter == QLatin1Char('.') || letter == QLatin1Char(',') ||
               letter == QLatin1Char('-') || letter == QLatin1Char('+');
    });
}

} // namespace

QString quantityText(double si, QuantityKind kind, const ShownUnits& units) {
    const std::string_view unit = chosenUnit(kind, units);
    return shown(unit.empty() ? formatQuantity(si, kind) : formatQuantity(si, kind, unit));
}

QString quantityTextInBothUnits(double si, QuantityKind kind, const ShownUnits& units) {
    const QString first = quantityText(si, kind, units);
    if (!isVacuum(kind)) {
        return first;
    }
    return QStringLiteral("%1 (%2)").arg(first, shown(formatQuantity(si, kind, units.secondVacuum)));
}

Result<double> quantityFromText(const QString& text, QuantityKind kind, const ShownUnits& units) {
    const std::string_view unit = chosenUnit(kind, units);
    const bool addUnit = !unit.empty() && isBareNumber(text);
    const QString whole = addUnit ? text.trimmed() + QLatin1Char(' ') + shown(unit) : text;
    return parseQuantity(whole.toStdString(), kind);
}

QString rangeText(const QuantityRange& range, const ShownUnits& units) {
    return QCoreApplication::translate("pumpwright", "%1 to %2")
        .arg(quantityText(range.low, range.kind, units), quantityText(range.high, range.kind, units));
}

Result<double> quantityWithin(const QString& text, const QuantityRange& range, const ShownUnits& units) {
    const auto value = quantityFromText(text, range.kind, units);
    if (!value) {
        return value;
    }
    // A limit read back from its own four digits must pass.
    const double slack = 1e-3;
    const double low = range.low - slack * std::abs(range.low);
    const double high = range.high + slack * std::abs(range.high);
    if (*value < low || *value > high) {
        const QString message = QCoreApplication::translate("pumpwright", "%1 is out of range. Allowed: %2.")
                                    .arg(quantityText(*value, range.kind, units), rangeText(range, units));
        return tl::unexpected(Error{ErrorCode::OutOfRange, message.toStdString(), {}});
    }
    return std::clamp(*value, range.low, range.high);
}

} // namespace pumpwright

#include "core/units/number_text_p.h"
#include "core/units/quantity_kind.h"
#include "core/units/quoted_text.h"
#include "core/units/unit_table_p.h"
#include "core/units/wire_size.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string>

namespace pumpwright {
namespace {

constexpr std::size_t kLongestText = 100; // bytes; no honest value comes near

/// What is wrong with the text, then what would be right.
tl::unexpected<Error> trouble(ErrorCode code, std::string_view text, QuantityKind kind,
                              std::string_view what) {
    return tl::unexpected(Error{code,
                                fmt::format("{} {}. For {}, write for example \"{}\".", quotedText(text),
                                            what, kindName(kind), kindRow(kind).example),
                                {}});
}

struct Replacement {
    std::string_view from;
    std::string_view to;
};

// Spaces that other programs put between number and unit, and the typographic minus.
constexpr auto kReplacements = std::to_array<Replacement>({{"\t", " "},
                                                           {"\n", " "},
                                                           {"\r", " "},
                                                           {"\u00A0", " "},
                                                           {"\u2007", " "},
                                                           {"\u2009", " "},
                                                           {"\u202F", " "},
                                                           {"\u2212", "-"}});

/// The text with one kind of space, single and only inside, and one kind of minus.
std::string tidied(std::string_view text) {
    std::string result;
    while (!text.empty()) {
        std::string_view next = text.substr(0, 1);
        std::string_view from = next;
        for (const Replacement& replacement : kReplacements) {
            if (text.starts_with(replacement.from)) {
                from = replacement.from;
                next = replacement.to;
            }
        }
        text.remove_prefix(from.size());
        if (next != " " || (!result.empty() && result.back() != ' ')) {
            result += next;
        }
    }
    if (result.ends_with(' ')) {
        result.pop_back();
    }
    return result;
}

struct CodeLetter {
    QuantityKind kind;
    std::string_view letter;
    int power;
};

// Letters that stand at the place of the decimal sign [IEC 60062, clause 5].
constexpr auto kCodeLetters = std::to_array<CodeLetter>({
    {QuantityKind::Resistance, "R", 0},
    {QuantityKind::Resistance, "r", 0},
    {QuantityKind::Resistance, "k", 3},
    {QuantityKind::Resistance, "K", 3},
    {QuantityKind::Resistance, "M", 6},
    {QuantityKind::Resistance, "G", 9},
    {QuantityKind::Capacitance, "p", -12},
    {QuantityKind::Capacitance, "n", -9},
    {QuantityKind::Capacitance, "u", -6},
    {QuantityKind::Capacitance, "\u00B5", -6},
    {QuantityKind::Capacitance, "\u03BC", -6},
    {QuantityKind::Capacitance, "m", -3},
});

std::string_view leadingDigits(std::string_view text) {
    return text.substr(0, std::min(text.find_first_not_of("0123456789"), text.size()));
}

/// "4k7", "R47", "4k7 Ω": digits, a letter, digits, perhaps the unit without a prefix.
std::optional<DecimalText> letterCode(std::string_view text, QuantityKind kind) {
    const std::string_view whole = leadingDigits(text);
    text.remove_prefix(whole.size());
    for (const CodeLetter& code : kCodeLetters) {
        if (code.kind != kind || !text.starts_with(code.letter)) {
            continue;
        }
        text.remove_prefix(code.letter.size());
        const std::string_view fraction = leadingDigits(text);
        std::string_view unit = text.substr(fraction.size());
        unit.remove_prefix(unit.starts_with(' ') ? 1 : 0);
        const DisplayUnit* named = unit.empty() ? nullptr : unitNamed(kind, unit);
        const bool unitFits = unit.empty() || (named != nullptr && named->symbol == siUnit(kind));
        if (fraction.empty() || !unitFits) {
            return std::nullopt;
        }
        return DecimalText{fmt::format("{}.{}", whole.empty() ? "0" : whole, fraction), code.power};
    }
    return std::nullopt;
}

// Far beyond anything in a car, and far enough from the ends of a double that products of a few stay inside.
constexpr double kLargest = 1e100;
constexpr double kSmallest = 1e-100;

bool isComputable(double si) {
    const double size = std::abs(si);
    return si == 0.0 || (size >= kSmallest && size <= kLargest);
}

/// Refuses what can't be computed with and what nature does not have.
Result<double> inRange(std::optional<double> si, std::string_view text, QuantityKind kind) {
    if (!si || !isComputable(*si)) {
        return trouble(ErrorCode::OutOfRange, text, kind,
                       "is too large or too close to zero to compute with");
    }
    if (*si < kindRow(kind).lowest) {
        const bool isTemperature = kind == QuantityKind::Temperature;
        return trouble(ErrorCode::OutOfRange, text, kind,
                       isTemperature ? "is below absolute zero" : "is below zero, which can't be");
    }
    return *si;
}

/// In units that are powers of ten only the exponent moves, so the value is rounded once.
std::optional<double> siValue(const DecimalText& number, const DisplayUnit& unit) {
    const auto shown = valueOf(number, 0);
    if (!shown) {
        return std::nullopt;
    }
    const auto power = unit.offset == 0.0 ? powerOfTen(unit.factor) : std::nullopt;
    return power ? valueOf(number, *power) : *shown * unit.factor + unit.offset;
}

std::string unitList(QuantityKind kind) {
    std::string list;
    for (const DisplayUnit& unit : displayUnits(kind)) {
        list += (list.empty() || unit.symbol.empty() ? "" : ", ") + std::string(unit.symbol);
    }
    return list;
}

tl::unexpected<Error> wrongUnit(std::string_view text, std::string_view unit, QuantityKind kind) {
    const std::string units = unitList(kind);
    const std::string what =
        units.empty()
            ? fmt::format("has {} after the number, which takes no unit here", quotedText(unit))
            : fmt::format("has {} after the number; the units known here are {}", quotedText(unit), units);
    return trouble(ErrorCode::WrongUnit, text, kind, what);
}

tl::unexpected<Error> numberTrouble(NumberTrouble which, std::string_view text, QuantityKind kind) {
    if (which == NumberTrouble::ThousandsSeparator) {
        return trouble(ErrorCode::NotANumber, text, kind,
                       "has its digits in groups; write them without a thousands separator");
    }
    if (which == NumberTrouble::PerhapsThousandsSeparator) {
        return trouble(
            ErrorCode::NotANumber, text, kind,
            "may have a decimal comma or a thousands separator; write a decimal point or no separator");
    }
    return trouble(ErrorCode::NotANumber, text, kind, "does not start with a number");
}

Result<double> gaugeArea(std::string_view gauge, std::string_view text) {
    const auto number = gaugeNumber(gauge);
    if (!number) {
        return trouble(ErrorCode::OutOfRange, text, QuantityKind::WireArea,
                       fmt::format("is no wire gauge; gauges are whole and go from {} to {}",
                                   awgName(kThickestGauge), awgName(kThinnestGauge)));
    }
    return awgArea_m2(*number);
}

} // namespace

Result<double> parseQuantity(std::string_view text, QuantityKind kind) {
    const std::string tidy = text.size() > kLongestText ? std::string() : tidied(text);
    if (tidy.empty()) {
        return trouble(ErrorCode::NotANumber, text, kind, text.empty() ? "is empty" : "is no number");
    }
    if (const auto gauge = gaugeText(tidy); gauge && kind == QuantityKind::WireArea) {
        return gaugeArea(*gauge, text);
    }
    if (const auto code = letterCode(tidy, kind)) {
        return inRange(valueOf(*code, 0), text, kind);
    }
    const ScannedNumber scanned = scannedNumber(tidy);
    if (scanned.trouble != NumberTrouble::None) {
        return numberTrouble(scanned.trouble, text, kind);
    }
    const DisplayUnit* unit =
        scanned.rest.empty() ? &displayUnits(kind).front() : unitNamed(kind, scanned.rest);
    if (unit == nullptr) {
        return wrongUnit(text, scanned.rest, kind);
    }
    return inRange(siValue(scanned.number, *unit), text, kind);
}

} // namespace pumpwright

#include "core/units/number_text_p.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace pumpwright {
namespace {

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

bool startsWithDigit(std::string_view text) {
    return !text.empty() && isDigit(text.front());
}

/// Takes the digits at the start of the text.
std::string_view takeDigits(std::string_view& text) {
    const auto end = std::ranges::find_if_not(text, isDigit);
    const auto digits = text.substr(0, static_cast<std::size_t>(end - text.begin()));
    text.remove_prefix(digits.size());
    return digits;
}

/// Takes "e-3" or "E+06"; an e without digits belongs to what follows.
int takeExponent(std::string_view& text) {
    if (!text.starts_with('e') && !text.starts_with('E')) {
        return 0;
    }
    std::string_view tail = text.substr(1);
    const bool negative = tail.starts_with('-');
    if (negative || tail.starts_with('+')) {
        tail.remove_prefix(1);
    }
    const std::string_view digits = takeDigits(tail);
    if (digits.empty()) {
        return 0;
    }
    constexpr int kBeyondAnyDouble = 9999;
    int exponent = kBeyondAnyDouble;
    std::from_chars(digits.data(), digits.data() + digits.size(), exponent);
    exponent = std::min(exponent, kBeyondAnyDouble);
    text = tail;
    return negative ? -exponent : exponent;
}

/// True when the text goes on as in "1 234", "1'234", "1.234,5": a digit after a sign that may group digits.
bool goesOnWithDigits(std::string_view rest) {
    for (const std::string_view sign : {" ", "'", "’", "_", ".", ","}) {
        if (rest.starts_with(sign) && startsWithDigit(rest.substr(sign.size()))) {
            return true;
        }
    }
    return false;
}

/// "1,234" is one and a bit in one country and a thousand in another; "0,234" is the former everywhere.
bool mayGroupThousands(std::string_view whole, std::string_view fraction) {
    return fraction.size() == 3 && !whole.empty() && whole.size() <= 3 && whole.front() != '0';
}

} // namespace

ScannedNumber scannedNumber(std::string_view text) {
    const bool negative = text.starts_with('-');
    text.remove_prefix(negative || text.starts_with('+') ? 1 : 0);
    const std::string_view whole = takeDigits(text);
    std::string_view fraction;
    const bool comma = text.starts_with(',');
    if (comma || text.starts_with('.')) {
        std::string_view tail = text.substr(1);
        fraction = takeDigits(tail);
        text = whole.empty() && fraction.empty() ? text : tail;
    }
    if (whole.empty() && fraction.empty()) {
        return {{}, {}, NumberTrouble::NotANumber};
    }
    ScannedNumber result;
    result.number.digits = fmt::format("{}{}.{}", negative ? "-" : "", whole.empty() ? "0" : whole,
                                       fraction.empty() ? "0" : fraction);
    result.number.exponent = takeExponent(text);
    if (goesOnWithDigits(text)) {
        result.trouble = NumberTrouble::ThousandsSeparator;
    } else if (comma && mayGroupThousands(whole, fraction)) {
        result.trouble = NumberTrouble::PerhapsThousandsSeparator;
    }
    text.remove_prefix(text.starts_with(' ') ? 1 : 0);
    result.rest = text;
    return result;
}

std::optional<double> valueOf(const DecimalText& number, int shift) {
    const std::string text = fmt::format("{}e{}", number.digits, number.exponent + shift);
    double value = 0.0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value == 0.0 ? 0.0 : value; // no negative zero
}

std::optional<int> powerOfTen(double factor) {
    const int power = static_cast<int>(std::lround(std::log10(factor)));
    return valueOf({"1", power}, 0) == factor ? std::optional(power) : std::nullopt;
}

double fourDigits(double value) {
    const std::string text = fmt::format("{:.3e}", value);
    double rounded = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), rounded);
    return rounded;
}

std::string fourDigitText(double value) {
    const double rounded = fourDigits(value);
    if (rounded == 0.0) {
        return "0";
    }
    const std::string scientific = fmt::format("{:.3e}", rounded);
    const std::size_t at = scientific.find('e');
    std::string_view exponentText = std::string_view(scientific).substr(at + 1);
    exponentText.remove_prefix(exponentText.starts_with('+') ? 1 : 0);
    int exponent = 0;
    std::from_chars(exponentText.data(), exponentText.data() + exponentText.size(), exponent);

    const bool plain = exponent >= -4 && exponent < 7;
    std::string digits =
        plain ? fmt::format("{:.{}f}", rounded, std::max(0, 3 - exponent)) : scientific.substr(0, at);
    if (digits.find('.') != std::string::npos) {
        digits.erase(digits.find_last_not_of('0') + 1);
        digits.erase(digits.find_last_not_of('.') + 1);
    }
    return plain ? digits : fmt::format("{}e{}", digits, exponent);
}

} // namespace pumpwright

#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace pumpwright {

/// A decimal number as it was written, not yet rounded to binary, so that "5.1 ms" becomes exactly what
/// 0.0051 is.
struct DecimalText {
    std::string digits; ///< sign, digits, point: "-0.75"
    int exponent = 0;   ///< power of ten
};

enum class NumberTrouble { None, NotANumber, ThousandsSeparator, PerhapsThousandsSeparator };

struct ScannedNumber {
    DecimalText number;
    std::string_view rest; ///< what follows, without leading spaces
    NumberTrouble trouble = NumberTrouble::None;
};

/// The number at the start of a text. Point and comma are decimal signs; the words nan and inf, hexadecimal
/// and everything else that std::from_chars() might take for a number is not one.
ScannedNumber scannedNumber(std::string_view text);

/// The number times 10^shift, rounded once; nothing when it is too large or too small for a double.
std::optional<double> valueOf(const DecimalText& number, int shift);

/// The power of ten that a factor is, if it is one.
std::optional<int> powerOfTen(double factor);

/// The number nearest to a finite `value` that has four significant digits.
double fourDigits(double value);

/// fourDigits() as text: no trailing zeros, no "-0", an exponent only below 0.0001 and from ten million.
std::string fourDigitText(double value);

} // namespace pumpwright

#include "core/units/visible_text.h"

#include <fmt/format.h>

namespace pumpwright {
namespace {

bool isContinuation(unsigned char byte) {
    return (byte & 0xC0U) == 0x80U;
}

/// The second byte decides whether a sequence is overlong, a surrogate or beyond U+10FFFF (RFC 3629, section
/// 4).
bool isSecondByte(unsigned char first, unsigned char second) {
    switch (first) {
    case 0xE0:
        return second >= 0xA0 && second <= 0xBF;
    case 0xED:
        return second >= 0x80 && second <= 0x9F;
    case 0xF0:
        return second >= 0x90 && second <= 0xBF;
    case 0xF4:
        return second >= 0x80 && second <= 0x8F;
    default:
        return isContinuation(second);
    }
}

/// The code point of a whole and valid UTF-8 sequence.
char32_t codePoint(std::string_view character) {
    const auto first = static_cast<unsigned char>(character.front());
    char32_t code = character.size() == 1 ? first : first & (0x7FU >> character.size());
    for (const char c : character.substr(1)) {
        code = (code << 6U) | (static_cast<unsigned char>(c) & 0x3FU);
    }
    return code;
}

bool isBlank(char32_t code) {
    return code == U'\n' || code == U'\r' || code == U'\t';
}

bool isControl(char32_t code) {
    return code < 0x20 || (code >= 0x7F && code < 0xA0);
}

/// Turns the direction of writing, or breaks lines.
bool turnsOrBreaks(char32_t code) {
    return code == 0x061C || code == 0x200E || code == 0x200F || (code >= 0x2028 && code <= 0x202E) ||
           (code >= 0x2066 && code <= 0x2069);
}

} // namespace

std::size_t utf8Length(std::string_view text) {
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text[at]); };
    std::size_t length = 0;
    if (byte(0) < 0x80) {
        return 1;
    }
    if (byte(0) >= 0xC2 && byte(0) <= 0xDF) {
        length = 2;
    } else if (byte(0) >= 0xE0 && byte(0) <= 0xEF) {
        length = 3;
    } else if (byte(0) >= 0xF0 && byte(0) <= 0xF4) {
        length = 4;
    }
    if (length == 0 || text.size() < length || !isSecondByte(byte(0), byte(1))) {
        return 0;
    }
    for (std::size_t i = 2; i < length; ++i) {
        if (!isContinuation(byte(i))) {
            return 0;
        }
    }
    return length;
}

std::string visibleText(std::string_view text) {
    std::string visible;
    visible.reserve(text.size());
    while (!text.empty()) {
        const std::size_t length = utf8Length(text);
        const std::string_view character = text.substr(0, length == 0 ? 1 : length);
        const char32_t code = length == 0 ? 0xFFFD : codePoint(character);
        if (length == 0) {
            visible += "\uFFFD";
        } else if (isBlank(code)) {
            visible += ' ';
        } else if (isControl(code) || turnsOrBreaks(code)) {
            visible += fmt::format("⟨U+{:04X}⟩", static_cast<unsigned>(code));
        } else {
            visible += character;
        }
        text.remove_prefix(character.size());
    }
    return visible;
}

} // namespace pumpwright

#include "core/units/quoted_text.h"

#include <cstddef>

namespace pumpwright {
namespace {

constexpr std::size_t kLongest = 60;
constexpr std::string_view kReplacement = "\uFFFD";

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

/// Bytes of the character that starts the text; 0 when it is not valid UTF-8.
std::size_t characterLength(std::string_view text) {
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

/// Control characters, C1 ones included, would change how a terminal or a label shows the message.
bool isControl(std::string_view character) {
    const auto first = static_cast<unsigned char>(character[0]);
    if (character.size() == 1) {
        return first < 0x20 || first == 0x7F;
    }
    return first == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0;
}

} // namespace

std::string quotedText(std::string_view outside) {
    std::string quoted = "\"";
    while (!outside.empty()) {
        if (quoted.size() > kLongest) {
            quoted += "…";
            break;
        }
        const std::size_t length = characterLength(outside);
        const std::string_view character = outside.substr(0, length == 0 ? 1 : length);
        quoted += length == 0 || isControl(character) ? kReplacement : character;
        outside.remove_prefix(character.size());
    }
    quoted += '"';
    return quoted;
}

} // namespace pumpwright

#include "core/units/quoted_text.h"

#include "core/units/visible_text.h"

#include <cstddef>

namespace pumpwright {
namespace {

constexpr std::size_t kLongest = 60;
constexpr std::string_view kReplacement = "\uFFFD";

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
        const std::size_t length = utf8Length(outside);
        const std::string_view character = outside.substr(0, length == 0 ? 1 : length);
        if (length == 0 || isControl(character)) {
            quoted += kReplacement;
        } else {
            quoted += visibleText(character);
        }
        outside.remove_prefix(character.size());
    }
    quoted += '"';
    return quoted;
}

} // namespace pumpwright

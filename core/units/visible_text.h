#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace pumpwright {

/// A text from outside as people are to see it: line breaks and tabs as spaces; other control characters, and
/// those that turn the direction of writing (Unicode Standard Annex 9), as marks like "⟨U+202E⟩"; bytes that
/// are no UTF-8 as U+FFFD; all else as it is.
std::string visibleText(std::string_view text);

/// Bytes of the character that starts the text, which is not empty; 0 where it is not valid UTF-8 (RFC 3629).
std::size_t utf8Length(std::string_view text);

} // namespace pumpwright

#pragma once

#include <string>
#include <string_view>

namespace pumpwright {

/// A text from outside, in double quotes and fit for a message: always valid UTF-8, control characters and
/// bad bytes shown as U+FFFD, cut after about 60 bytes with an ellipsis.
std::string quotedText(std::string_view outside);

} // namespace pumpwright

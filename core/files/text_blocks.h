#pragma once

#include "core/units/result.h"

#include <cstddef>
#include <memory>
#include <string_view>

namespace pumpwright {

/// A text that comes in pieces, so that no more of it than one is held.
class TextBlocks {
public:
    virtual ~TextBlocks() = default;
    /// Empty at the end of the text. A piece lives until the next.
    virtual Result<std::string_view> next() = 0;
};

inline constexpr std::size_t kBlockBytes = 1U << 18U;

/// A text that is there already, and must outlive its pieces.
std::unique_ptr<TextBlocks> blocksOf(std::string_view text, std::size_t blockBytes = kBlockBytes);

/// The same in UTF-8 where the first piece begins with a byte-order mark of UTF-16, and as it is otherwise. A
/// half pair of surrogates becomes U+FFFD; an end within a character is an error.
std::unique_ptr<TextBlocks> inUtf8(std::unique_ptr<TextBlocks> bytes);

} // namespace pumpwright

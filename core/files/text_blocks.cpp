#include "core/files/text_blocks.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>

namespace pumpwright {
namespace {

constexpr std::string_view kLittleEndian = "\xFF\xFE";
constexpr std::string_view kBigEndian = "\xFE\xFF";
constexpr char32_t kReplacement = 0xFFFD;

bool isHighSurrogate(char32_t unit) {
    return unit >= 0xD800 && unit <= 0xDBFF;
}

bool isLowSurrogate(char32_t unit) {
    return unit >= 0xDC00 && unit <= 0xDFFF;
}

/// RFC 3629, section 3.
void appendUtf8(std::string& text, char32_t c) {
    const auto byte = [&](char32_t value) { text += static_cast<char>(static_cast<std::uint8_t>(value)); };
    if (c < 0x80) {
        byte(c);
        return;
    }
    if (c < 0x800) {
        byte(0xC0U | c >> 6U);
    } else if (c < 0x10000) {
        byte(0xE0U | c >> 12U);
        byte(0x80U | (c >> 6U & 0x3FU));
    } else {
        byte(0xF0U | c >> 18U);
        byte(0x80U | (c >> 12U & 0x3FU));
        byte(0x80U | (c >> 6U & 0x3FU));
    }
    byte(0x80U | (c & 0x3FU));
}

/// UTF-16 after RFC 2781, in any pieces.
class Utf16Decoder {
public:
    explicit Utf16Decoder(bool bigEndian) : m_bigEndian(bigEndian) {}

    const std::string& decode(std::string_view bytes) {
        m_text.clear();
        for (const char c : bytes) {
            const auto byte = static_cast<std::uint8_t>(c);
            if (m_isHalf) {
                take(m_bigEndian ? char32_t{m_first} << 8U | byte : char32_t{byte} << 8U | m_first);
            }
            m_first = byte;
            m_isHalf = !m_isHalf;
        }
        return m_text;
    }

    bool isWithinCharacter() const { return m_isHalf || m_high != 0; }

private:
    void take(char32_t unit) {
        const char32_t high = std::exchange(m_high, 0);
        if (high != 0 && isLowSurrogate(unit)) {
            appendUtf8(m_text, 0x10000 + ((high - 0xD800) << 10U) + (unit - 0xDC00));
            return;
        }
        if (high != 0) {
            appendUtf8(m_text, kReplacement);
        }
        if (isHighSurrogate(unit)) {
            m_high = unit;
        } else {
            appendUtf8(m_text, isLowSurrogate(unit) ? kReplacement : unit);
        }
    }

    bool m_bigEndian;
    bool m_isHalf = false;
    std::uint8_t m_first = 0;
    char32_t m_high = 0;
    std::string m_text;
};

class PiecesOfText : public TextBlocks {
public:
    PiecesOfText(std::string_view text, std::size_t blockBytes) : m_text(text), m_blockBytes(blockBytes) {}

    Result<std::string_view> next() override {
        const std::string_view block = m_text.substr(0, m_blockBytes);
        m_text.remove_prefix(block.size());
        return block;
    }

private:
    std::string_view m_text;
    std::size_t m_blockBytes;
};

class Utf8Blocks : public TextBlocks {
public:
    explicit Utf8Blocks(std::unique_ptr<TextBlocks> bytes) : m_bytes(std::move(bytes)) {}

    Result<std::string_view> next() override {
        Result<std::string_view> block = m_bytes->next();
        if (m_isFirst && block) {
            m_isFirst = false;
            *block = behindMark(*block);
        }
        return m_decoder ? decoded(block) : block;
    }

private:
    std::string_view behindMark(std::string_view block) {
        const bool bigEndian = block.starts_with(kBigEndian);
        if (!bigEndian && !block.starts_with(kLittleEndian)) {
            return block;
        }
        m_decoder.emplace(bigEndian);
        return block.substr(kBigEndian.size());
    }

    /// Goes on as long as the pieces are too small for a character.
    Result<std::string_view> decoded(Result<std::string_view> block) {
        while (block && !block->empty()) {
            if (const std::string& text = m_decoder->decode(*block); !text.empty()) {
                return text;
            }
            block = m_bytes->next();
        }
        if (block && m_decoder->isWithinCharacter()) {
            return tl::unexpected(
                Error{ErrorCode::NotANumber,
                      "The text is in UTF-16 and ends within a character: the file may have been cut off.",
                      {}});
        }
        return block;
    }

    std::unique_ptr<TextBlocks> m_bytes;
    std::optional<Utf16Decoder> m_decoder; ///< none where the text is in UTF-8
    bool m_isFirst = true;
};

} // namespace

std::unique_ptr<TextBlocks> blocksOf(std::string_view text, std::size_t blockBytes) {
    return std::make_unique<PiecesOfText>(text, blockBytes);
}

std::unique_ptr<TextBlocks> inUtf8(std::unique_ptr<TextBlocks> bytes) {
    return std::make_unique<Utf8Blocks>(std::move(bytes));
}

} // namespace pumpwright

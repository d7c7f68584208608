#pragma once

#include "core/units/result.h"

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace pumpwright {

/// A broken promise ends the run, which libFuzzer and the replay both report with the input.
inline void require(bool kept, const char* promise) {
    if (!kept) {
        std::fputs(promise, stderr);
        std::fputc('\n', stderr);
        std::abort();
    }
}

inline std::string textOf(const std::uint8_t* data, std::size_t size) {
    std::string text(size, '\0');
    for (std::size_t i = 0; i < size; ++i) {
        text[i] = static_cast<char>(data[i]);
    }
    return text;
}

/// What every refusal of the file "input" keeps.
inline void checkRefused(const Error& error) {
    require(!error.text.empty(), "a refusal has a text");
    require(error.text.size() < 2000, "a refusal is short whatever the input");
    require(error.place.file == "input", "a refusal names the file");
    for (const char byte : error.text) {
        require(byte != '\n' && byte != '\0' && byte != '\x1b', "a refusal is one line of plain text");
    }
}

} // namespace pumpwright

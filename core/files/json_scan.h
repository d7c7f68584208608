#pragma once

#include "core/units/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace pumpwright {

/// What a file may hold at most. Looked at while its text is scanned, before a tree is built: a tree takes up
/// to 29 times the bytes of its text.
struct JsonLimits {
    std::size_t fileBytes = 8U << 20U;
    std::size_t textBytes = 4096; ///< of one text or key
    std::size_t elements = 1000;  ///< of an array, but for these two:
    std::size_t parts = 10'000;   ///< of the array /parts
    std::size_t wires = 20'000;   ///< of the array /wires
    std::size_t keys = 200;       ///< of one object
    std::size_t depth = 32;       ///< objects and arrays inside each other, the outermost counted
};

/// The first thing that keeps a text from being read as JSON within the limits, with its line and pointer:
/// broken JSON, a limit passed, a key twice in one object, a byte-order mark, a NUL. Nothing if it is sound.
std::optional<Error> jsonFault(std::string_view text, const std::string& fileName,
                               const JsonLimits& limits = {});

/// The line, from 1, on which the value begins to which a JSON pointer (RFC 6901) leads. Of a pointer that
/// leads nowhere, the line where what it names is missing: its nearest parent's.
int lineOfPointer(std::string_view text, std::string_view pointer);

/// A step of a JSON pointer: "~" and "/" escaped.
std::string pointerStep(std::string_view key);

} // namespace pumpwright

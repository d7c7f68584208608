#pragma once

#include <tl/expected.hpp>

#include <string>
#include <string_view>

namespace pumpwright {

/// Where something went wrong. Empty parts are unknown; `line` counts from 1.
struct Place {
    std::string file;
    int line = 0;
    std::string pointer; ///< JSON pointer (RFC 6901) or column name
};

/// What went wrong with something that came from outside: a text, a file, a table.
/// Each code has an example in docs/messages.md.
enum class ErrorCode {
    NotANumber,
    WrongUnit,
    OutOfRange,
    FileUnreadable,
    FileUnwritable,
    TooLarge,
    TooDeep,
    NotJson,
    NotACircuit,
    NotACatalogue,
    NewerVersion,
    WrongType,
    MissingKey,
    DuplicateKey,
    DuplicateId,
    UnknownKind,
    UnknownChoice,
    DanglingReference,
};

/// The code as it is printed and looked up: "not-a-number".
std::string_view errorCodeName(ErrorCode code);

/// A message for people: what happened, to which value, what would be right.
struct Error {
    ErrorCode code;
    std::string text;
    Place place;
};

template <class T>
using Result = tl::expected<T, Error>;

} // namespace pumpwright

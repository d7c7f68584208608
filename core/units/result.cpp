#include "core/units/result.h"

#include <cassert>

namespace pumpwright {

std::string_view errorCodeName(ErrorCode code) {
    switch (code) {
    case ErrorCode::NotANumber:
        return "not-a-number";
    case ErrorCode::WrongUnit:
        return "wrong-unit";
    case ErrorCode::OutOfRange:
        return "out-of-range";
    case ErrorCode::FileUnreadable:
        return "file-unreadable";
    case ErrorCode::FileUnwritable:
        return "file-unwritable";
    case ErrorCode::TooLarge:
        return "too-large";
    case ErrorCode::TooDeep:
        return "too-deep";
    case ErrorCode::NotJson:
        return "not-json";
    case ErrorCode::NotACircuit:
        return "not-a-circuit";
    case ErrorCode::NotACatalogue:
        return "not-a-catalogue";
    case ErrorCode::NewerVersion:
        return "newer-version";
    case ErrorCode::WrongType:
        return "wrong-type";
    case ErrorCode::MissingKey:
        return "missing-key";
    case ErrorCode::DuplicateKey:
        return "duplicate-key";
    case ErrorCode::DuplicateId:
        return "duplicate-id";
    case ErrorCode::UnknownKind:
        return "unknown-kind";
    case ErrorCode::UnknownChoice:
        return "unknown-choice";
    case ErrorCode::DanglingReference:
        return "dangling-reference";
    }
    assert(false && "every error code has a name");
    return {};
}

} // namespace pumpwright

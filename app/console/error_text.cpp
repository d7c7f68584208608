#include "app/console/error_text.h"

#include <fmt/format.h>

#include <vector>

namespace pumpwright {
namespace {

std::string placeText(const Place& place) {
    std::vector<std::string> parts;
    if (!place.file.empty()) {
        parts.push_back(place.file);
    }
    if (place.line > 0) {
        parts.push_back(fmt::format("line {}", place.line));
    }
    if (!place.pointer.empty()) {
        parts.push_back(fmt::format("at {}", place.pointer));
    }
    return fmt::format("{}", fmt::join(parts, ", "));
}

} // namespace

std::string errorText(const Error& error) {
    std::string text = fmt::format("pumpwright: {} [{}]\n", error.text, errorCodeName(error.code));
    const std::string place = placeText(error.place);
    return place.empty() ? text : text + "  " + place + "\n";
}

Outcome unreadable(const Error& error) {
    return {ExitStatus::Unreadable, "", errorText(error)};
}

} // namespace pumpwright

#pragma once

#include "core/units/text.h"

#include <functional>
#include <string>

namespace pumpwright {

/// How a table says its sentences: in English on the console, in the user's language in the window.
using Speech = std::function<std::string(const Text&)>;

inline std::string inEnglish(const Text& text) {
    return text.english();
}

} // namespace pumpwright

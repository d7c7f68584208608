#pragma once

#include "core/units/text.h"
#include "core/units/visible_text.h"

#include <QString>

#include <string_view>

namespace pumpwright {

/// Text of core as window and paper show it: see visibleText(). Never markup: labels that show it are set to
/// plain text.
inline QString shown(std::string_view text) {
    return QString::fromStdString(visibleText(text));
}

/// A sentence of core in the user's language.
QString translated(const Text& text);

/// Words of core that are marked by words(), in the user's language.
QString translatedWords(std::string_view words);

/// Text of core as it is, to be edited.
inline QString editable(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace pumpwright

#include "app/desktop/shown_text.h"

#include <QCoreApplication>

namespace pumpwright {
namespace {

/// resources/translations/update_core.py brings the texts of core under this name.
std::string inUsersLanguage(const std::string& english) {
    return QCoreApplication::translate("core", english.c_str()).toStdString();
}

std::string said(const Text& text) {
    if (!text.isSentence()) {
        return text.pattern();
    }
    std::vector<std::string> facts;
    facts.reserve(text.facts().size());
    for (const Text& fact : text.facts()) {
        facts.push_back(said(fact));
    }
    return filledIn(inUsersLanguage(text.pattern()), facts);
}

} // namespace

QString translated(const Text& text) {
    return shown(said(text));
}

QString translatedWords(std::string_view words) {
    return shown(inUsersLanguage(std::string(words)));
}

} // namespace pumpwright

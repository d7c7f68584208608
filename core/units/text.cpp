#include "core/units/text.h"

#include <fmt/args.h>

namespace pumpwright {

std::string filledIn(std::string_view pattern, const std::vector<std::string>& facts) {
    fmt::dynamic_format_arg_store<fmt::format_context> store;
    for (const std::string& fact : facts) {
        store.push_back(fact);
    }
    return fmt::vformat(pattern, store);
}

std::string Text::english() const {
    if (!m_isSentence) {
        return m_pattern;
    }
    std::vector<std::string> facts;
    facts.reserve(m_facts.size());
    for (const Text& fact : m_facts) {
        facts.push_back(fact.english());
    }
    return filledIn(m_pattern, facts);
}

} // namespace pumpwright

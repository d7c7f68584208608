#pragma once

#include <fmt/format.h>

#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace pumpwright {

/// Marks words for people that stand alone, such as labels: the tool that collects texts for translators
/// finds them by it. Core itself speaks English; whoever shows the words looks them up by their English.
constexpr const char* words(const char* english) {
    return english;
}

/// A sentence for people, with its facts apart, so that it can be said in another language: the pattern
/// "{} carries {}" and the facts "W3" and "12 A". A fact may be a sentence of its own.
class Text {
public:
    Text() = default;
    /// A name, a number or what somebody wrote: the same in all languages.
    Text(std::string fact) : m_pattern(std::move(fact)) {}
    Text(std::string pattern, std::vector<Text> facts)
        : m_pattern(std::move(pattern)), m_facts(std::move(facts)), m_isSentence(true) {}

    bool isEmpty() const { return m_pattern.empty(); }
    /// False for a fact, which is said as it is.
    bool isSentence() const { return m_isSentence; }
    const std::string& pattern() const { return m_pattern; }
    const std::vector<Text>& facts() const { return m_facts; }

    std::string english() const;

    friend bool operator==(const Text&, const Text&) = default;

private:
    std::string m_pattern;
    std::vector<Text> m_facts;
    bool m_isSentence = false;
};

/// The pattern with its "{}" filled in order, or "{1}" where a language turns them round. Facts that the
/// pattern does not ask for are left out.
std::string filledIn(std::string_view pattern, const std::vector<std::string>& facts);

/// Words that were marked with words(), as a sentence of their own.
inline Text said(std::string_view marked) {
    return {std::string(marked), {}};
}

/// A fact of a sentence. Literals are none: say("an inductive") makes them sentences.
template <class Value>
Text fact(Value&& value) {
    using Plain = std::remove_cvref_t<Value>;
    static_assert(!std::is_array_v<Plain> && !std::is_pointer_v<Plain>,
                  "say(\"…\") what is to be translated");
    if constexpr (std::is_same_v<Plain, Text>) {
        return std::forward<Value>(value);
    } else {
        return fmt::format("{}", value);
    }
}

template <class... Facts>
Text say(const char* english, Facts&&... facts) {
    return {english, std::vector<Text>{fact(std::forward<Facts>(facts))...}};
}

} // namespace pumpwright

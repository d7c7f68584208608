#include "core/files/json_scan.h"

#include "core/units/quoted_text.h"

#include <fmt/core.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <unordered_set>
#include <vector>

namespace pumpwright {
namespace {

using Json = nlohmann::json;

/// Reads a text and tells how far the parser has come, which its own events do not say.
class WatchedIterator {
public:
    using iterator_category = std::input_iterator_tag;
    using value_type = char;
    using difference_type = std::ptrdiff_t;
    using pointer = const char*;
    using reference = const char&;

    WatchedIterator(const char* at, const char** reached) : m_at(at), m_reached(reached) {}
    reference operator*() const { return *m_at; }
    WatchedIterator& operator++() {
        *m_reached = ++m_at;
        return *this;
    }
    friend bool operator==(const WatchedIterator& a, const WatchedIterator& b) { return a.m_at == b.m_at; }

private:
    const char* m_at;
    const char** m_reached;
};

/// Follows the pointer of the value that the parser is at.
class PointerTrack {
public:
    struct Level {
        std::size_t pointerLength; ///< of the array or object itself
        bool array;
        std::size_t allowed;
        std::size_t count = 0;
        std::unordered_set<std::string> keys = {};
    };

    const std::string& pointer() const { return m_pointer; }
    std::size_t depth() const { return m_levels.size() - 1; }
    Level& level() { return m_levels.back(); }

    void open(bool array, std::size_t allowed) { m_levels.push_back({m_pointer.size(), array, allowed}); }
    void close() {
        m_pointer.resize(m_levels.back().pointerLength);
        m_levels.pop_back();
    }
    /// To the next element of the array that the parser is in. Inside an object, key() has done it.
    void step() {
        if (level().array) {
            m_pointer.resize(level().pointerLength);
            m_pointer += fmt::format("/{}", level().count++);
        }
    }
    void key(std::string_view name) {
        m_pointer.resize(m_levels.back().pointerLength);
        m_pointer += "/" + pointerStep(name);
        ++m_levels.back().count;
    }

private:
    std::string m_pointer;
    std::vector<Level> m_levels{{0, false, 1}}; ///< the first one holds the text's only value
};

/// Scans a text either for the first fault or for the value with a certain pointer.
class Scan final : public nlohmann::json_sax<Json> {
public:
    Scan(std::string_view text, const JsonLimits& limits)
        : m_text(text), m_limits(limits), m_reached(text.data()) {}

    void run() {
        const char* const end = m_text.data() + m_text.size();
        Json::sax_parse(WatchedIterator(m_text.data(), &m_reached), WatchedIterator(end, &m_reached), this);
    }

    const std::optional<Error>& fault() const { return m_fault; }

    void lookFor(std::string_view pointer) { m_wanted = pointer; }
    int foundLine() const { return m_foundLine; }

    bool null() override { return value(); }
    bool boolean(bool) override { return value(); }
    bool number_integer(number_integer_t) override { return value(); }
    bool number_unsigned(number_unsigned_t) override { return value(); }
    bool number_float(number_float_t, const string_t&) override { return value(); }
    bool string(string_t& text) override { return value() && soundText(text); }
    bool binary(binary_t&) override { return value(); }
    bool start_object(std::size_t) override { return value() && open(false, m_limits.keys); }
    bool start_array(std::size_t) override { return value() && open(true, elementsAllowed()); }
    bool end_object() override { return close(); }
    bool end_array() override { return close(); }
    bool key(string_t& name) override;
    bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception& problem) override;

private:
    bool value();
    bool open(bool array, std::size_t allowed);
    bool close() {
        m_track.close();
        return true;
    }
    bool soundText(const std::string& text);
    bool isCutOff(std::string_view problem) const;
    bool refuse(ErrorCode code, std::string text);
    std::size_t elementsAllowed() const;
    int line() const;
    int column() const;

    std::string_view m_text;
    const JsonLimits& m_limits;
    const char* m_reached;
    PointerTrack m_track;
    std::optional<Error> m_fault;
    std::optional<std::string_view> m_wanted;
    int m_foundLine = 1;
};

bool Scan::value() {
    m_track.step();
    if (m_wanted) {
        if (m_wanted->starts_with(m_track.pointer())) {
            const std::string_view rest = m_wanted->substr(m_track.pointer().size());
            if (rest.empty() || rest.front() == '/') {
                m_foundLine = line();
            }
            return !rest.empty();
        }
        return true;
    }
    const PointerTrack::Level& level = m_track.level();
    if (level.count > level.allowed) {
        return refuse(
            ErrorCode::TooLarge,
            fmt::format("The list has more than {} entries, the most that is read.", level.allowed));
    }
    return true;
}

bool Scan::open(bool array, std::size_t allowed) {
    m_track.open(array, allowed);
    return m_wanted || m_track.depth() <= m_limits.depth ||
           refuse(ErrorCode::TooDeep,
                  fmt::format("Lists and objects lie inside each other more than {} deep.", m_limits.depth));
}

bool Scan::key(string_t& name) {
    if (m_wanted) {
        m_track.key(name);
        return true;
    }
    if (!soundText(name)) {
        return false;
    }
    m_track.key(name);
    PointerTrack::Level& level = m_track.level();
    if (level.count > level.allowed) {
        return refuse(ErrorCode::TooLarge,
                      fmt::format("The object has more than {} keys, the most that is read.", level.allowed));
    }
    return level.keys.insert(name).second ||
           refuse(
               ErrorCode::DuplicateKey,
               fmt::format("The key {} stands twice in one object. Keep one of the two.", quotedText(name)));
}

bool Scan::soundText(const std::string& text) {
    if (text.size() > m_limits.textBytes) {
        return refuse(ErrorCode::TooLarge,
                      fmt::format("The text {} has {} bytes; {} are the most that is read.", quotedText(text),
                                  text.size(), m_limits.textBytes));
    }
    return text.find('\0') == std::string::npos ||
           refuse(ErrorCode::NotJson,
                  fmt::format("The text {} holds a NUL character. Take it out.", quotedText(text)));
}

bool Scan::parse_error(std::size_t, const std::string& token, const nlohmann::detail::exception& problem) {
    constexpr int kNumberOverflow = 406; // the parser's own number for it, documented with its exceptions
    if (m_wanted) {
        return false;
    }
    if (problem.id == kNumberOverflow) {
        m_track.step();
        return refuse(
            ErrorCode::OutOfRange,
            fmt::format("The number {} is larger than any that can be calculated with.", quotedText(token)));
    }
    if (isCutOff(problem.what())) {
        return refuse(ErrorCode::NotJson,
                      "The text ends before its JSON does: the file may have been cut off.");
    }
    return refuse(ErrorCode::NotJson,
                  fmt::format("The text stops being JSON at column {}: {} cannot stand there.", column(),
                              quotedText(token)));
}

/// The parser has words for a missing rest, but not where a word or number breaks off.
bool Scan::isCutOff(std::string_view problem) const {
    const bool atEnd = m_reached == m_text.data() + m_text.size();
    return atEnd && (problem.find("unexpected end of input") != std::string_view::npos ||
                     (m_text.back() != '}' && m_text.back() != ']'));
}

bool Scan::refuse(ErrorCode code, std::string text) {
    m_fault = Error{code, std::move(text), Place{{}, line(), m_track.pointer()}};
    return false;
}

std::size_t Scan::elementsAllowed() const {
    if (m_track.pointer() == "/parts") {
        return m_limits.parts;
    }
    return m_track.pointer() == "/wires" ? m_limits.wires : m_limits.elements;
}

/// The parser reads one character past a number: a line break there belongs to the number's line.
int Scan::line() const {
    const char* last = m_reached;
    if (last != m_text.data() && last[-1] == '\n') {
        --last;
    }
    return 1 + static_cast<int>(std::count(m_text.data(), last, '\n'));
}

int Scan::column() const {
    const std::string_view before = m_text.substr(0, static_cast<std::size_t>(m_reached - m_text.data()));
    const std::size_t lineBreak =
        before.empty() ? std::string_view::npos : before.rfind('\n', before.size() - 1);
    const std::size_t start = lineBreak == std::string_view::npos ? 0 : lineBreak + 1;
    return static_cast<int>(std::max<std::size_t>(before.size() - start, 1));
}

/// What the parser would let pass without a word.
std::optional<Error> rawFault(std::string_view text, const JsonLimits& limits) {
    if (text.size() > limits.fileBytes) {
        return Error{
            ErrorCode::TooLarge,
            fmt::format("The file is larger than {} MiB, the most that is read.", limits.fileBytes >> 20U),
            {}};
    }
    if (text.empty()) {
        return Error{ErrorCode::NotJson, "The file is empty.", {{}, 1, {}}};
    }
    if (text.starts_with("\xEF\xBB\xBF")) {
        return Error{ErrorCode::NotJson,
                     "The file begins with a byte-order mark. Save it as UTF-8 without one.",
                     {{}, 1, {}}};
    }
    if (const auto nul = text.find('\0'); nul != std::string_view::npos) {
        const auto lineBreaks =
            std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(nul), '\n');
        return Error{ErrorCode::NotJson,
                     "The file holds a NUL byte: it is not text, or was damaged.",
                     {{}, 1 + static_cast<int>(lineBreaks), {}}};
    }
    return std::nullopt;
}

} // namespace

std::optional<Error> jsonFault(std::string_view text, const std::string& fileName, const JsonLimits& limits) {
    std::optional<Error> fault = rawFault(text, limits);
    if (!fault) {
        Scan scan(text, limits);
        scan.run();
        fault = scan.fault();
    }
    if (fault) {
        fault->place.file = fileName;
    }
    return fault;
}

int lineOfPointer(std::string_view text, std::string_view pointer) {
    const JsonLimits limits;
    Scan scan(text, limits);
    scan.lookFor(pointer);
    scan.run();
    return scan.foundLine();
}

std::string pointerStep(std::string_view key) {
    std::string step;
    for (const char character : key) {
        if (character == '~') {
            step += "~0";
        } else if (character == '/') {
            step += "~1";
        } else {
            step += character;
        }
    }
    return step;
}

} // namespace pumpwright

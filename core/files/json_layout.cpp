#include "core/files/json_layout.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <iterator>

namespace pumpwright {
namespace {

using Json = nlohmann::ordered_json;

/// Bytes that are not UTF-8 become U+FFFD: a text that cannot be written must not stop the rest.
std::string quoted(const std::string& text) {
    return Json(text).dump(-1, ' ', false, Json::error_handler_t::replace);
}

void addPlain(const Json& value, std::string& text) {
    if (value.is_number_float()) {
        const double number = value.get<double>() + 0.0; // -0 reads back as 0, so it is written as 0
        fmt::format_to(std::back_inserter(text), "{}", number);
    } else if (value.is_string()) {
        text += quoted(value.get_ref<const std::string&>());
    } else {
        text += value.dump();
    }
}

/// Line breaks and indents, or nothing at all in compact text.
class Layout {
public:
    Layout(bool compact, std::string& text) : m_compact(compact), m_text(text) {}

    void add(const Json& value, int level) {
        if (!value.is_structured()) {
            addPlain(value, m_text);
            return;
        }
        const bool oneLine = m_compact || isShort(value);
        m_text += value.is_object() ? '{' : '[';
        bool first = true;
        for (auto member = value.begin(); member != value.end(); ++member) {
            separate(first, oneLine, level + 1);
            first = false;
            if (value.is_object()) {
                m_text += quoted(member.key()) + (m_compact ? ":" : ": ");
            }
            add(*member, level + 1);
        }
        if (!oneLine) {
            breakLine(level);
        }
        m_text += value.is_object() ? '}' : ']';
    }

private:
    static bool isShort(const Json& value) {
        constexpr std::size_t kMost = 4;
        return value.size() <= kMost && std::none_of(value.begin(), value.end(), [](const Json& member) {
                   return member.is_structured();
               });
    }

    void separate(bool first, bool oneLine, int level) {
        if (!first) {
            m_text += ',';
        }
        if (!oneLine) {
            breakLine(level);
        } else if (!first && !m_compact) {
            m_text += ' ';
        }
    }

    void breakLine(int level) {
        m_text += '\n';
        m_text.append(static_cast<std::size_t>(level) * 2, ' ');
    }

    bool m_compact;
    std::string& m_text;
};

} // namespace

std::string laidOutText(const Json& value) {
    std::string text;
    Layout(false, text).add(value, 0);
    text += '\n';
    return text;
}

std::string compactText(const Json& value) {
    std::string text;
    Layout(true, text).add(value, 0);
    return text;
}

} // namespace pumpwright

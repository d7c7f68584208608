#pragma once

#include "core/circuit/circuit.h"
#include "core/parts/part_kind.h"
#include "core/units/result.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

using OrderedJson = nlohmann::ordered_json;

/// The first fault found while a tree is read. Readers go on with defaults after it, so that they need no way
/// out of their own; who started them asks for it at the end.
class ReadFault {
public:
    void refuse(ErrorCode code, std::string pointer, std::string text) {
        if (!m_error) {
            m_error = Error{code, std::move(text), Place{{}, 0, std::move(pointer)}};
        }
    }
    const std::optional<Error>& error() const { return m_error; }

private:
    std::optional<Error> m_error;
};

/// Reads one JSON object by its keys. A key that nobody asked for is an unknown one.
class ObjectReader {
public:
    /// `value` and `fault` outlive the reader.
    ObjectReader(const OrderedJson& value, std::string pointer, ReadFault& fault);

    const std::string& pointer() const { return m_pointer; }
    std::string pointerTo(std::string_view key) const;
    ReadFault& fault() const { return m_fault; }
    void refuse(ErrorCode code, std::string_view key, std::string text) const;
    void refuseType(const OrderedJson& value, std::string_view key, std::string_view expected) const;

    /// The value under the key, or nullptr.
    const OrderedJson* member(std::string_view key);
    /// True if the key is there; if not, that is a fault.
    bool require(std::string_view key);
    std::string text(std::string_view key, std::string fallback = {});
    /// A text that must be there.
    std::string textOf(std::string_view key);
    /// An id that must be there: 1 to 64 letters, digits, points, hyphens and underscores.
    std::string id(std::string_view key);
    bool flag(std::string_view key, bool fallback);
    int integer(std::string_view key, int fallback, int low, int high);
    /// A number inside the range of `spec`, whose key and default are used.
    double number(const ParameterSpec& spec);
    ObjectReader object(std::string_view key);

    /// Calls `readElement(value, pointer)` for each element of the list under the key, if there is one.
    template <class ReadElement>
    void forEach(std::string_view key, ReadElement readElement) {
        const OrderedJson* list = member(key);
        if (!list) {
            return;
        }
        if (!list->is_array()) {
            refuseType(*list, key, "a list");
            return;
        }
        const std::string start = pointerTo(key) + "/";
        std::size_t index = 0;
        for (const OrderedJson& element : *list) {
            readElement(element, start + std::to_string(index++));
        }
    }

    /// Calls `readMember(key, value)` for each key of this object; none of them is unknown.
    template <class ReadMember>
    void forEachMember(ReadMember readMember) {
        if (m_value.is_object()) {
            for (const auto& [key, member] : m_value.items()) {
                m_asked.push_back(key);
                readMember(key, member);
            }
        }
    }

    /// What is left when everything known has been asked for.
    UnknownKeys unknownKeys() const;

private:
    const OrderedJson& m_value;
    std::string m_pointer;
    ReadFault& m_fault;
    std::vector<std::string_view> m_asked;
};

/// Checks that a value lies in the range of its spec; the message has the range in display units.
void checkRange(double value, const ParameterSpec& spec, const std::string& pointer, ReadFault& fault);

/// "a number", "a text", "a list", … for messages.
std::string_view jsonSort(const OrderedJson& value);

} // namespace pumpwright

#include "core/files/object_reader.h"

#include "core/files/json_layout.h"
#include "core/files/json_scan.h"
#include "core/units/quoted_text.h"

#include <fmt/core.h>

#include <algorithm>
#include <cmath>

namespace pumpwright {
namespace {

const OrderedJson& emptyObject() {
    static const OrderedJson empty = OrderedJson::object();
    return empty;
}

bool isIdCharacter(char character) {
    constexpr std::string_view kMarks = "._-";
    return (character >= 'a' && character <= 'z') || (character >= 'A' && character <= 'Z') ||
           (character >= '0' && character <= '9') || kMarks.find(character) != std::string_view::npos;
}

bool isId(std::string_view text) {
    constexpr std::size_t kLongest = 64;
    return !text.empty() && text.size() <= kLongest && std::all_of(text.begin(), text.end(), isIdCharacter);
}

} // namespace

ObjectReader::ObjectReader(const OrderedJson& value, std::string pointer, ReadFault& fault)
    : m_value(value), m_pointer(std::move(pointer)), m_fault(fault) {
    if (!value.is_object()) {
        m_fault.refuse(ErrorCode::WrongType, m_pointer,
                       fmt::format("Expected an object, not {}.", jsonSort(value)));
    }
}

std::string ObjectReader::pointerTo(std::string_view key) const {
    return m_pointer + "/" + pointerStep(key);
}

void ObjectReader::refuse(ErrorCode code, std::string_view key, std::string text) const {
    m_fault.refuse(code, pointerTo(key), std::move(text));
}

const OrderedJson* ObjectReader::member(std::string_view key) {
    m_asked.push_back(key);
    if (!m_value.is_object()) {
        return nullptr;
    }
    const auto found = m_value.find(std::string(key));
    return found == m_value.end() ? nullptr : &*found;
}

bool ObjectReader::require(std::string_view key) {
    if (member(key)) {
        return true;
    }
    if (m_value.is_object()) { // else its own fault is known already
        refuse(ErrorCode::MissingKey, key, fmt::format("The key {} is missing.", quotedText(key)));
    }
    return false;
}

std::string ObjectReader::text(std::string_view key, std::string fallback) {
    const OrderedJson* value = member(key);
    if (!value) {
        return fallback;
    }
    if (!value->is_string()) {
        refuseType(*value, key, "a text");
        return fallback;
    }
    return value->get_ref<const std::string&>();
}

std::string ObjectReader::textOf(std::string_view key) {
    require(key);
    return text(key);
}

std::string ObjectReader::id(std::string_view key) {
    std::string text = textOf(key);
    if (!isId(text)) {
        refuse(ErrorCode::OutOfRange, key,
               fmt::format("{} is no id. An id has 1 to 64 letters, digits, points, hyphens and underscores.",
                           quotedText(text)));
    }
    return text;
}

bool ObjectReader::flag(std::string_view key, bool fallback) {
    const OrderedJson* value = member(key);
    if (!value) {
        return fallback;
    }
    if (!value->is_boolean()) {
        refuseType(*value, key, "true or false");
        return fallback;
    }
    return value->get<bool>();
}

int ObjectReader::integer(std::string_view key, int fallback, int low, int high) {
    const OrderedJson* value = member(key);
    if (!value) {
        return fallback;
    }
    if (!value->is_number()) {
        refuseType(*value, key, "a whole number");
        return fallback;
    }
    const auto number = value->get<double>();
    if (number != std::floor(number) || number < low || number > high) {
        refuse(ErrorCode::OutOfRange, key,
               fmt::format("{} is {}. Allowed are whole numbers from {} to {}.", quotedText(key),
                           compactText(*value), low, high));
        return fallback;
    }
    return static_cast<int>(number);
}

double ObjectReader::number(const ParameterSpec& spec) {
    const OrderedJson* value = member(spec.key);
    if (!value) {
        return spec.standard;
    }
    if (!value->is_number()) {
        refuseType(*value, spec.key, "a number");
        return spec.standard;
    }
    const auto number = value->get<double>();
    checkRange(number, spec, pointerTo(spec.key), m_fault);
    return number;
}

ObjectReader ObjectReader::object(std::string_view key) {
    const OrderedJson* value = member(key);
    return {value ? *value : emptyObject(), pointerTo(key), m_fault};
}

UnknownKeys ObjectReader::unknownKeys() const {
    UnknownKeys unknown;
    if (m_value.is_object()) {
        for (const auto& [key, member] : m_value.items()) {
            if (std::find(m_asked.begin(), m_asked.end(), key) == m_asked.end()) {
                unknown.emplace(key, compactText(member));
            }
        }
    }
    return unknown;
}

void ObjectReader::refuseType(const OrderedJson& value, std::string_view key,
                              std::string_view expected) const {
    refuse(ErrorCode::WrongType, key,
           fmt::format("{} must be {}, not {}.", quotedText(key), expected, jsonSort(value)));
}

void checkRange(double value, const ParameterSpec& spec, const std::string& pointer, ReadFault& fault) {
    if (!(value >= spec.low && value <= spec.high)) {
        fault.refuse(ErrorCode::OutOfRange, pointer,
                     fmt::format("{} ({}) is {}. Allowed is {} to {}.", spec.label, spec.key,
                                 formatQuantity(value, spec.kind), formatQuantity(spec.low, spec.kind),
                                 formatQuantity(spec.high, spec.kind)));
    }
}

std::string_view jsonSort(const OrderedJson& value) {
    switch (value.type()) {
    case OrderedJson::value_t::null:
        return "null";
    case OrderedJson::value_t::boolean:
        return "true or false";
    case OrderedJson::value_t::string:
        return "a text";
    case OrderedJson::value_t::array:
        return "a list";
    case OrderedJson::value_t::object:
        return "an object";
    case OrderedJson::value_t::number_integer:
    case OrderedJson::value_t::number_unsigned:
    case OrderedJson::value_t::number_float:
        return "a number";
    case OrderedJson::value_t::binary:
    case OrderedJson::value_t::discarded:
        break;
    }
    return "nothing";
}

} // namespace pumpwright

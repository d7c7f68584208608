#include "core/units/money.h"

#include "core/units/quantity_kind.h"
#include "core/units/quoted_text.h"

#include <fmt/format.h>

#include <algorithm>

namespace pumpwright {
namespace {

constexpr std::size_t kCodeLength = 3; // ISO 4217

std::string_view withoutOuterSpaces(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    const std::size_t last = text.find_last_not_of(' ');
    return first == std::string_view::npos ? std::string_view() : text.substr(first, last - first + 1);
}

struct AmountAndCode {
    std::string_view amount;
    std::string_view code;
};

AmountAndCode splitMoney(std::string_view text) {
    text = withoutOuterSpaces(text);
    if (text.size() > kCodeLength && isCurrencyCode(text.substr(0, kCodeLength))) {
        return {withoutOuterSpaces(text.substr(kCodeLength)), text.substr(0, kCodeLength)};
    }
    if (text.size() > kCodeLength && isCurrencyCode(text.substr(text.size() - kCodeLength))) {
        const std::size_t length = text.size() - kCodeLength;
        return {withoutOuterSpaces(text.substr(0, length)), text.substr(length)};
    }
    return {text, {}};
}

} // namespace

bool isCurrencyCode(std::string_view code) {
    return code.size() == kCodeLength &&
           std::ranges::all_of(code, [](char c) { return c >= 'A' && c <= 'Z'; });
}

std::string formatMoney(double amount, std::string_view currency) {
    return fmt::format("{} {}", formatQuantity(amount, QuantityKind::Money), currency);
}

Result<double> parseMoney(std::string_view text, std::string_view currency) {
    const AmountAndCode parts = splitMoney(text);
    if (!parts.code.empty() && parts.code != currency) {
        return tl::unexpected(
            Error{ErrorCode::WrongUnit,
                  fmt::format("{} is in another currency. Write the amount in {}, for example "
                              "\"12.50 {}\".",
                              quotedText(text), currency, currency),
                  {}});
    }
    return parseQuantity(parts.amount, QuantityKind::Money);
}

} // namespace pumpwright

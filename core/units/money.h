#pragma once

#include "core/units/result.h"

#include <string>
#include <string_view>

namespace pumpwright {

/// True for three capital letters, the form of an ISO 4217 currency code. Which codes are in force is not
/// judged.
bool isCurrencyCode(std::string_view code);

/// "129.90 EUR".
std::string formatMoney(double amount, std::string_view currency);

/// Reads "129.90", "129,90 EUR", "EUR 129.90". Refuses an amount in another currency than the one asked for:
/// there are no exchange rates here.
[[nodiscard]] Result<double> parseMoney(std::string_view text, std::string_view currency);

} // namespace pumpwright

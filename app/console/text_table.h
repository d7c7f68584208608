#pragma once

#include "app/console/request.h"
#include "core/sheet/wiring_sheet.h"

#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// Lines of at most this many characters suit terminals and mail.
inline constexpr std::size_t kTextWidth = 100;

/// Title, head and rows in aligned columns; cells of the widest columns are broken between words where a line
/// would be longer than kTextWidth, inside words only where nothing else helps.
std::string textTable(const SheetTable& table);

/// The table for people, or as CSV where that is asked for.
std::string tableInForm(const SheetTable& table, OutputForm form);

/// Text broken at spaces into lines of at most `width` characters, all but the first after `indent`.
std::string wrapped(std::string_view text, std::size_t width, std::string_view indent);

} // namespace pumpwright

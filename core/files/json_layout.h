#pragma once

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace pumpwright {

/// The text of a file: two spaces a level, one value a line, so that a difference shows only what changed.
/// Lists and objects of at most four plain values stand on one line. Numbers have the fewest digits that read
/// back as the same number. Ends with a line break.
std::string laidOutText(const nlohmann::ordered_json& value);

/// The same without any space, as unknown keys are kept.
std::string compactText(const nlohmann::ordered_json& value);

} // namespace pumpwright

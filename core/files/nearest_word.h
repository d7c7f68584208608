#pragma once

#include <string_view>
#include <vector>

namespace pumpwright {

/// The word among `words` that differs from `word` by the fewest letters added, left out or changed; empty if
/// none is near (more than a third of the letters differ).
std::string_view nearestWord(std::string_view word, const std::vector<std::string_view>& words);

} // namespace pumpwright

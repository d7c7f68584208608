#pragma once

#include "core/study/speed_trace.h"
#include "core/units/result.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace pumpwright {

/// Reads a table with time and speed: the column whose name begins with "time", or the first that never
/// falls, and the one whose name begins with "speed", or the next after it. Units stand in brackets behind
/// the names: s, ms, min; km/h, mph, m/s; without one, s and km/h. Rows without both are passed over.
[[nodiscard]] Result<SpeedTrace> parseSpeedTrace(std::string_view text, const std::string& fileName = {});
/// Of a file. One with more rows than are kept is refused: half a braking would be another one.
[[nodiscard]] Result<SpeedTrace> readSpeedTrace(const std::filesystem::path& path);

} // namespace pumpwright

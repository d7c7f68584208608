#pragma once

#include "core/checks/drive_reading.h"
#include "core/checks/survey.h"

#include <optional>

namespace pumpwright {

/// A load runs while it takes at least this share of its nameplate current; a motor that pumps against less
/// takes less. Common practice, no published source.
inline constexpr double kRunningShare = 0.3;

/// A relay that chatters interrupts a run for less than this. Common practice, no published source.
inline constexpr double kRunBridged_s = 0.5;

/// The spans of the drive in which a load runs, short interruptions counted in; empty without a drive or
/// without its current in it.
std::vector<TimeSpan> runningSpans(const Survey& survey, const PartId& part, const Load& load);

/// The later half of the longest run without any interruption, in which a motor has got up to speed.
std::optional<TimeSpan> settledRun(const Survey& survey, const PartId& part, const Load& load);

} // namespace pumpwright

#pragma once

#include "core/study/breakdowns.h"

#include <map>

namespace pumpwright {

/// What of the sound drive the others are held against.
struct SoundDrive {
    Circuit circuit;
    DriveResult drive;
};

BreakdownOutcome breakdownOutcome(const SoundDrive& sound, const Circuit& broken, const DriveResult& drive);

} // namespace pumpwright

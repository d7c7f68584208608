#pragma once

#include "core/simulate/recording.h"

#include <vector>

namespace pumpwright {

/// Share of the assist that the pedal force asks for; less than this is felt. Common practice, no published
/// source.
inline constexpr double kFullAssistShare = 0.95;

/// With a smaller share of the assist, the pedal takes about twice the force or more. Common practice, no
/// published source.
inline constexpr double kDangerShare = 0.5;

/// What one press got at its worst stretch: the foot comes down when it needs the assist, not some seconds
/// later.
struct PressAssist {
    double at_s = 0;
    double asked_N = 0;
    double given_N = 0;

    /// 1 for a press that asks for so little that it does without.
    double share() const;
    bool isFull() const { return share() >= kFullAssistShare; }
};

/// The presses of the plan that the recording holds to their end, at one booster; none for another part.
std::vector<PressAssist> pressAssists(const DrivePlan& plan, const Recording& recording,
                                      const PartId& booster);

} // namespace pumpwright

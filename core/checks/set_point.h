#pragma once

#include "core/checks/finding.h"
#include "core/checks/survey.h"

#include <optional>
#include <string_view>

namespace pumpwright {

/// A value that the part's Nameplate holds, its own or the kind's default; empty where the kind has no such
/// key.
std::optional<double> nameplateValue(const Part& part, std::string_view key);

/// What a vacuum switch is set to. [Pa] gauge vacuum.
struct SetPoint {
    PartId part;
    double closes_Pa = 0;  ///< its contact closes when the vacuum has fallen to this
    double opens_Pa = 0;   ///< and opens when it has risen to this
    double reached_Pa = 0; ///< highest vacuum at its port in the drive, zero without a drive
};

/// Of a part whose Nameplate has a set point and a differential; empty for others.
std::optional<SetPoint> setPointOf(const Survey& survey, const PartId& part);

/// Doubles the differential of a vacuum switch, at least to what stands the creep back after a fast
/// pump-down. The set point stays, unless the switch would then open beyond what pumps reach. Empty for other
/// parts and where too low a set point would be left.
std::optional<Remedy> widerDifferential(const Survey& survey, const PartId& part);

/// Lowers the set point so that the switch opens at a good part of the vacuum that was reached; empty where
/// too little was reached to be worth anything.
std::optional<Remedy> lowerSetPoint(const Survey& survey, const SetPoint& setPoint);

} // namespace pumpwright

#pragma once

#include "core/checks/survey.h"

#include <optional>
#include <string>

namespace pumpwright {

/// What a conductor carries: the larger of what the recorded drive shows and what the nameplates of the loads
/// add up to, because a drive need not show the worst and a nameplate need not be true.
struct CarriedCurrent {
    double value_A = 0;
    std::optional<double> at_s; ///< when in the drive; empty: by the nameplates
};

/// For long: the highest mean over kSustained_s in the drive, or all loads running.
CarriedCurrent sustainedCurrent(const Survey& survey, const WireId& wire);
CarriedCurrent sustainedCurrent(const Survey& survey, std::size_t branch);

/// Through a contact while it makes: the highest in the first tenth of a second after a closing, as a mean
/// over 50 µs, or the inrush of all loads behind it, which start together.
CarriedCurrent makingCurrent(const Survey& survey, std::size_t branch);
/// Through a contact as it breaks: the highest in the last moment before an opening, or all loads running.
CarriedCurrent breakingCurrent(const Survey& survey, std::size_t branch);

/// "in the drive at 12.3 s" or "by the nameplates of its loads".
Text whereFrom(const CarriedCurrent& current);

/// The contact that a branch of the sort Contact stands for.
const Contact& contactOf(const Survey& survey, const Branch& branch);

/// The channel of a contact's state or current ("contact", "contactCurrent 30-87a"), or null.
const Channel* contactChannel(const Survey& survey, const Branch& branch, std::string_view probeName);

} // namespace pumpwright

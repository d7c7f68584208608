#pragma once

#include "core/checks/finding.h"
#include "core/checks/switched_load.h"

#include <optional>

namespace pumpwright {

/// What a contact is asked for. [A]; zero where it does not matter.
struct ContactDuty {
    double continuous_A = 0;
    double make_A = 0;
    double break_A = 0;
};

/// Puts a power relay beside a contact on the feed side of its loads: the relay switches what the contact has
/// switched, and the contact the relay's coil. Empty where the contact is not on that side, where no more
/// than one wire fits the relay's terminals, or where the usual relay is too small as well.
std::optional<Remedy> powerRelayRemedy(const Survey& survey, const SwitchedLoads& loads, std::size_t contact,
                                       const ContactDuty& duty);

} // namespace pumpwright

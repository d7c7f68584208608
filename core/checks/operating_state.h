#pragma once

#include "core/checks/survey.h"

#include <functional>

namespace pumpwright {

/// Which contacts are closed and which loads are fed when driver and vacuum hold their contacts as given and
/// everything else has settled: relays, timers and solid-state relays follow what their coils and inputs get.
struct OperatingState {
    std::vector<bool> closed; ///< by branch; true only for contacts
    std::vector<bool> fed;    ///< by number of the load path: plus and minus over conductors
};

/// Whether a contact that is moved by hand, pedal or vacuum is closed.
using HeldClosed = std::function<bool(const Branch& contact, Operator by)>;

OperatingState operatingState(const Survey& survey, const HeldClosed& held);

/// The parked vehicle: switches off, pedal up, and the vacuum has leaked away.
bool closedWhenParked(const Branch& contact, Operator by);

} // namespace pumpwright

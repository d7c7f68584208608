#pragma once

#include "core/checks/survey.h"

#include <optional>

namespace pumpwright {

/// Whether something takes up a winding's current when it is switched off: built into a coil between the same
/// nets, or a diode, resistor or capacitor between them, or two parts in a row (a diode with a zener).
bool isSuppressed(const Survey& survey, const Branch& winding);

/// The part with a diode that a coil's current runs on through: built in, or a part of its own between the
/// same nets; a zener alone conducts that way too. Empty where only a resistor, or a zener with a diode in a
/// row, takes it up.
std::optional<PartId> freewheelDiodeOf(const Survey& survey, const Branch& coil);

/// Whether two branches lie between the same two nets, either way round.
bool liesAcross(const Branch& one, const Branch& other);

} // namespace pumpwright

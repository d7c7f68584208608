#pragma once

#include "core/checks/survey.h"
#include "core/units/text.h"

#include <optional>

namespace pumpwright {

// Edits that remedies offer and that bring several parts into a circuit at once. Each is empty where the
// circuit has no place for it.

/// A lamp that a vacuum switch of its own at the booster lights at low vacuum, on a fuse of its own.
std::optional<Edit> warningLampEdit(const Survey& survey);

/// Puts a hand switch, on at the start, into a wire.
Edit handSwitchEdit(const Circuit& circuit, const WireId& wire, std::string_view label, Text name);

/// Puts a diode into a wire so that current flows on towards `to`, one of the wire's ends, only.
Edit diodeInWireEdit(const Circuit& circuit, const WireId& wire, const End& to, Text name);

/// Puts a reservoir into the hose at a booster's port.
std::optional<Edit> reservoirEdit(const Circuit& circuit, const End& booster, double volume_m3, Text name);

} // namespace pumpwright

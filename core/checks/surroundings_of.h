#pragma once

#include "core/checks/survey.h"

namespace pumpwright {

/// [K] The hottest that a part's surroundings get: of its place in the vehicle where that is stated, else the
/// project's ambient temperature.
double surroundings_K(const Survey& survey, const PartId& id);

/// What is left of a relay contact's continuous current at this temperature, its rating being for 23 °C
/// [data sheet of a 70 A power relay: 50 A at 85 °C, 30 A at 125 °C]; straight lines between and beyond.
double relayHeatShare(double surroundings_K);

} // namespace pumpwright

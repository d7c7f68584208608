#pragma once

#include "core/checks/survey.h"

#include <optional>

namespace pumpwright {

/// Loaded wires that a wire's bundle counts: its own number or the least of the project.
int bundledOf(const Survey& survey, const Wire& wire);

/// [A] that a wire may carry for ever where it lies; with another area, if that is given.
double capacity_A(const Survey& survey, const Wire& wire);
double capacity_A(const Survey& survey, const Wire& wire, double area_m2);

/// [Ω] of a wire at the project's ambient temperature.
double resistance_ohm(const Survey& survey, const Wire& wire);

/// [Ω] of wires and cold fuses on a way.
double resistance_ohm(const Survey& survey, const std::vector<LeadStep>& way);

/// [Ω] of the lead from a source's minus to the body, and the bolt there.
double groundLead_ohm(const Survey& survey, const SourceLeads& source);

/// [A] that a short to the body behind the last of these steps draws: from the source, over the steps and
/// back over its ground lead. Fuses count as links without resistance, as prospective currents are defined
/// (IEC 60050-441-17-01).
double faultCurrent_A(const Survey& survey, const Branch& source, const std::vector<LeadStep>& way);

} // namespace pumpwright

#pragma once

#include "core/checks/finding.h"
#include "core/circuit/circuit.h"

#include <string>
#include <string_view>
#include <vector>

namespace pumpwright {

/// The order in which people read references: runs of digits count as numbers, "W2" before "W10".
bool referenceBefore(std::string_view a, std::string_view b);

/// "K1 relay", or the id of a part that the circuit does not hold.
std::string partName(const Circuit& circuit, const PartId& id);

/// A label in the middle of a sentence: "Capacity" as "capacity", "LED" as it is.
std::string lowerFirst(std::string_view label);

/// References of parts, wires and hoses in the order of referenceBefore(), joined by ", ".
std::string joinedReferences(std::vector<std::string> references);

/// What a finding is about: "K1, W3". Empty where it is about the whole circuit.
std::string subjectReferences(const Circuit& circuit, const Finding& finding);

} // namespace pumpwright

#pragma once

#include "core/circuit/circuit.h"

#include <nlohmann/json_fwd.hpp>

namespace pumpwright {

/// The tree of a circuit file, keys in the order in which they are written.
nlohmann::ordered_json encodedCircuit(const Circuit& circuit);

/// The same with nothing but parts, wires and hoses.
nlohmann::ordered_json encodedFragment(const Circuit& circuit);

} // namespace pumpwright

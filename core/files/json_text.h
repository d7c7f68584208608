#pragma once

#include "core/circuit/circuit.h"

#include <nlohmann/json.hpp>

#include <string>

namespace pumpwright {

/// Keys in the order in which they are added: the same circuit gives the same bytes.
using Json = nlohmann::ordered_json;

/// {"id": "p3", "reference": "K1"}
Json partJson(const Circuit& circuit, const PartId& id);
/// {"id": "p3", "reference": "K1", "terminal": "86"}
Json endJson(const Circuit& circuit, const End& end);

/// Indented, with a line end; bytes that are no UTF-8 are replaced.
std::string jsonText(const Json& json);

} // namespace pumpwright

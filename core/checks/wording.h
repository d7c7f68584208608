#pragma once

#include "core/circuit/circuit.h"
#include "core/units/quantity_kind.h"
#include "core/units/text.h"

#include <string>
#include <vector>

namespace pumpwright {

// How findings name things: by the reference that is printed beside the symbol, by the id where there is
// none.
std::string nameOf(const Circuit& circuit, const PartId& id);
std::string nameOf(const Circuit& circuit, const WireId& id);
std::string nameOf(const Circuit& circuit, const End& end); ///< "K1.86"

std::vector<std::string> namesOf(const Circuit& circuit, const std::vector<PartId>& ids);
std::vector<std::string> namesOf(const Circuit& circuit, const std::vector<WireId>& ids);

/// "K1", "K1 and S1", "K1, S1 and W2".
Text listOf(const std::vector<std::string>& names);
Text listOf(const std::vector<Text>& items);

/// " as soon as S1 (1–2) closes", empty without contacts.
Text asSoonAsClosed(const std::vector<Text>& contacts);

Text inDriveAt(double time_s); ///< "in the drive at 12 s"
Text pressesText(int count);   ///< "1 press", "3 presses"

/// A number without its fraction: "120".
std::string whole(double number);

/// A value with its unit: "5.5 A".
inline std::string amount(double si, QuantityKind kind) {
    return formatQuantity(si, kind);
}

} // namespace pumpwright

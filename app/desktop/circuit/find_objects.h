#pragma once

#include "app/desktop/document/selection.h"
#include "core/circuit/circuit.h"

#include <QString>

#include <vector>

namespace pumpwright {

/// Parts, wires and hoses that a text is found in: reference, label, kind, colour letters, values with their
/// units ("15 A", "0.75 mm²"). Those with just this reference come first. Each entry is one object; none for
/// an empty text.
std::vector<SelectedObjects> findObjects(const Circuit& circuit, const QString& text);

} // namespace pumpwright

#pragma once

#include "core/checks/finding.h"

namespace pumpwright {

/// A remedy on the circuit as it is drawn now. Moving parts asks for no new check, so a remedy may still hold
/// where its parts and the corners of its wires were.
Edit remedyAsDrawn(const Circuit& circuit, Edit remedy);

/// What undo shows of a remedy that has an edit: the edit's own short name, which is English, or what the
/// remedy says in the user's language.
std::string stepName(const Remedy& remedy);

} // namespace pumpwright
